'use client';

import { useMemo, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { typing } from '@/app/_documents/typing';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_stallDay/laterParts';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { bringNone } from '@/app/_words/stall/bringWords';
import { offerWords } from '@/app/_words/stall/offerWords';
import { bringAnswer } from '@/app/_words/stall/stallPlanWords';
import { goodsKey } from '@/lib/stall/goodsKey';
import { fewerOfRange } from '@/lib/stall/plan/advice/sayFewer';
import { type BringCell, broughtOf } from '@/lib/stall/plan/bringGrid';
import { holdNumbers } from '@/lib/stall/plan/holdNumbers';
import type { StallGoods } from '@/shared/schemas/stallDay';
import styles from './Bring.module.css';
import { BringRangePart } from './BringRangePart';
import { holdCells, isOtherThanAdvised } from './holdCells';
import { OverLimits } from './OverLimits';

/** How many to bring: the maker's numbers, the advice beside them, what taking it would do. */
export function BringSection({ on, numeral }: Readonly<{ on: StallOnScreen; numeral: number }>) {
  const { grid, plan, id } = on;
  const latest = useRef(on);
  latest.current = on;
  // The same for as long as the screen stands, so that no field is drawn again for it.
  const actions = useMemo(() => actionsOf(() => latest.current), []);
  const noted = useMemo(
    () => new Map(on.noted?.lessons.map(({ goods, next }) => [goodsKey(goods), next])),
    [on.noted],
  );
  const answer = useRef<HTMLDivElement>(null);
  const fewer = plan === null ? null : fewerOfRange(plan);
  const line = bringAnswer(grid, fewer, on.stallDay);
  const cells = grid.flatMap(({ rows }) => rows.flatMap((row) => row.cells));
  // That nothing fits is no advice to bring nothing.
  const differs = cells.some(isOtherThanAdvised) && (plan?.nothingFits ?? null) === null;
  const follows = cells.some(({ held }) => held === null);
  const total = (of: 'mine' | 'advised') => grid.reduce((sum, range) => sum + range[of], 0);
  return (
    <CardSection
      numeral={numeral}
      id="how-many"
      heading="How many to bring"
      answer={
        grid.length > 0 && (
          <>
            <strong>{line.key}</strong>
            {line.after}
          </>
        )
      }
    >
      {grid.length === 0 && <p className={styles.none}>{bringNone(on.stallDay)}</p>}
      {grid.map((range) => (
        <BringRangePart key={range.rangeId} {...{ range, noted, actions }} />
      ))}
      {plan !== null && <OverLimits plan={plan} on={on} />}
      {grid.length > 0 && (
        <div ref={answer} tabIndex={-1}>
          {follows && <p className={styles.key}>Where nothing is typed, the advice is brought.</p>}
          {differs && (
            <p className={styles.key}>In each field yours, then the advice; tinted where they differ.</p>
          )}
          <div className={styles.offer}>
            {differs && (
              <Button
                kind="strong"
                onPress={() => {
                  answer.current?.focus();
                  actions.take('Take the advice', cells);
                }}
              >
                Take the {total('advised')}
              </Button>
            )}
            {follows && (
              <Button
                onPress={() => {
                  answer.current?.focus();
                  actions.keep(cells);
                }}
              >
                Keep these {total('mine')}
              </Button>
            )}
            {plan !== null && differs && <p>{offerWords(plan, grid, on.amount)}</p>}
          </div>
        </div>
      )}
      <FoldRow
        place={id}
        folds={[
          {
            id: 'stall-fold-goods',
            name: 'Goods and forecast',
            holds: ['stall-ranges', 'stall-forecast', 'stall-eventFactor', 'stall-leftoverShare'],
            body: () => <LaterPart part={laterParts.goods} what="The goods" props={{ on }} />,
          },
          {
            id: 'stall-fold-limits',
            name: 'Table, cash and hours',
            holds: ['stall-limits'],
            body: () => <LaterPart part={laterParts.limits} what="The limits" props={{ on }} />,
          },
          ...(plan === null
            ? []
            : [
                {
                  id: 'stall-fold-why',
                  name: 'Why these numbers',
                  body: () => <LaterPart part={laterParts.why} what="The reason" props={{ on, plan }} />,
                },
              ]),
        ]}
      />
    </CardSection>
  );
}

// Helpers

function actionsOf(now: () => StallOnScreen) {
  return {
    hold: (goods: StallGoods, name: string, to: number | null) =>
      now().change(
        `Bring of ${name}`,
        (stallDay) => ({
          ...stallDay,
          held: holdNumbers(stallDay.held, [{ ...goods, bring: to }]),
        }),
        `bring ${goodsKey(goods)} ${typing.act()}`,
      ),
    take: (label: string, cells: readonly BringCell[]) =>
      holdCells(now(), label, cells, ({ advised }) => advised),
    /** What follows the advice so far is held as it stands. */
    keep: (cells: readonly BringCell[]) => holdCells(now(), 'Keep these numbers', cells, broughtOf),
  };
}
