import type { CoverChoice } from '@/lib/job/coversOf';
import { coverOf } from '@/lib/job/coversOf';
import { type InkName, inkNames } from '@/lib/stock/inkChannels';
import type { Consumable, Cover, SupplyItem } from '@/shared/schemas/making/supply';
import type { BuyingAsked, BuyingWork } from './buyingAsked';
import type { BuyingUnit, InkOfPrinter } from './buyingPlan';
import type { RateUse } from './rateUse';
import { isFirstOfOrder, isOf, usedByRates } from './usedByRates';
import type { BlankNeed, KnownPrice, WorkNeeds } from './workNeeds';

/** Sheets to spare beside tests and rejects; common practice. */
const SHEETS_TO_SPARE = 5;
/** Metres of a roll to spare, for feeding it anew; from memory. */
const METRES_TO_SPARE = 1;
/** Noise of a sum. */
const NOISE = 1e-9;

/** One thing that works need, before stock and suppliers. */
export interface NeededThing {
  readonly item: SupplyItem;
  readonly name: string;
  readonly unit: BuyingUnit;
  readonly good: number | null;
  readonly need: number;
  readonly expected: number;
  readonly chance: number | null;
  /** Expected use by work; works whose sums do not stand use nothing. */
  readonly byWork: readonly number[];
  /** What a job knows of it, where no supplier does. */
  readonly own: {
    readonly price: KnownPrice;
    /** Null where nobody has said how it is sold. */
    readonly packSize: number | null;
    readonly leadWorkingDays: number | null;
  } | null;
}

type Needs = readonly (WorkNeeds | null)[];
type Works = readonly Pick<BuyingWork, 'orderId'>[];

/** @returns the sizes that the maker buys, of all works. */
export const sizesOfWorks = (needs: Needs, chance: 'chance' | 'lowestChance' = 'chance') =>
  needs.flatMap((one, work) =>
    (one?.blanks ?? []).map((blank) => ({
      work,
      ...{ blankId: blank.blankId, size: blank.size, pieces: blank.pieces },
      ...{ chance: blank[chance], each: blank.price.each },
    })),
  );

/** @returns everything that some works need to have, blanks first. */
export const neededThings = (
  needs: Needs,
  {
    list,
    works,
    consumables,
  }: Pick<BuyingAsked, 'consumables'> & { readonly works: Works; readonly list: { readonly cover: Cover } },
): readonly NeededThing[] => [
  ...blankThings(needs, coverOf(sizesOfWorks(needs), list.cover)),
  ...paperThings(needs),
  ...inkThings(needs),
  ...consumables.flatMap(({ id, consumable }) => {
    const thing = consumableThing(needs, works, id, consumable);
    return thing === null ? [] : [thing];
  }),
];

/** @returns ink by printer, with what no channel is known of. */
export function inkOfPrinters(needs: Needs): readonly InkOfPrinter[] {
  const ids = [...new Set(needs.flatMap((one) => one?.ink.printerId ?? []))];
  return ids.map((printerId) => {
    const inks = needs.flatMap((one) => (one?.ink.printerId === printerId ? [one.ink] : []));
    return {
      ...{ printerId, name: inks[0]?.name ?? '' },
      mL: sumOf(inks.map(({ mL }) => mL)),
      untoldMl: sumOf(inks.map(({ untoldMl }) => untoldMl)),
    };
  });
}

// Helpers

function blankThings(needs: Needs, { sizes }: CoverChoice): readonly NeededThing[] {
  return sizes.flatMap(({ blankId, size, pieces, take, chance }): readonly NeededThing[] => {
    const isThis = (blank: BlankNeed) => blank.blankId === blankId && blank.size === size;
    const own = needs.flatMap((one) => one?.blanks.find(isThis) ?? [])[0];
    if (own === undefined) return [];
    const byWork = needs.map((one) =>
      sumOf((one?.blanks ?? []).filter(isThis).map((blank) => blank.pieces / blank.chance)),
    );
    return [
      {
        item: { kind: 'blank', blankId, size },
        ...{ name: own.name, unit: 'piece', good: pieces, need: take, chance },
        ...{ expected: sumOf(byWork), byWork, own },
      },
    ];
  });
}

