'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { PageHead } from '@/app/_controls/PageHead';
import { RemoveButton } from '@/app/_controls/RemoveButton';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { usePageName } from '@/app/_controls/usePageName';
import { Answer } from '@/app/_docket/common/Answer';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import {
  dueAnswer,
  eachWords,
  gradedName,
  lateLines,
  nameTaken,
  shelfAnswer,
} from '@/app/_words/stall/shopWords';
import { gatheredAt } from '@/lib/stall/shops/consignedEntries';
import { shelfKey } from '@/lib/stall/shops/shelfKey';
import { isNameTaken, shopNames, shopRenamed } from '@/lib/stall/shops/shopNames';
import { textLimits } from '@/shared/limits';
import { type Shop, shopSchema } from '@/shared/schemas/shop';
import { BackForm } from './BackForm';
import { GoodsOutForm } from './GoodsOutForm';
import { ShopFiles } from './ShopFiles';
import styles from './Shops.module.css';
import { StatementForm } from './StatementForm';
import { Statements } from './Statements';
import type { ShopOnScreen } from './shopOnScreen';
import { TermsFields } from './TermsFields';

type ShopPageProps = Readonly<{
  on: ShopOnScreen;
  /** Told what undo calls it. */
  onRemoved: (label: string) => void;
}>;

/** A shop as one slip: what lies there, what it owes, what was agreed. */
export function ShopPage({ on, onRemoved }: ShopPageProps) {
  const { workspace, shopId, shop, standing, late, formatter, locale, nameOf } = on;
  usePageName(`${shop.name} · Pressminute`);
  const [open, setOpen] = useState<'out' | 'back' | 'statement' | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const done = () => setOpen(null);
  const rename = (typed: string) => {
    const name = typed.trim();
    const others = Object.entries(workspace.shops).flatMap(([id, one]) => (id === shopId ? [] : [one]));
    const isTaken = isNameTaken(name, others);
    setProblem(isTaken ? nameTaken(name) : null);
    if (isTaken || name === '' || name === shop.name) return;
    workspace.note('Name of a shop', gatheredAt(name, shopNames(shop), workspace.piles), [
      { do: 'change', kind: 'shop', id: shopId, to: (now: Shop) => shopRenamed(now, name) },
    ]);
  };
  const remove = () => {
    const label = `Remove ${shop.name}`;
    workspace.remove({ kind: 'shop', id: shopId }, label);
    onRemoved(label);
  };
  const isThere = standing.shelf.some(({ quantity }) => quantity > 0);
  return (
    <>
      <PageHead
        title={
          <EditableTitle
            value={shop.name}
            label="Name of the shop"
            limits={textLimits(shopSchema, ['name'])}
            onCommit={rename}
          />
        }
        line="Goods on consignment: yours until they are sold."
      />
      <p role="alert">{problem}</p>
      <Card>
        <CardSection
          numeral={1}
          heading="On its shelf"
          id="shop-shelf"
          answer={<Answer words={shelfAnswer(standing, formatter, locale)} />}
        >
          {lateLines(late, formatter).map((line) => (
            <p key={line} className={styles.caution}>
              {line}
            </p>
          ))}
          <RowList label="On its shelf">
            {standing.shelf.map((goods) => (
              <ListRow key={shelfKey(goods, goods.grade)} acts={null}>
                <strong>{formatter.number(goods.quantity, 0)}</strong>{' '}
                <bdi>{gradedName(nameOf(goods), goods.grade)}</bdi>
                {goods.quantity > 0 && <span className={styles.quiet}>, {eachWords(goods, locale)}</span>}
                {goods.quantity < 0 && (
                  <span className={styles.caution}>
                    : more was sold than was noted to go there. Note what is missing here.
                  </span>
                )}
              </ListRow>
            ))}
          </RowList>
          <div className={styles.acts}>
            <Button expanded={open === 'out'} onPress={() => setOpen(open === 'out' ? null : 'out')}>
              Bring goods there
            </Button>
            {isThere && (
              <Button expanded={open === 'back'} onPress={() => setOpen(open === 'back' ? null : 'back')}>
                Bring goods home
              </Button>
            )}
          </div>
          {open === 'out' && <GoodsOutForm {...{ on }} onDone={done} />}
          {open === 'back' && <BackForm {...{ on }} onDone={done} />}
        </CardSection>
        <CardSection
          numeral={2}
          heading="Statements"
          id="shop-statements"
          answer={<Answer words={dueAnswer(standing, locale)} />}
        >
          {isThere && (
            <div className={styles.acts}>
              <Button
                expanded={open === 'statement'}
                onPress={() => setOpen(open === 'statement' ? null : 'statement')}
              >
                Note a statement
              </Button>
            </div>
          )}
          {open === 'statement' && <StatementForm {...{ on }} onDone={done} />}
          <Statements on={on} />
        </CardSection>
        <CardSection numeral={3} heading="Terms" id="shop-terms">
          <TermsFields on={on} />
          <h3 className={styles.sub} id="shop-files">
            Files
          </h3>
          <p className={styles.quiet}>What was agreed in writing, a list of the goods that was signed.</p>
          <ShopFiles on={on} />
        </CardSection>
        <CardSection numeral={4} heading="Remove" id="shop-remove">
          {isThere || standing.due.length > 0 ? (
            <p className={styles.quiet}>
              It can be removed once its goods are home and its statements settled.
            </p>
          ) : (
            <RemoveButton what={shop.name} usedBy={[]} onRemove={remove} />
          )}
        </CardSection>
      </Card>
    </>
  );
}
