import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { AlternativeOffer } from '@/lib/quotes/alternatives/alternativeOffers';
import type { Job } from '@/shared/schemas/job';
import type { Alternative } from '@/shared/schemas/order';

type Bare = Alternative extends infer One ? (One extends Alternative ? Omit<One, 'id'> : never) : never;

/** @returns what an alternative changes: “40 of White shirts, more in L”, “White shirts without Chest badge”. */
export function alternativeName(
  alternative: Bare,
  jobs: readonly { readonly jobId: string; readonly job: Job }[],
  formatter: Formatter,
): string {
  const line = jobs
    .find(({ jobId }) => jobId === alternative.jobId)
    ?.job.lines.find(({ id }) => id === alternative.lineId);
  const name = line?.name ?? 'a line that is gone';
  if (alternative.kind === 'without') {
    const print = line?.placements.find(({ id }) => id === alternative.placementId)?.name;
    return `${name} without ${print ?? 'a print that is gone'}`;
  }
  const { quantity, size } = alternative;
  return `${formatter.number(quantity, 0)} of ${name}${size === null ? '' : `, more in ${size}`}`;
}

/** @returns why it is worth offering, and what it would come to. */
export function offerWords(
  why: AlternativeOffer['why'],
  total: number,
  { currency, locale }: { readonly currency: string; readonly locale: string },
): string {
  const sum = minorMoney(total, currency, locale);
  switch (why.kind) {
    case 'usedUp':
      return `${sum}. It uses up ${[...new Set(why.reasons.map(({ kind }) => usedUp[kind]))].join(' and ')}.`;
    case 'fewer':
      return `${sum}. Fewer pieces, where it is too dear.`;
    case 'onePrintLess':
      return `${sum}. One print less.`;
    default:
      return why satisfies never;
  }
}

const usedUp: Readonly<
  Record<Extract<AlternativeOffer['why'], { kind: 'usedUp' }>['reasons'][number]['kind'], string>
> = {
  sheet: 'a sheet that is begun',
  session: 'an evening at the press',
  pack: 'a pack of blanks',
};
