import type { Decimal } from 'decimal.js';
import type { OwnRow } from '@/shared/schemas/ownRow';
import type { JobInput } from '@/shared/schemas/request';
import { exact, greater, known, sum } from './exact';
import type { OwnCosts, Quantities } from './figuresOf';
import type { SizePlan } from './planOf';
import type { Use } from './use';

/** What an own formula can see of the piece it is worked out for. */
export interface Seen {
  readonly use: Use;
  readonly quantities: Quantities;
  readonly size: SizePlan;
  readonly jobPieces: Decimal;
}

/** Own formulas that the random jobs may carry, each with its meaning in decimals. */
export const ownFormulas: ReadonlyMap<string, (seen: Seen) => Decimal> = new Map([
  ['blankPrice * 0.1 + 0.25', ({ size }: Seen) => size.blankPrice.times('0.1').plus('0.25')],
  [
    'MAX(attended / 60 * 2; 0.5)',
    ({ quantities }: Seen) => greater(quantities.attended.div(60).times(2), exact('0.5')),
  ],
  // A box of twelve at 1.80, begun boxes whole.
  [
    'ROUNDUP(jobPieces / 12; 0) * 1.8 / jobPieces',
    ({ jobPieces }: Seen) => jobPieces.div(12).ceil().times('1.8').div(jobPieces),
  ],
]);

/** The workshop's rows and the job's; the job's takes the place of one with the same id. */
export function ownRowsOf({ workshop, job }: JobInput): readonly OwnRow[] {
  const replaced = new Set(job.ownRows.map(({ id }) => id));
  return [...workshop.ownRows.filter(({ id }) => !replaced.has(id)), ...job.ownRows];
}

/** Own rows of one good piece. */
export function ownCostsOfPiece(rows: readonly OwnRow[], seen: Seen): OwnCosts {
  return gathered(
    rows,
    rows.map(({ cost }) =>
      cost.kind === 'formula'
        ? known(ownFormulas.get(cost.formula), cost.formula)(seen)
        : exact(known(cost.amount, 'amount').value).times(happens(cost.driver, seen.use, seen.quantities)),
    ),
  );
}

/** Own rows of the whole job: drivers on its totals; a formula speaks of one piece and is added up. */
export function ownCostsOfJob(
  rows: readonly OwnRow[],
  use: Use,
  quantities: Quantities,
  pieces: readonly { readonly count: Decimal; readonly own: OwnCosts }[],
): OwnCosts {
  return gathered(
    rows,
    rows.map(({ id, cost }) =>
      cost.kind === 'formula'
        ? sum(pieces.map(({ count, own }) => count.times(known(own.byRow[id], id))))
        : exact(known(cost.amount, 'amount').value).times(happens(cost.driver, use, quantities)),
    ),
  );
}

function happens(
  driver: 'order' | 'design' | 'session' | 'sheet' | 'press' | 'piece',
  use: Use,
  quantities: Quantities,
): Decimal {
  switch (driver) {
    case 'order':
      return use.orders;
    case 'design':
      return use.designs;
    case 'session':
      return use.sessions;
    case 'sheet':
      return quantities.sheets;
    case 'press':
      return quantities.presses;
    case 'piece':
      return use.pieces;
    default:
      return driver satisfies never;
  }
}

function gathered(rows: readonly OwnRow[], costs: readonly Decimal[]): OwnCosts {
  return {
    byRow: Object.fromEntries(rows.map(({ id }, index) => [id, known(costs[index], id)])),
    all: sum(costs),
    outOfPocket: sum(costs.filter((_, index) => rows[index]?.outOfPocket === true)),
  };
}
