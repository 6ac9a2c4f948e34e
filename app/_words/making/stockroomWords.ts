import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { Reserved } from '@/lib/stock/reserved';
import type { StockGroup } from '@/lib/stock/stockroom';
import type { StockWorth } from '@/lib/stock/stockWorth';

/** What the stockroom says that hangs on no figure. */
export const stockroomWords = {
  title: 'Stock',
  nothing: 'Nothing was counted yet. Open a group and note what lies there: that is the opening count.',
  notCounted: 'not counted',
  uncountedDesigns: 'Designs nobody counted',
  gone: 'listed nowhere any more',
} as const;

export const kindWords: Readonly<Record<StockGroup['kind'], string>> = {
  blank: 'Blanks',
  paper: 'Paper',
  ink: 'Ink',
  consumable: 'Consumables',
  finished: 'Finished pieces',
};

/** What a thing is counted in, beside a number; empty of pieces. */
export const stockUnit = (unit: StockGroup['things'][number]['unit']): string =>
  unit === null ? '' : unit === 'sheet' ? 'sheets' : unit === 'roll' ? 'rolls' : unit;

/** “142.50 USD at what was paid; 3 things at a cost nobody noted.” Of own goods it is what of them was bought. */
export function worthLine(
  { paid, unknownThings, shortThings }: StockWorth,
  formatter: Formatter,
  locale: string,
  kind: StockGroup['kind'] | null = null,
): string {
  const money = listed(paid.map(({ minor, currency }) => minorMoney(minor, currency, locale)));
  return [
    ...(money === '' ? [] : [`${money} at ${kind === 'finished' ? 'bought-in cost' : 'what was paid'}`]),
    ...(unknownThings === 0 ? [] : [`${formatter.count(unknownThings, 'thing')} at a cost nobody noted`]),
    ...(shortThings === 0 ? [] : [`${formatter.count(shortThings, 'thing')} to count`]),
  ].join('; ');
}

/** What a group is called: its own name, and for finished pieces their job. */
export const groupName = ({ name, ofJob }: Pick<StockGroup, 'name' | 'ofJob'>): string =>
  [name ?? stockroomWords.gone, ...(ofJob === null || ofJob === name ? [] : [ofJob])].join(', ');

/** What a group comes to, in one line. */
export function groupLine(
  {
    kind,
    isNoted,
    isShort,
    worth,
  }: Pick<StockGroup, 'kind' | 'isNoted'> & { readonly isShort: boolean; readonly worth: StockWorth },
  formatter: Formatter,
  locale: string,
): string {
  if (!isNoted && !isShort) return stockroomWords.notCounted;
  const line = worthLine(worth, formatter, locale, kind);
  return [...(isShort ? ['to buy or count'] : []), ...(line === '' ? [] : [line])].join(' · ') || 'none left';
}

/** What was paid for all of one thing that lies somewhere, and what of own goods was bought; nothing where none lies. */
export function worthWords(
  { paid, unknown }: StockWorth,
  kind: StockGroup['kind'],
  formatter: Formatter,
  locale: string,
  unit: string,
): readonly string[] {
  const money = paid.map(({ minor, currency }) => minorMoney(minor, currency, locale));
  return [
    ...(money.length === 0
      ? []
      : [
          kind === 'finished'
            ? `Bought-in cost ${listed(money)}: own work is not in it.`
            : `Paid ${listed(money)}.`,
        ]),
    ...(unknown === 0 ? [] : [`What ${withUnit(formatter.number(unknown), unit)} cost was not noted.`]),
  ];
}

/** What is kept for work, and whether it suffices. */
export function reservedWords(
  { ready, reserved, free, shortOn }: Reserved,
  formatter: Formatter,
  unit: string,
): { readonly wrong: readonly string[]; readonly more: readonly string[] } {
  const isWhole = unit === '' || unit === 'sheets';
  // Nobody uses a part of a sheet: what is kept is rounded up, what is free down.
  const many = (value: number) => withUnit(formatter.number(isWhole ? Math.ceil(value - 1e-9) : value), unit);
  const kept = `${many(reserved)} reserved`;
  if (ready === null || free === null)
    return { wrong: [`${kept}: count them to know whether they are there.`], more: [] };
  if (free < 0)
    return {
      wrong: [
        // Less than none counts as none, as on a buying list.
        `Short of ${many(Math.min(reserved, -free))}: ${kept}. ${shortOn === null ? 'Buy them.' : `Buy before ${formatter.day(shortOn)}.`}`,
      ],
      more: [],
    };
  return { wrong: [], more: [`${kept}, ${many(isWhole ? Math.floor(free + 1e-9) : free)} free.`] };
}

/** How full of bottles the ink is that lies there, and when it is bought again. */
export const bottleWords = (bottles: number, bottleMl: number, formatter: Formatter): string =>
  `${formatter.number(bottles, 1)} of a bottle of ${formatter.number(bottleMl)} mL.`;

export const reorderWords = (reorderAt: number, formatter: Formatter, unit: string): string =>
  `At or below ${withUnit(formatter.number(reorderAt), unit)}: time to buy.`;

// Helpers

const withUnit = (many: string, unit: string): string => (unit === '' ? many : `${many} ${unit}`);
