import type { Block, Paper, Row } from '@/lib/papers/paper';
import type { LabelKey, Labels } from '@/lib/papers/words/englishLabels';
import { apart, filled } from '@/lib/papers/words/labelsFor';
import { sizeRow } from '@/lib/papers/words/sizeRow';
import { orderRows } from '@/lib/price/list/orderRows';
import type { FrozenItem, ListedCharge, PriceListVersion } from '@/shared/schemas/priceList';
import { dayFact, oneLine, type Told, textLines, toldIn } from './heading';

/** A version of a price list, and how it is written. */
export interface PriceListBody {
  readonly version: PriceListVersion;
  /** What is no paper in force says so on its face. */
  readonly standing: 'draft' | 'inForce' | 'withdrawn' | 'changed';
  readonly page: 'a4' | 'letter';
  readonly language: string;
  readonly locale: string;
  readonly length: 'in' | 'mm';
}

/** What the customer gets of a price list: items, prices and terms; no cost, no margin. */
export function priceListPaper({ version, standing, ...how }: PriceListBody, labels: Labels): Paper {
  const told = toldIn({ ...how, currency: version.currency }, labels);
  const number = `${version.number.count}${version.number.letter ?? ''}`;
  const [name = '', ...reach] = textLines(version.from);
  const isDraft = standing === 'draft';
  const warning = warnings[standing];
  const facts = isDraft
    ? []
    : [
        { name: labels.number, value: number },
        dayFact(labels.issued, version.issuedOn, told),
        dayFact(labels.validUntil, version.validUntil, told),
      ].filter((fact) => fact !== null);
  const blocks: readonly (Block | null)[] = [
    name === '' ? null : { kind: 'head', name, tagline: '', lines: reach, logo: null },
    { kind: 'title', title: version.title, subject: '', party: null, facts },
    warning === null ? null : { kind: 'text', text: labels[warning], isStrong: true },
    textBlock(version.notes),
    {
      kind: 'table',
      columns: [
        { head: labels.pieces, isFigure: false },
        { head: `${labels.price}, ${version.currency}`, isFigure: true },
      ],
      rows: version.items.flatMap((item) => itemRows(item, told)),
      sums: [],
      note: '',
    },
    chargesTable(version, told),
    textBlock(
      [filled(labels[taxes[version.taxMode]], { currency: version.currency }), version.leadTime].join('\n'),
    ),
  ];
  return {
    page: how.page,
    language: how.language,
    // At the foot of every page, and the name of its file: no page of what is not in force goes without saying so.
    title: [
      isDraft ? version.title : `${version.title} ${number}`,
      ...(warning === null ? [] : [`(${labels[warning].replace(/\.$/, '')})`]),
    ].join(' '),
    foot: labels.page,
    blocks: blocks.filter((block) => block !== null),
  };
}

// Helpers

const warnings: Readonly<Record<PriceListBody['standing'], LabelKey | null>> = {
  draft: 'draft',
  inForce: null,
  withdrawn: 'withdrawn',
  changed: 'changed',
};

const taxes: Readonly<Record<PriceListVersion['taxMode'], LabelKey>> = {
  added: 'pricesAdded',
  inside: 'pricesInside',
  none: 'pricesNone',
};

function textBlock(typed: string): Block | null {
  const lines = textLines(typed);
  return lines.length === 0 ? null : { kind: 'text', text: lines.join('\n'), isStrong: false };
}

function itemRows(item: FrozenItem, told: Told): readonly Row[] {
  const { labels, figures } = told;
  const { largestPrint, selling, setUp } = item;
  const says =
    largestPrint === null
      ? oneLine(item.says)
      : filled(labels.upTo, {
          text: oneLine(item.says),
          size: figures.size(largestPrint.widthMm, largestPrint.heightMm),
        });
  const rule = selling === 'capped' ? labels.capped : selling === 'slab' ? labels.slab : '';
  const sizes = selling === 'onePrice' ? '' : filled(labels.sizes, { sizes: sizesOf(item, told) });
  const note = [says, sizes, rule].filter((line) => line !== '').join('\n');
  const group: Row = { kind: 'group', text: item.name, note };
  if (setUp !== null) {
    const text = filled(labels.setUpApart, {
      start: figures.money(setUp.start),
      each: figures.money(setUp.each),
    });
    return [group, { kind: 'row', cells: [text, ''] }];
  }
  return [group, ...priceRows(item, told)];
}

