'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { PageHead } from '@/app/_controls/PageHead';
import { RemoveButton } from '@/app/_controls/RemoveButton';
import { usePageName } from '@/app/_controls/usePageName';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import { TextField } from '@/app/_fields/TextField';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { MakingLinks } from '@/app/_makingFrame/MakingLinks';
import { LaterPart } from '@/app/_network/LaterPart';
import styles from '@/app/_supply/Supply.module.css';
import { buyingTroubleWords } from '@/app/_words/supply/buyingTroubleWords';
import {
  buyingAnswer,
  sparesWords,
  togetherWords,
  untoldInkWords,
  upperWords,
} from '@/app/_words/supply/buyingWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import type { BuyingPlan } from '@/lib/buying/buyingPlan';
import { textLimits } from '@/shared/limits';
import { buyingListSchema } from '@/shared/schemas/making/supply';
import type { BuyingOnScreen } from './buyingOnScreen';
import { CoverKeys } from './CoverKeys';
import { laterParts } from './laterParts';
import type { PlanOfList } from './useBuyingPlan';

type BuyingListPageProps = Readonly<{
  on: BuyingOnScreen;
  /** Told what undo calls it. */
  onRemoved: (label: string) => void;
}>;

/** A buying list: the answer, how sure it is to be, thing by thing, supplier by supplier. */
export function BuyingListPage({ on, onRemoved }: BuyingListPageProps) {
  const { supply, listId, list, set } = on;
  const { workspace, today, formatter, locale } = supply;
  usePageName(`${list.name} · Pressminute`);
  const [{ plan, isWaiting, failure }, setPlan] = useState<PlanOfList>(NO_PLAN);
  const chosen = plan?.covers.find(({ cover }) => cover === list.cover);
  const spares = chosen === undefined ? null : sparesWords(chosen, formatter);
  const remove = () => {
    const label = `Remove ${list.name}`;
    workspace.remove({ kind: 'buyingList', id: listId }, label);
    onRemoved(label);
  };
  return (
    <>
      <MakingLinks here="/making/buying" isInside />
      <PageHead
        title={
          <EditableTitle
            value={list.name}
            label="Name of the buying list"
            limits={textLimits(buyingListSchema, ['name'])}
            onCommit={(name) => name.trim() !== '' && set('Name of a buying list', ['name'], name)}
          />
        }
        aside={list.archivedOn === null ? null : 'Put away'}
      />
      <LaterPart
        part={laterParts.plan}
        what="What is to be bought"
        props={{ workspace, list, onPlan: setPlan }}
      />
      <UnreadableRecords workspace={workspace} level={2} of={BUYING_KINDS} />
      <AnswerMissing what="What is to be bought could not be worked out" failure={failure} />
      <p className={styles.answer} role="status">
        {plan === null ? 'Working it out…' : buyingAnswer(plan, earliest(plan), formatter, locale)}
        {plan !== null && isWaiting && (
          <span className={styles.quiet}> A newer one is being worked out.</span>
        )}
      </p>
      {plan !== null && <Troubles {...{ on, plan }} />}
      <Card>
        {plan !== null && (
          <>
            <CardSection numeral={1} heading="How much" id="buying-much">
              <div className={styles.rows}>
                {plan.covers.some(({ bought }) => bought > 0) && (
                  <>
                    <CoverKeys
                      choices={plan.covers}
                      cover={list.cover}
                      isHeld={list.held.some(({ item }) => item.kind === 'blank')}
                      {...{ formatter, locale }}
                      currency={plan.currency}
                      onChoose={(cover) => set('How sure every size is to be', ['cover'], cover)}
                    />
                    {spares !== null && <p className={styles.quiet}>{spares}</p>}
                    {plan.atUpperScrap !== null && (
                      <p className={styles.quiet}>{upperWords(plan.atUpperScrap, chosen, formatter)}</p>
                    )}
                  </>
                )}
                <LaterPart part={laterParts.needs} what="What is needed" props={{ on, plan }} />
                <LaterPart part={laterParts.notSetUp} what="What is not set up" props={{ on, plan }} />
                {untoldInkWords(plan, formatter).map((words) => (
                  <p className={styles.quiet} key={words}>
                    {words}
                  </p>
                ))}
              </div>
            </CardSection>
            <CardSection numeral={2} heading="From whom" id="buying-whom">
              <div className={styles.rows}>
                <Together plan={plan} locale={locale} />
                <LaterPart part={laterParts.suppliers} what="Who it is bought from" props={{ on, plan }} />
              </div>
            </CardSection>
            <CardSection numeral={3} heading="What is left, and what else would do" id="buying-left">
              <LaterPart part={laterParts.folds} what="What is left" props={{ on, plan }} />
            </CardSection>
          </>
        )}
        <CardSection numeral={plan === null ? 1 : 4} heading="What it is for" id="buying-for">
          <div className={styles.rows}>
            <LaterPart part={laterParts.works} what="What it is for" props={{ on }} />
            <TextField
              label="Note"
              rows={2}
              value={list.note}
              {...textLimits(buyingListSchema, ['note'])}
              onCommit={(note) => set('Note on a buying list', ['note'], note)}
            />
            <div className={styles.acts}>
              <Button
                onPress={() =>
                  list.archivedOn === null
                    ? set(`Put ${list.name} away`, ['archivedOn'], today)
                    : set(`Take ${list.name} up again`, ['archivedOn'], null)
                }
              >
                {list.archivedOn === null ? 'Put it away' : 'Take it up again'}
              </Button>
              <RemoveButton what={list.name} usedBy={[]} onRemove={remove} />
            </div>
          </div>
        </CardSection>
      </Card>
    </>
  );
}

// Helpers

/** Whatever the sums of a list stand on: what of it cannot be read is missing in them. */
const BUYING_KINDS: ReadonlySet<string> = new Set([
  ...['supplier', 'consumable', 'blank', 'artwork', 'job', 'order', 'run', 'buyingList'],
  ...['stockMove', 'stockTransfer', 'stockCount', 'takeBack', 'goodsIn', 'supplyOrder', 'runStandard'],
]);

const NO_PLAN: PlanOfList = { plan: null, isWaiting: true, failure: null };

type PlannedProps = Readonly<{ on: BuyingOnScreen; plan: BuyingPlan }>;

function Troubles({ on, plan }: PlannedProps) {
  const { nameOf, supplierName, formatter, locale } = on.supply;
  if (plan.troubles.length === 0) return null;
  const names = { item: nameOf, supplier: supplierName };
  const sentences = plan.troubles.map((trouble) =>
    buyingTroubleWords(trouble, names, { currency: plan.currency, formatter, locale }),
  );
  return (
    <ul className={styles.caution} aria-label="To look at">
      {[...new Set(sentences)].map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

function Together({ plan, locale }: Readonly<{ plan: BuyingPlan; locale: string }>) {
  const words = togetherWords(plan, locale);
  return words === null ? null : <p>{words}</p>;
}

/** The first day by which something is to be ordered; null where no press is planned, or no lead is known. */
const earliest = ({ rows }: BuyingPlan): string | null =>
  rows.reduce<string | null>((first, { purchase }) => {
    const day = purchase?.orderBy ?? null;
    return day === null || (first !== null && first <= day) ? first : day;
  }, null);
