import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type {
  AskedOfCustomer,
  BuyingPlan,
  BuyingRow,
  CoverOffer,
  Purchase,
  SupplierPart,
} from '@/lib/buying/buyingPlan';
import type { CoverChoice } from '@/lib/job/coversOf';
import type { Consumable, Cover } from '@/shared/schemas/making/supply';
import { unitOf } from './itemWords';

/** @example 'Buy 45 × Club shirt and 48 sheets: 231.40 USD with freight; order by Thu 3 Dec.' */
export function buyingAnswer(
  plan: BuyingPlan,
  orderBy: string | null,
  formatter: Formatter,
  locale: string,
): string {
  const bought = plan.rows.filter(({ purchase }) => (purchase?.quantity ?? 0) > 0);
  if (bought.length === 0)
    return plan.rows.length === 0
      ? 'Nothing is needed yet.'
      : 'Nothing is to be bought: all of it lies at home.';
  const { cash, currency } = plan;
  const unknown = plan.suppliers.some(({ freightMinor }) => freightMinor === null);
  const sum = `${minorMoney(cash.totalMinor, currency, locale)}${unknown ? ' without freight that nobody has told' : cash.freightMinor > 0 ? ' with freight' : ''}`;
  const unpriced =
    cash.unpriced === 0 ? '' : `, and ${formatter.count(cash.unpriced, 'thing')} without a price`;
  const by = orderBy === null ? '' : `; order by ${formatter.day(orderBy)}`;
  return `Buy ${thingsWords(bought, formatter)}: ${sum}${unpriced}${by}.`;
}

