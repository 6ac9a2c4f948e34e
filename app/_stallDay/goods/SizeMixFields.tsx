'use client';

import { stallFieldId } from '@/app/_documents/fieldAddress';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { MeasureField } from '@/app/_fields/MeasureField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import {
  ownSizesWords,
  type SizeMixChoice,
  sizeMixChoiceOf,
  sizeMixChoices,
} from '@/app/_words/stall/goodsWords';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import { ownPieces } from '@/lib/stall/plan/demand/pastWanted';
import { numberLimits } from '@/shared/limits';
import type { SizeMix } from '@/shared/schemas/sizeMix';
import { type StallRange, stallDaySchema } from '@/shared/schemas/stallDay';
import { stallSizeCurves } from '@/shared/tables/sizeCurves';
import styles from './Goods.module.css';
import { sizesOfRange } from './linesOfJobs';

type SizeMixFieldsProps = Readonly<{
  on: StallOnScreen;
  range: StallRange;
  at: number;
  /** Closed stall days, by which sizes go as well. */
  past: readonly PastDay[];
}>;

/** Who buys, which says how the sizes are asked for; or the maker’s own shares of them. */
export function SizeMixFields({ on, range, at, past }: SizeMixFieldsProps) {
  const { set, workspace, stallDay, formatter } = on;
  const { name, sizes } = range;
  const path = ['ranges', at, 'sizes'] as const;
  const offered = [
    ...new Set([
      ...sizesOfRange(range, workspace),
      ...(sizes?.from === 'typed' ? sizes.shares : []).map(({ size }) => size),
    ]),
  ];
  const own = ownSizesWords(
    sizes,
    ownPieces(stallDay.ranges, range, past, sizesOfRange(range, workspace)),
    stallDay.areOwnSizesLeftOut === true,
    formatter,
  );
  const setShare = (size: string, share: number | null) => {
    if (sizes?.from !== 'typed') return;
    const typed = new Map(sizes.shares.map((one) => [one.size, one.share]));
    typed.set(size, share ?? 0);
    set(
      `Share of ${size}`,
      [...path, 'shares'],
      offered.flatMap((one) => {
        const value = typed.get(one);
        return value === undefined ? [] : [{ size: one, share: value }];
      }),
    );
  };
  return (
    <>
      <ChoiceField
        label="Sizes go by"
        id={stallFieldId(path)}
        value={sizeMixChoiceOf(sizes)}
        choices={sizeMixChoices}
        onCommit={(to) => set(`Sizes of ${name}`, path, mixOf(to, sizes, offered))}
      />
      {sizes?.from === 'typed' && (
        <div className={styles.shares}>
          {offered.map((size) => (
            <MeasureField
              key={size}
              label={size}
              kind="share"
              width="full"
              value={sizes.shares.find((one) => one.size === size)?.share ?? null}
              {...numberLimits(stallDaySchema, ['ranges', 0, 'sizes', 'shares', 0, 'share'])}
              whenEmpty="Nobody asks for it then."
              onCommit={(to) => setShare(size, to)}
            />
          ))}
        </div>
      )}
      {own !== null && <p className={styles.quiet}>{own}</p>}
    </>
  );
}

// Helpers

/** Shares of one’s own begin with those of the crowd before. */
function mixOf(choice: SizeMixChoice, before: SizeMix | null, sizes: readonly string[]): SizeMix | null {
  if (choice === 'none') return null;
  // What orders asked for stays, whoever else is expected.
  const kept = before?.ordered === undefined ? {} : { ordered: before.ordered };
  if (choice !== 'typed') return { from: 'audience', audience: choice, ...kept };
  if (before?.from === 'typed') return before;
  const curve = stallSizeCurves[before?.audience ?? 'adults'];
  const shares = sizes.map((size) => ({ size, share: curve[size] ?? 0 }));
  return { from: 'typed', shares: shares.length > 0 ? shares : [{ size: 'M', share: 1 }], ...kept };
}