interface Group {
  readonly names: string[];
  readonly adds: number;
}

/** Sizes that follow each other and add the same. */
function groupsOf({ sizes }: FrozenItem): readonly Group[] {
  const groups: Group[] = [];
  for (const { size, upCharge } of sizes) {
    const last = groups.at(-1);
    if (last !== undefined && last.adds === upCharge) last.names.push(size);
    else groups.push({ names: [size], adds: upCharge });
  }
  return groups;
}

function sizesOf(item: FrozenItem, { labels, figures }: Told): string {
  return groupsOf(item)
    .map(({ names, adds }) => {
      const row = sizeRow({ names, hasGap: false }, labels);
      if (adds === 0 || item.sizes.length === 1) return row;
      const label = adds > 0 ? labels.addsToSize : labels.takesFromSize;
      return filled(label, { sizes: apart(row), amount: figures.money(Math.abs(adds)) });
    })
    .join('; ');
}

/** One price a size where it has one, else one a break; lists from before a cap kept to their breaks do so still. */
function priceRows(item: FrozenItem, { labels, figures }: Told): readonly Row[] {
  const { selling, capOn, breaks } = item;
  const row = (of: string, price: string): Row => ({ kind: 'row', cells: [of, price] });
  const [first] = breaks;
  if (selling === 'onePrice' && first !== undefined)
    return groupsOf(item).map(({ names, adds }) =>
      row(sizeRow({ names, hasGap: false }, labels), figures.money(first.each + adds)),
    );
  const isCapped = selling === 'capped' && capOn === 'base';
  return orderRows({ rule: isCapped ? selling : 'asListed', breaks }).map(({ from, to, kind, amount }) => {
    const span =
      to === null
        ? filled(labels.priceFrom, { count: from })
        : from === to
          ? String(from)
          : filled(labels.priceRange, { from, to });
    const money = figures.money(amount);
    if (!isCapped || kind === 'single') return row(span, money);
    return row(span, filled(kind === 'each' ? labels.priceEach : labels.priceTogether, { amount: money }));
  });
}

const charges: Readonly<Record<ListedCharge, LabelKey>> = {
  minimumOrder: 'chargeMinimumOrder',
  design: 'chargeDesign',
  sample: 'chargeSample',
  placement: 'chargePlacement',
  name: 'chargeName',
  fold: 'chargeFold',
  split: 'chargeSplit',
  change: 'chargeChange',
  delivery: 'chargeDelivery',
};

/** Every charge once; one that differs by item says of which. */
function chargesTable({ items, currency }: PriceListVersion, { labels, figures }: Told): Block | null {
  const found = new Map<string, Map<number, string[]>>();
  for (const { name: item, charges: listed } of items) {
    for (const { kind, name, amount } of listed) {
      const label = filled(labels[charges[kind]], { name: apart(name) });
      const amounts = found.get(label) ?? new Map<number, string[]>();
      amounts.set(amount, [...(amounts.get(amount) ?? []), item]);
      found.set(label, amounts);
    }
  }
  if (found.size === 0) return null;
  return {
    kind: 'table',
    columns: [
      { head: labels.beside, isFigure: false },
      { head: currency, isFigure: true },
    ],
    rows: [...found].flatMap(([label, amounts]) =>
      [...amounts].map(
        ([amount, names]): Row => ({
          kind: 'row',
          cells: [amounts.size === 1 ? label : `${label} (${names.join(', ')})`, figures.money(amount)],
        }),
      ),
    ),
    sums: [],
    note: '',
  };
}
