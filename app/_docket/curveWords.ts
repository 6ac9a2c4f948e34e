import type { BatchPoint } from '@/lib/price/curve/batchPoint';
import type { CurveStudy } from '@/lib/price/curve/curveAnswer';
import type { QuantitySpot } from '@/lib/price/curve/quantitySpots';
import type { SpotReason } from '@/lib/price/curve/usedUpAt';
import type { Job } from '@/shared/schemas/job';
import type { Speaker } from '../_text/speaker';

/** What a batch comes to, in one line. */
export function pointWords(point: BatchPoint, speak: Speaker): string {
  const { n, fullCost, price, margin, payPerHour } = point;
  return `${speak.count(n, 'piece')}: ${speak.money(fullCost / n)} each in full, sold at ${speak.money(price / n)} without tax, margin ${speak.share(margin)}, pays you ${speak.money(payPerHour)} an hour`;
}

/** The quantities that mean something, in sentences. */
export function curveWords(study: CurveStudy, job: Job, speak: Speaker): readonly string[] {
  const { breakEven, knee, points, priced } = study;
  const last = points.at(-1)?.n ?? 0;
  return [
    ...(priced === 'target' || points.length === 0
      ? []
      : breakEven === null
        ? [
            `At this price no batch up to ${speak.count(last, 'piece')} pays its way: every one of them loses money.`,
          ]
        : [
            `It pays its way from ${speak.count(breakEven.first, 'piece')}.${
              breakEven.lasting !== null && breakEven.lasting > breakEven.first
                ? ` A step of sheets or sessions takes it under again; from ${speak.number(breakEven.lasting, 0)} on it stays above.`
                : ''
            }`,
          ]),
    ...(knee === null
      ? []
      : [
          `The knee is at ${speak.number(knee.n, 0)}: from there on doubling the batch adds fewer than ten points of margin.`,
        ]),
    ...study.spots.map((spot) => spotWords(spot, study.asked, job, speak)),
  ];
}

function spotWords({ n, reasons, addedCost }: QuantitySpot, asked: number, job: Job, speak: Speaker): string {
  const why = [...new Set(reasons.map((reason) => reasonWords(reason, job)))].join(' and ');
  return `At ${speak.number(n, 0)} ${why}: ${speak.count(n - asked, 'piece')} more cost ${speak.money(addedCost)} in all.`;
}

function reasonWords(reason: SpotReason, job: Job): string {
  switch (reason.kind) {
    case 'sheet': {
      const line = job.lines.find(({ id }) => id === reason.lineId);
      const placement = line?.placements.find(({ id }) => id === reason.placementId);
      return `the last sheet of ${placement?.name ?? 'a print'} is just full`;
    }
    case 'session':
      return 'a session is just full';
    case 'pack':
      return `a pack of ${reason.size} is just used up`;
    default:
      return reason satisfies never;
  }
}
