'use client';

import Link from 'next/link';
import { useId, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { focusById } from '@/app/_controls/focusById';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { newId } from '@/app/_documents/newId';
import { NotTaken } from '@/app/_supply/NotTaken';
import styles from '@/app/_supply/Supply.module.css';
import { useTaken } from '@/app/_supply/useTaken';
import { rateUseWords, usedUpWords } from '@/app/_words/supply/usedUpWords';
import type { BuyingPlan } from '@/lib/buying/buyingPlan';
import type { RateUse } from '@/lib/buying/rateUse';
import { freeName } from '@/lib/drafts/freeName';
import { type Consumable, consumableSchema } from '@/shared/schemas/making/supply';
import { rateThings } from '@/shared/tables/rateThings';
import type { BuyingOnScreen } from './buyingOnScreen';

/** What the jobs use up by their rates and no row holds: how much of each, and one press to bring it on the list. */
export function NotSetUp({ on, plan }: Readonly<{ on: BuyingOnScreen; plan: BuyingPlan }>) {
  const { workspace, formatter } = on.supply;
  const [added, setAdded] = useState<string | null>(null);
  const { problem, taken } = useTaken();
  const told = useId();
  const { notSetUp } = plan;
  if (notSetUp.length === 0 && added === null) return null;
  const all = notSetUp.reduce((sum, { cost }) => sum + cost, 0);
  const setUp = (rate: RateUse) => {
    const names = Object.values(workspace.consumables).map(({ name }) => name);
    const name = names.includes(rate.name) ? freeName(rate.name, names) : rate.name;
    const body = { ...consumableOf(rate), name };
    if (!taken(workspace.edit(name, [{ do: 'add', kind: 'consumable', id: newId(), body }]))) return;
    setAdded(name);
    focusById(told);
  };
  return (
    <div>
      <p className={styles.quiet} id={told} tabIndex={-1} role="status">
        {added !== null && `${usedUpWords.isSetUp(added)} `}
        {added !== null && <Link href="/making/suppliers#consumables">{usedUpWords.link}</Link>}
      </p>
      {notSetUp.length > 0 && (
        <Fold summary={usedUpWords.told(notSetUp, formatter)} line={usedUpWords.cost(formatter.money(all))}>
          <RowList label="Not on this list">
            {notSetUp.map((rate) => (
              <ListRow
                key={`${rate.thing} ${rate.packagingId}`}
                acts={
                  <Button spoken={`Set up ${rate.name}`} onPress={() => setUp(rate)}>
                    Set it up
                  </Button>
                }
              >
                {rate.name}
                <p className={styles.quiet}>{rateUseWords(rate, formatter)}</p>
              </ListRow>
            ))}
          </RowList>
        </Fold>
      )}
      <NotTaken problem={problem} />
    </div>
  );
}

// Helpers

/** One of it each press, piece or order, as the rate has it. */
const consumableOf = ({ thing, name, packagingId }: RateUse): Consumable =>
  consumableSchema.parse({
    name,
    unit: thing === 'protectivePaper' ? 'sheet' : 'piece',
    uses: [
      {
        id: newId(),
        per: thing === 'packaging' ? 'piece' : rateThings[thing].per,
        amount: 1,
        packagingIds: packagingId === null ? null : [packagingId],
      },
    ],
  });
