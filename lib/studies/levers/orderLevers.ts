import type { CostedJob } from '@/lib/grid/costJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import { quantitySpots } from '@/lib/studies/curve/quantitySpots';
import type { Change } from '@/shared/finding';
import { type MinorUnits, splitMinor } from '@/shared/money';
import type { LeverDraft } from './lever';
import { rateChange } from './rateChange';

/** Changes of what is ordered and asked: a few pieces more, the next price, two jobs in one session. */
export function orderLevers(costed: CostedJob, grid: Grid): readonly LeverDraft[] {
  return [...fillSpot(costed, grid), ...nextPrice(costed), ...shareSession(costed)];
}

/** A customer may be asked for so many more, as a share of the order; for more it is another order. */
const FEW = 0.25;

/** Ask for the pieces that fill the next sheet, session or pack. */
function fillSpot(costed: CostedJob, grid: Grid): readonly LeverDraft[] {
  const { job } = costed.laidOut;
  const asked = job.lines.reduce((sum, line) => sum + piecesOf(line), 0);
  const [spot] = quantitySpots(costed, grid, 1);
  if (spot === undefined || !Number.isInteger(asked)) return [];
  const [reason] = spot.reasons;
  const more = spot.n - asked;
  if (more > FEW * asked) return [];
  const added =
    reason?.kind === 'pack'
      ? (lineId: string, size: string) => (lineId === reason.lineId && size === reason.size ? more : 0)
      : inTheMix(job, more);
  const changes = job.lines.flatMap((line, index): readonly Change[] => {
    const quantities = line.line.quantities.map((entry, at, all) => ({
      ...entry,
      // A size named twice gets its pieces once.
      quantity:
        all.findIndex(({ size }) => size === entry.size) === at
          ? entry.quantity + added(line.line.id, entry.size)
          : entry.quantity,
    }));
    const gained = line.sizes.reduce((sum, { size }) => sum + added(line.line.id, size), 0);
    if (gained === 0) return [];
    const ordered = line.line.orderedQuantity;
    return [
      { document: 'job', path: ['lines', index, 'quantities'], value: quantities },
      ...(ordered === null
        ? []
        : [{ document: 'job', path: ['lines', index, 'orderedQuantity'], value: ordered + gained } as const]),
    ];
  });
  return [
    {
      id: 'fillSpot',
      facts: { more, quantity: spot.n, addedCost: spot.addedCost, filled: reason?.kind ?? 'sheet' },
      changes,
    },
  ];
}

/** More pieces in the sizes that are ordered, whole ones, by largest remainder. */
function inTheMix(job: ResolvedJob, more: number): (lineId: string, size: string) => number {
  const sizes = job.lines.flatMap((line) =>
    line.sizes.map(({ size, quantity }) => ({ key: JSON.stringify([line.line.id, size]), quantity })),
  );
  const parts = splitMinor(
    more as MinorUnits,
    sizes.map(({ quantity }) => quantity),
  );
  const byKey = new Map(sizes.map(({ key }, index) => [key, Number(parts[index] ?? 0)]));
  return (lineId, size) => byKey.get(JSON.stringify([lineId, size])) ?? 0;
}

/** Every asked price one ending higher. */
function nextPrice({ laidOut }: CostedJob): readonly LeverDraft[] {
  const step = laidOut.job.workshop.policy.priceStep;
  const changes = laidOut.job.lines.flatMap(({ line }, index): readonly Change[] =>
    line.askedPrice === null
      ? []
      : [
          {
            document: 'job',
            path: ['lines', index, 'askedPrice'],
            value: Number((line.askedPrice + step).toPrecision(12)),
          },
        ],
  );
  return changes.length === 0 ? [] : [{ id: 'nextPrice', facts: { step }, changes }];
}

/** Two jobs in one session: each carries half of setting up, cleaning down and the ink of cleaning. */
function shareSession(costed: CostedJob): readonly LeverDraft[] {
  const { rates, asOf } = costed.laidOut.job;
  if (wholeJob(costed.sheet, 'sessions') > 1) return [];
  const halves = (['setUpMinutes', 'cleanDownMinutes', 'sessionInk'] as const).filter(
    (name) => rates[name].value > 0,
  );
  if (halves.length === 0) return [];
  return [
    {
      id: 'shareSession',
      facts: {},
      changes: halves.map((name) =>
        rateChange({ document: 'job', path: ['rates', name] }, rates[name], rates[name].value / 2, asOf),
      ),
    },
  ];
}
