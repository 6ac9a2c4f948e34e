import type { CostedJob } from '@/lib/grid/costJob';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { CaseEvaluator } from '@/lib/price/caseEvaluator';
import { apartList } from '@/lib/price/list/apartList';
import { type BreakList, breakListOf } from '@/lib/price/list/breakList';
import { inversions } from '@/lib/price/list/inversions';
import type { ListedSize } from '@/lib/price/list/lineList';
import { marginOf } from '@/lib/price/list/listFigures';
import { type Selling, sellingTotal } from '@/lib/price/list/selling';
import { sizeMores } from '@/lib/price/list/sizeMores';
import type { PricedLine } from '@/lib/price/priceTable';
import type { Change } from '@/shared/finding';
import { fromMinor, type MinorUnits } from '@/shared/money';
import { remedies } from './remedies';
import { type SellingEffect, sellingEffects } from './sellingEffects';
import { sizesAsSold } from './sizesAsSold';

/** A remedy that one tap takes. */
export interface RemedyOffer {
  readonly kind: Exclude<Selling['kind'], 'asListed' | 'onePrice'>;
  /** The sizes its effects are told of. */
  readonly sizes: readonly string[];
  /** At both ends of every stretch that more pieces would end. */
  readonly effects: readonly SellingEffect[];
  /** The breaks it leads to; null where they stay. */
  readonly breaks: BreakList['breaks'] | null;
  /** How many prices of the first breaks fall away, because those that follow begin before them. */
  readonly dropped: number;
  /** Of the job alone: no remedy touches another. */
  readonly changes: readonly Change[];
}

interface RemedyCase {
  readonly costed: CostedJob;
  readonly line: ResolvedLine;
  readonly priced: PricedLine;
  readonly evaluate: CaseEvaluator;
}

/** A remedy that asks for more than this of what an order must bring drives buyers away. */
const MOST_OF_TARGET = 2;

/**
 * The remedies of a line that is sold as its list stands, as changes of documents. Softening and shifting write the
 * maker's own price for every break: a suggestion would move with the break, and the edge with it. They are reckoned
 * on the size that adds least: what is clean there is clean wherever a charge comes on top.
 *
 * None is offered that loses money: a cap, which changes a few orders only, must not take one of those under full cost;
 * slabs, raised prices and moved breaks must leave every order above it, and none above twice its target.
 */
export function remedyOffers({ costed, line, priced, evaluate }: RemedyCase): readonly RemedyOffer[] {
  const { job } = costed.laidOut;
  const { currency, policy } = job.workshop;
  const { list, needs, orders } = priced;
  const own = sizeMores(job, line, needs, orders, true);
  const before = listWith(list.breaks, 0, currency);
  if (before === null) return [];
  const least = leastOf(own.standing);
  const softened = listWith(list.breaks, least, currency);
  if (softened === null) return [];
  const falling = list.sizes.flatMap(({ more }) => {
    const of = listWith(list.breaks, more, currency);
    return of === null ? [] : inversions(of);
  });
  const quantities = [...new Set(falling.flatMap(({ to, cheaperAt }) => [to, cheaperAt]))].sort(
    (a, b) => a - b,
  );
  const alike = list.sizes.flatMap(({ size, more }) => (more === 0 ? [size] : []));
  const apart = job.ownRows.some(({ cost }) => cost.kind === 'formula');
  const index = job.job.lines.findIndex(({ id }) => id === line.line.id);
  const set = (field: string, value: unknown): Change => ({
    document: 'job',
    path: ['lines', index, field],
    value,
  });
  const told = remedies(softened, apartList(job, needs, orders), policy.priceStep).flatMap(
    (remedy): readonly { readonly sold: Selling; readonly offer: Omit<RemedyOffer, 'effects'> }[] => {
      const kept = { sizes: alike, breaks: null, dropped: 0 };
      switch (remedy.kind) {
        case 'asListed':
        case 'onePrice':
          return [];
        case 'capped':
        case 'slab':
          return [
            {
              sold: { kind: remedy.kind, list: before },
              offer: { ...kept, kind: remedy.kind, changes: [set('selling', remedy.kind)] },
            },
          ];
        case 'setUpApart':
          return [
            { sold: remedy, offer: { ...kept, kind: remedy.kind, changes: [set('selling', remedy.kind)] } },
          ];
        case 'softened':
        case 'shifted': {
          const { breaks } = remedy.list;
          const based = listWith(breaks, -least, currency);
          if (based === null) return [];
          const ownPrices = based.breaks.map(({ from, each }) => ({
            from,
            each: fromMinor((each - own.ownBase) as MinorUnits, currency),
          }));
          return [
            {
              sold: { kind: remedy.kind, list: based },
              offer: {
                ...kept,
                kind: remedy.kind,
                breaks: based.breaks,
                dropped: before.breaks.length - breaks.length,
                changes: [
                  set(
                    'breaks',
                    breaks.map(({ from }) => from),
                  ),
                  set('ownPrices', ownPrices),
                ],
              },
            },
          ];
        }
        default:
          return remedy satisfies never;
      }
    },
  );
  return told.flatMap(({ sold, offer }) =>
    holds(sold, offer.kind === 'softened' || offer.kind === 'shifted' ? own.standing : list.sizes)
      ? [
          {
            ...offer,
            effects: sellingEffects(
              { kind: 'asListed', list: before },
              sold,
              quantities,
              currency,
              sizesAsSold(line, offer.sizes, apart),
              evaluate,
            ),
          },
        ]
      : [],
  );

  function holds(sold: Selling, sizes: readonly ListedSize[]): boolean {
    const more = new Map(sizes.map((one) => [one.size, one.more]));
    const changedOnly = sold.kind === 'capped';
    return needs.sizes.every(({ size, target }) => {
      const adds = more.get(size.size) ?? (0 as MinorUnits);
      for (let n = orders.from; n <= orders.to; n += 1) {
        const total = sellingTotal({ ...sold, more: adds }, n);
        if (total === null) continue;
        if (
          changedOnly &&
          before !== null &&
          total === sellingTotal({ kind: 'asListed', list: before, more: adds }, n)
        )
          continue;
        const [paid, needed] = [fromMinor(total, currency), target(n) * n];
        if (marginOf(needs, needed, paid) < -1e-9) return false;
        if (paid > MOST_OF_TARGET * needed * needs.taxFactor) return false;
      }
      return true;
    });
  }
}

// Helpers

function listWith(
  breaks: BreakList['breaks'] | PricedLine['list']['breaks'],
  more: number,
  currency: string,
) {
  const list = breakListOf(
    breaks.map(({ from, each }) => ({ from, each: (each + more) as MinorUnits })),
    currency,
  );
  return list.ok ? list.value : null;
}

const leastOf = (sizes: readonly ListedSize[]): number => Math.min(...sizes.map(({ more }) => more));
