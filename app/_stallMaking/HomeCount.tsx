'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Formatter } from '@/app/_words/formatter';
import { homeWords, knownWords } from '@/app/_words/stall/homeWords';
import { designKey } from '@/lib/stall/designKey';
import { goodsKey } from '@/lib/stall/goodsKey';
import { finishedAtHome } from '@/lib/stock/finishedAtHome';
import { numberLimits } from '@/shared/limits';
import type { StallDay, StallGoods } from '@/shared/schemas/stallDay';
import { blanksNotedSchema } from '@/shared/schemas/stock';
import styles from './Making.module.css';

type Counted = StallGoods & { readonly design: string };

type HomeCountProps = Readonly<{
  workspace: Pick<ReadyWorkspace, 'piles' | 'note'>;
  goods: readonly Counted[];
  ranges: StallDay['ranges'];
  formatter: Formatter;
}>;

/** Finished pieces at home, by design and size: what is known, and what was counted now. Empty fields note nothing. */
export function HomeCount({ workspace, goods, ranges, formatter }: HomeCountProps) {
  const [typed, setTyped] = useState<ReadonlyMap<string, number>>(new Map());
  const known = new Map(finishedAtHome(workspace.piles).map((one) => [goodsKey(one), one.pieces]));
  const designs = new Map<string, Counted[]>();
  for (const one of goods) {
    const key = designKey(one);
    designs.set(key, [...(designs.get(key) ?? []), one]);
  }
  const counted = goods.filter((one) => known.has(goodsKey(one))).length;
  const missing = typed.size === 0 ? homeWords.missing : undefined;
  const enter = () => {
    const counts = goods.flatMap((one) => {
      const quantity = typed.get(goodsKey(one));
      const { jobId, lineId, size } = one;
      return quantity === undefined
        ? []
        : [{ item: { kind: 'finished', jobId, lineId, size }, quantity } as const];
    });
    const { state } = workspace.note(
      homeWords.label,
      counts.map(({ item, quantity }) => ({
        kind: 'stockCount',
        body: { item, place: { kind: 'home' }, grade: 'first', quantity },
      })),
    );
    if (state === 'shown') setTyped(new Map());
  };
  return (
    <EntryForm className={styles.home} label={homeWords.label} missing={missing} onEnter={enter}>
      <p className={styles.quiet}>
        {homeWords.rule} {counted < goods.length && homeWords.uncounted(counted > 0)}
      </p>
      {[...designs].map(([key, sizes]) => (
        <fieldset key={key} className={styles.design}>
          <legend>
            <bdi>{calledIn(ranges, sizes[0])}</bdi>
          </legend>
          <FieldGroup pairs>
            {sizes.map((one) => (
              <NumberField
                key={one.size}
                label={one.size === '' ? homeWords.pieces : one.size}
                width="narrow"
                value={typed.get(goodsKey(one)) ?? null}
                {...numberLimits(blanksNotedSchema, [])}
                hint={hintOf(known.get(goodsKey(one)), formatter)}
                onCommit={(to) =>
                  setTyped((now) => {
                    const next = new Map(now);
                    if (to === null) next.delete(goodsKey(one));
                    else next.set(goodsKey(one), to);
                    return next;
                  })
                }
              />
            ))}
          </FieldGroup>
        </fieldset>
      ))}
      <Button type="submit" blockedBy={missing}>
        {homeWords.note}
      </Button>
    </EntryForm>
  );
}

// Helpers

const hintOf = (pieces: number | undefined, formatter: Formatter) =>
  pieces === undefined ? undefined : knownWords(pieces, formatter);

/** A shirt and a mug may bear the same design. */
function calledIn(ranges: StallDay['ranges'], goods: Counted | undefined): string {
  if (goods === undefined) return '';
  const range = ranges.find(({ designs }) =>
    designs.some((design) => designKey(design) === designKey(goods)),
  );
  return [...(range === undefined ? [] : [range.name]), goods.design].join(', ');
}
