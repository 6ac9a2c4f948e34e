import { addDays } from '@/shared/days';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { PriceList, PriceListVersion } from '@/shared/schemas/priceList';
import type { FrozenOutcome, TaxMode } from './freezeItem';

/** What stands in the way of issuing a list. */
export type IssueObstacle =
  | { readonly kind: 'noItems' }
  /** What its outcome says. */
  | { readonly kind: 'item'; readonly itemId: string }
  /** Some items are sold with tax inside and others without: on one paper nobody could tell. */
  | {
      readonly kind: 'mixedTax';
      readonly items: readonly { readonly itemId: string; readonly taxMode: TaxMode }[];
    };

export type NextVersion =
  /** What goes out under the number that the paper is given. */
  | { readonly kind: 'ready'; readonly version: (number: PaperNumber) => PriceListVersion }
  /** Nothing may stand in the way as well, while prices are being made. */
  | { readonly kind: 'refused'; readonly obstacles: readonly IssueObstacle[] };

/** @returns the next version of a list with its prices frozen as they are now, or all that stands in its way at once. */
export function nextVersion(
  list: PriceList,
  outcomes: readonly { readonly kind: string }[],
  currency: string,
  day: string,
): NextVersion {
  const frozen = outcomes.flatMap((one): readonly Frozen[] => (isFrozen(one) ? [one] : []));
  const obstacles = obstaclesOf(list, outcomes);
  const [first] = frozen;
  if (first === undefined || frozen.length < list.items.length || obstacles.length > 0)
    return { kind: 'refused', obstacles };
  return {
    kind: 'ready',
    version: (number) => ({
      number,
      issuedOn: day,
      validUntil: addDays(day, list.validDays),
      currency,
      taxMode: first.taxMode,
      title: list.name,
      from: list.from,
      notes: list.notes,
      leadTime: list.leadTime,
      items: frozen.map(({ item }) => item),
    }),
  };
}

// Helpers

type Frozen = Extract<FrozenOutcome, { readonly kind: 'frozen' }>;

const isFrozen = (one: { readonly kind: string } | undefined): one is Frozen => one?.kind === 'frozen';

function obstaclesOf(
  { items }: PriceList,
  outcomes: readonly { readonly kind: string }[],
): readonly IssueObstacle[] {
  if (items.length === 0) return [{ kind: 'noItems' }];
  const refused = items.flatMap(({ id }, index): readonly IssueObstacle[] => {
    const outcome = outcomes[index];
    return outcome === undefined || outcome.kind === 'asked' || isFrozen(outcome)
      ? []
      : [{ kind: 'item', itemId: id }];
  });
  const taxed = items.flatMap(({ id }, index) => {
    const outcome = outcomes[index];
    return isFrozen(outcome) ? [{ itemId: id, taxMode: outcome.taxMode }] : [];
  });
  const isMixed = new Set(taxed.map(({ taxMode }) => taxMode)).size > 1;
  return isMixed ? [...refused, { kind: 'mixedTax', items: taxed }] : refused;
}