function paperThings(needs: Needs): readonly NeededThing[] {
  const ids = [...new Set(needs.flatMap((one) => one?.paper.sheetId ?? []))];
  return ids.flatMap((sheetId): readonly NeededThing[] => {
    const papers = needs.map((one) => (one?.paper.sheetId === sheetId ? one.paper : null));
    const own = papers.find((paper) => paper !== null);
    if (own == null) return [];
    const byWork = papers.map((paper) => paper?.expected ?? 0);
    const expected = sumOf(byWork);
    const isRoll = own.unit === 'm';
    return [
      {
        item: { kind: 'paper', sheetId },
        ...{ name: own.name, unit: own.unit, chance: null, byWork, expected },
        good: sumOf(papers.map((paper) => paper?.good ?? 0)),
        need: isRoll ? expected + METRES_TO_SPARE : Math.ceil(expected - NOISE) + SHEETS_TO_SPARE,
        own: { price: own.price, packSize: isRoll ? null : 1, leadWorkingDays: null },
      },
    ];
  });
}

function inkThings(needs: Needs): readonly NeededThing[] {
  return inkOfPrinters(needs).flatMap(({ printerId, name: printer }) =>
    inkNames.flatMap((name: InkName): readonly NeededThing[] => {
      const inks = needs.map((one) => (one?.ink.printerId === printerId ? one.ink : null));
      const byWork = inks.map((ink) => ink?.channels[name] ?? 0);
      const expected = sumOf(byWork);
      const own = inks.find((ink) => ink !== null);
      if (expected <= 0 || own == null) return [];
      return [
        {
          item: { kind: 'ink', printerId, name },
          ...{ name: printer, unit: 'mL', good: null, chance: null, need: expected, expected, byWork },
          own: { price: own.price, packSize: null, leadWorkingDays: null },
        },
      ];
    }),
  );
}

/** @returns null where no work uses any of it. */
function consumableThing(
  needs: Needs,
  works: Works,
  consumableId: string,
  { name, unit, uses }: Consumable,
): NeededThing | null {
  const byWork = needs.map((one, at) =>
    one === null ? 0 : sumOf(uses.map((use) => use.amount * timesUsed(use, one, works, at))),
  );
  const expected = sumOf(byWork);
  if (expected <= 0) return null;
  const isWhole = unit === 'piece' || unit === 'sheet' || unit === 'roll';
  return {
    item: { kind: 'consumable', consumableId },
    ...{ name, unit, good: null, chance: null, expected, byWork },
    own: ownPrice({ name, uses }, usedByRates(needs, works)),
    need: isWhole ? Math.ceil(expected - NOISE) : expected,
  };
}

/** What the jobs reckon with for it, where it was set up from their rates; else nobody has said. */
function ownPrice(of: Pick<Consumable, 'name' | 'uses'>, rates: readonly RateUse[]): NeededThing['own'] {
  const [use, another] = of.uses;
  const rate = rates.find((one) => one.name.toLowerCase() === of.name.toLowerCase() && isOf(of, one));
  if (use === undefined || another !== undefined || rate === undefined || !(use.amount > 0)) return null;
  const each = rate.cost / rate.quantity / use.amount;
  return { price: { each, origin: 'yours' }, packSize: null, leadWorkingDays: null };
}

function timesUsed(
  { per, pressIds, packagingIds }: Consumable['uses'][number],
  { use, paper }: WorkNeeds,
  works: Works,
  at: number,
): number {
  switch (per) {
    case 'press':
      return sumOf(
        use.pressesBy.filter(({ pressId }) => pressIds?.includes(pressId) ?? true).map(({ count }) => count),
      );
    case 'sheet':
      // A roll has no sheets; its prints are counted as sheets of their area.
      return paper.unit === 'sheet' ? paper.expected : use.sheets;
    case 'piece':
      return sumOf(
        use.piecesBy
          .filter(
            ({ packagingId }) =>
              packagingIds === null || (packagingId !== null && packagingIds.includes(packagingId)),
          )
          .map(({ count }) => count),
      );
    case 'order':
      return isFirstOfOrder(works, at) ? 1 : 0;
    case 'session':
      return use.sessions;
    default:
      return per satisfies never;
  }
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