/** @returns blanks and sheets by their number, all else counted. */
function thingsWords(bought: readonly BuyingRow[], formatter: Formatter): string {
  const quantity = (rows: readonly BuyingRow[]) =>
    rows.reduce((sum, { purchase }) => sum + (purchase?.quantity ?? 0), 0);
  const blanks = bought.filter(({ item }) => item.kind === 'blank');
  const names = [...new Set(blanks.map(({ name }) => name))];
  const papers = bought.filter(({ item }) => item.kind === 'paper');
  const units = [...new Set(papers.map(({ unit }) => unit))];
  const others = bought.length - blanks.length - papers.length;
  const parts = [
    ...(blanks.length === 0
      ? []
      : [
          names.length === 1
            ? `${formatter.number(quantity(blanks))} × ${names[0]}`
            : formatter.count(quantity(blanks), 'blank'),
        ]),
    ...units.map((unit) => {
      const many = quantity(papers.filter((row) => row.unit === unit));
      return `${formatter.number(many)} ${unit === 'm' ? 'm of paper' : unitOf(unit, many)}`;
    }),
    ...(others === 0 ? [] : [formatter.count(others, oneOther(blanks, papers), manyOthers(blanks, papers))]),
  ];
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

const isAlone = (...groups: readonly (readonly unknown[])[]) => groups.every(({ length }) => length === 0);
const oneOther = (...groups: readonly (readonly unknown[])[]) =>
  isAlone(...groups) ? 'thing' : 'other thing';
const manyOthers = (...groups: readonly (readonly unknown[])[]) =>
  isAlone(...groups) ? 'things' : 'other things';

/** When a cover is the one to take. */
export const coverFor: Readonly<Record<Cover, string>> = {
  expected: 'Supply in a day or two, a patient customer',
  usual: 'The usual compromise',
  sure: 'A fixed date, no supply in time',
};

/** @example '45 blanks, 217.34 USD' */
export const coverFigure = ({ bought, cost }: CoverChoice, formatter: Formatter): string =>
  `${formatter.count(bought, 'blank')}, ${formatter.money(cost)}`;

/** @returns how likely every size comes out whole. */
export const coverReach = ({ everySize }: CoverChoice, formatter: Formatter): string =>
  `every size whole: ${formatter.share(everySize)}`;

/** @returns what the whole list comes to at a cover, beside what lies here and with the maker's own numbers. */
export const coverToPay = (
  { toPayMinor, unpriced, isFreightUntold }: CoverOffer,
  formatter: Formatter,
  { currency, locale }: { readonly currency: string; readonly locale: string },
): string =>
  [
    `to pay in all ${minorMoney(toPayMinor, currency, locale)}`,
    ...(isFreightUntold ? ['freight apart'] : []),
    ...(unpriced > 0 ? [`${formatter.count(unpriced, 'thing')} without a price apart`] : []),
  ].join(', ');

/** @returns how likely every size is whole with all that will be there; null where that is as likely as told. */
export function coverReallyReaches(
  { everySize, everySizeWithAll }: CoverOffer,
  isHeld: boolean,
  formatter: Formatter,
): string | null {
  const share = formatter.share(everySizeWithAll);
  if (share === formatter.share(everySize)) return null;
  return `${isHeld ? 'With your own numbers' : 'With all that lies here and is bought'}: ${share}`;
}

/** Where no cheaper set was looked for to the end. */
export const dearerWords = ({ dearerAtMost }: CoverChoice, formatter: Formatter): string | null =>
  dearerAtMost > 0 ? `At most ${formatter.money(dearerAtMost)} dearer than the cheapest set.` : null;

/** @returns what becomes of the spares of a cover, so that nobody fears them; null where there are none. */
export function sparesWords({ bought, sizes }: CoverChoice, formatter: Formatter): string | null {
  const spares = bought - sizes.reduce((sum, { pieces }) => sum + pieces, 0);
  if (spares <= 0) return null;
  const left = spares === 1 ? 'is not lost: not needed, it is' : 'are not lost: those left are';
  return `${formatter.count(spares, 'spare')} ${left} stock at nearly full worth. Odd sizes tie up cash longest.`;
}

/** @returns ink that is in no row, for nobody told its channels; nothing where there is none. */
export const untoldInkWords = ({ ink }: BuyingPlan, formatter: Formatter): readonly string[] =>
  ink.flatMap(({ name, untoldMl }) =>
    untoldMl >= 0.5
      ? [
          `${name}: ${formatter.number(untoldMl, 0)} mL more, no picture says of which colours: see that none runs low.`,
        ]
      : [],
  );

/** @returns how likely all sizes are whole where scrap is as high as it may well be. */
export function upperWords(
  upper: CoverChoice,
  chosen: CoverChoice | undefined,
  formatter: Formatter,
): string {
  const more = chosen === undefined ? 0 : upper.bought - chosen.bought;
  return `Were scrap as high as it may well be by your log: ${coverFigure(upper, formatter)}${more > 0 ? `, ${formatter.number(more)} more` : ', no more than these'}.`;
}

/**
 * What of it lies at home, what of that others keep, and what is free.
 *
 * @example '10, 8 reserved, 2 free'
 */
export function stockWords({ stock }: Pick<BuyingRow, 'stock'>, formatter: Formatter): string {
  const number = (value: number) => formatter.number(value, 1);
  const { reserved } = stock;
  const kept = reserved > 0 ? [`${number(reserved)} reserved`] : [];
  if (stock.kind === 'notCounted') return ['not counted', ...kept].join(', ');
  const { onHand, free } = stock;
  const lies = onHand < 0 ? `${number(-onHand)} fewer than none (count it)` : number(onHand);
  const left = kept.length > 0 ? [`${free > 0 ? number(free) : 'none'} free`] : [];
  return [lies, ...kept, ...left].join(', ');
}

/** @returns the pack a row is bought in, and why more of it is bought than is needed. */
export function packWords({ purchase }: BuyingRow, formatter: Formatter): string {
  if (purchase === null) return '';
  const { packs: count, packSize } = purchase;
  const packs =
    count === null || packSize === null || packSize === 1
      ? ''
      : `${formatter.number(count)} × ${formatter.number(packSize)}`;
  const more = { tier: 'more is cheaper', minimum: 'for the least order', freight: 'freight comes free' };
  return [packs, purchase.more === null ? '' : more[purchase.more]].filter((part) => part !== '').join(', ');
}

/** Where no supplier is known of. */
export const noSupplierTold =
  'Reckoned at the prices of your blanks, papers and ink. An offer of a supplier takes their place.';

/** @returns what one supplier's part comes to. */
export function supplierPartWords(
  part: SupplierPart,
  currency: string,
  formatter: Formatter,
  locale: string,
): string {
  const money = (minor: number) => minorMoney(minor, currency, locale);
  return [
    `${money(part.goodsMinor)} goods`,
    part.freightMinor === null
      ? 'freight not told'
      : part.freightIsFree || part.freightMinor === 0
        ? 'freight free'
        : `${money(part.freightMinor)} freight`,
    part.shortMinor > 0 ? `${money(part.shortMinor)} short of the least order` : null,
    part.orderBy === null ? null : `order by ${formatter.day(part.orderBy)}`,
  ]
    .filter((one) => one !== null)
    .join(' · ');
}

/** @returns what buying together saves; null for a single job. */
export function togetherWords({ apart, currency }: BuyingPlan, locale: string): string | null {
  if (apart === null) return null;
  const money = (minor: number) => minorMoney(minor, currency, locale);
  return apart.savingMinor > 0
    ? `Buying together saves ${money(apart.savingMinor)}: apart it would be ${money(apart.totalMinor)}.`
    : 'Buying together saves nothing here.';
}

/** @returns how many are needed: whole ones of what nobody uses a part of, rounded up */
export const needWords = (need: number, unit: Consumable['unit'], { number }: Formatter): string =>
  unit === 'm' || unit === 'mL' ? number(need, 1) : number(Math.ceil(need - 1e-9));

/** @returns how many are left on average: whole ones, for a part of one is what chance may leave */
export const leftOverWords = (left: number, { number }: Formatter): string =>
  left < 1 ? 'At most 1' : `About ${number(Math.round(left))}`;

/** @returns what all that is left over is worth. */
export const leftWords = ({ left, currency }: BuyingPlan, locale: string): string =>
  `Of what lies here free and is bought about this is left once the work is done, worth ${minorMoney(left.worthMinor, currency, locale)} at what it costs.`;

interface MoneyContext {
  readonly currency: string;
  readonly formatter: Formatter;
  readonly locale: string;
}

/** @returns an offer in one line: from whom, how many for how much, whether it comes in time. */
export function purchaseWords(
  { quantity, amountMinor, inTime, orderBy }: Purchase,
  { supplier, instead }: { readonly supplier: string; readonly instead: string | null },
  { currency, formatter, locale }: MoneyContext,
): string {
  return [
    instead === null ? supplier : `${supplier}, ${instead} instead`,
    `${formatter.number(quantity)} for ${amountMinor === null ? 'no price told' : minorMoney(amountMinor, currency, locale)}`,
    inTime === false ? 'too late' : orderBy === null ? null : `by ${formatter.day(orderBy)}`,
  ]
    .filter((part) => part !== null)
    .join(', ');
}

/** @returns what a customer is asked to bring, spares among it. */
export const askedWords = ({ name, sizes }: AskedOfCustomer, formatter: Formatter): string =>
  `${name}: ${sizes
    .filter(({ ask }) => ask > 0)
    .map(({ size, pieces, ask }) => `${size} ${formatter.number(ask)} for ${formatter.number(pieces)}`)
    .join(', ')}. The spares are asked of the customer, not bought.`;
