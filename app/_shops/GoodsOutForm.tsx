'use client';

import { useState } from 'react';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { goodsKey } from '@/lib/stall/count/goodsKey';
import { designKey } from '@/lib/stall/designKey';
import { outEntries } from '@/lib/stall/shops/consignedEntries';
import { finishedAtHome } from '@/lib/stock/finishedAtHome';
import { numberLimits } from '@/shared/limits';
import { blanksNotedSchema } from '@/shared/schemas/stock';
import { FormActs } from './FormActs';
import styles from './Shops.module.css';
import type { ShopOnScreen } from './shopOnScreen';

type GoodsOutFormProps = Readonly<{ on: ShopOnScreen; onDone: () => void }>;

const many = { ...numberLimits(blanksNotedSchema, []), width: 'narrow' } as const;

/** Goods that go from home to the shop. What lies at home is counted first where nobody did: nothing is made up. */
export function GoodsOutForm({ on, onDone }: GoodsOutFormProps) {
  const { workspace, shop, nameOf, formatter, noteGoods } = on;
  const [lineKey, setLine] = useState<string | null>(null);
  const [size, setSize] = useState<string | null>(null);
  const [quantity, setQuantity] = useState<number | null>(null);
  const [counted, setCounted] = useState<number | null>(null);
  const lines = workspace.jobs.flatMap(({ id, job }) =>
    job.archivedOn === null
      ? job.lines.map((line) => ({ key: designKey({ jobId: id, lineId: line.id }), id, job, line }))
      : [],
  );
  const picked = lines.find(({ key }) => key === lineKey) ?? null;
  const sizes = picked === null ? [] : picked.line.quantities.map((one) => one.size);
  const chosen = sizes.length === 1 ? (sizes[0] ?? null) : size;
  const goods =
    picked === null || chosen === null ? null : { jobId: picked.id, lineId: picked.line.id, size: chosen };
  const atHome =
    goods === null
      ? null
      : (finishedAtHome(workspace.piles).find((one) => goodsKey(one) === goodsKey(goods))?.pieces ?? null);
  const mustCount = goods !== null && (atHome === null || (quantity ?? 0) > atHome);
  const home = mustCount ? counted : atHome;
  const missing =
    picked === null
      ? 'Which design comes first.'
      : goods === null
        ? 'Which size comes first.'
        : quantity === null || quantity === 0
          ? 'How many comes first.'
          : home === null
            ? 'How many lie at home comes first.'
            : quantity > home
              ? `Only ${formatter.number(home, 0)} lie at home. Take fewer, or count again.`
              : undefined;
  const enter = () => {
    if (goods === null || quantity === null) return;
    const entries = outEntries(shop.name, { goods, quantity, counted: mustCount ? counted : null });
    if (noteGoods(`${nameOf(goods)} to ${shop.name}`, entries).state === 'shown') onDone();
  };
  return (
    <EntryForm label="Bring goods there" className={styles.form} missing={missing} onEnter={enter}>
      <FieldGroup pairs>
        <ChoiceField<string>
          label="Design"
          value={lineKey}
          choices={lines.map(({ key, job, line }) => ({ value: key, label: `${line.name}, ${job.name}` }))}
          onCommit={(key) => {
            setLine(key);
            setSize(null);
          }}
        />
        {sizes.length > 1 && (
          <ChoiceField<string>
            label="Size"
            width="narrow"
            value={size}
            choices={sizes.map((value) => ({ value, label: value }))}
            onCommit={setSize}
          />
        )}
        <NumberField
          label="How many"
          {...many}
          value={quantity}
          hint={atHome === null ? undefined : `${formatter.number(atHome, 0)} lie at home.`}
          onCommit={setQuantity}
        />
        {mustCount && (
          <NumberField
            label="Counted at home before"
            {...many}
            value={counted}
            hint={
              atHome === null ? 'Nobody counted them yet.' : 'More than was noted: count what lies there.'
            }
            onCommit={setCounted}
          />
        )}
      </FieldGroup>
      <FormActs words="Note it" missing={missing} onLeave={onDone} />
    </EntryForm>
  );
}
