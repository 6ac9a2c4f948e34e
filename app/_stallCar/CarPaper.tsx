'use client';

import { useMemo, useState } from 'react';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { PaperToPrint } from '@/app/_papers/PaperToPrint';
import { carWords } from '@/app/_words/stall/carWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { CarListBody } from '@/lib/papers/bodies/carListPaper';
import type { PaperSource } from '@/lib/papers/paperOf';
import { designKey } from '@/lib/stall/designKey';
import { toMinor } from '@/shared/money';
import type { PlannedGoods } from '@/shared/schemas/stallPapers';
import styles from './Car.module.css';
import type { CarOnScreen, StallPart } from './carOnScreen';

/** The list to load by: of the fixed plan, else of the plan of now. */
export function CarPaper({ part, car }: Readonly<{ part: StallPart; car: CarOnScreen }>) {
  const { workshop, readFile } = part.workspace;
  const [page, setPage] = useState<CarListBody['page']>(workshop.units.length === 'in' ? 'letter' : 'a4');
  const source = useMemo(() => sourceOf(part, car, page), [part, car, page]);
  if (source === null) return <p>There is nothing to load yet: the plan comes first.</p>;
  return (
    <div className={styles.rows}>
      <ChoiceField
        label="Printed on"
        value={page}
        choices={[
          { value: 'a4', label: 'A4' },
          { value: 'letter', label: 'Letter' },
        ]}
        onCommit={setPage}
      />
      <PaperToPrint {...{ source, readFile }} words={workshop.papers.words} spoken="the list for the car" />
    </div>
  );
}

// Helpers

function sourceOf(
  { workspace, stallDay }: StallPart,
  { plans, toIssue, float }: CarOnScreen,
  page: CarListBody['page'],
): PaperSource | null {
  const { workshop } = workspace;
  const plan =
    plans.counts?.body ?? (toIssue?.kind === 'ready' ? toIssue.body({ count: 1, letter: null }) : null);
  if (plan === null) return null;
  const locale = usableLocale(workshop.locale);
  return {
    kind: 'carList',
    body: {
      page,
      locale,
      language: 'en',
      currency: plan.currency,
      workshop: workshop.seller.name.trim() === '' ? workshop.name : workshop.seller.name,
      name: plan.title,
      place: plan.place,
      days: plan.days.map(({ day }) => day),
      ranges: plan.ranges.flatMap(({ id, name, hasSizes }) => {
        const goods = plan.goods.filter(({ rangeId, bring }) => rangeId === id && bring > 0);
        const seconds = plan.goods.flatMap((one) =>
          one.rangeId === id && one.seconds !== undefined ? [{ ...one, bring: one.seconds }] : [],
        );
        return [
          ...(goods.length === 0 ? [] : [{ name, ...loadOf(goods, hasSizes) }]),
          ...(seconds.length === 0 ? [] : [{ name: carWords.secondsOf(name), ...loadOf(seconds, hasSizes) }]),
        ];
      }),
      takeAlong: stallDay.takeAlong.map(({ what }) => what),
      float: (plans.counts?.body.float ?? float).map(({ value, count }) => ({
        minor: toMinor(value, plan.currency),
        count,
      })),
    },
  };
}

function loadOf(goods: readonly PlannedGoods[], hasSizes: boolean) {
  const sizes = hasSizes ? [...new Set(goods.map(({ size }) => size))] : [''];
  const designs = new Map(goods.map((one) => [designKey(one), one.design] as const));
  return {
    sizes,
    designs: [...designs].map(([key, name]) => ({
      name,
      bring: sizes.map((size) =>
        goods
          .filter((one) => designKey(one) === key && (!hasSizes || one.size === size))
          .reduce((sum, { bring }) => sum + bring, 0),
      ),
    })),
  };
}
