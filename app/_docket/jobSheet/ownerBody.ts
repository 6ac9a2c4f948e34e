import { amountWords } from '@/app/_words/amountWords';
import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { JobAnswer } from '@/lib/costing/priceJob';
import { costLineIds } from '@/lib/grid/costLines';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import type { OwnSheetBody, OwnTable } from '@/lib/papers/bodies/ownSheetPaper';
import { apart } from '@/lib/papers/words/labelsFor';
import { fromMinor, LARGEST_AMOUNT, shownParts } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import { styleOf } from './benchBody';

interface Owned {
  readonly costSheet: CostSheet;
  readonly prices: JobAnswer['prices'];
  readonly context: TextContext;
}

const told = jobSheetTable;

/** The page that stays with the owner: what the job costs, and what it leaves. */
export function ownerBody(input: JobInput, { costSheet, prices, context }: Owned): OwnSheetBody {
  const { currency } = costSheet;
  const formatter = formatterFor(context);
  const locale = usableLocale(context.locale);
  const money = (amount: number) => amountWords(amount, currency, locale);
  const left: readonly (readonly string[])[] =
    prices === null
      ? [[told.noPrice, '']]
      : [
          [told.price, money(prices.total)],
          [told.fees, money(prices.fees)],
          [told.fullCost, money(wholeJob(costSheet, 'fullCost'))],
          [told.profit, money(prices.profit)],
          [told.margin, formatter.share(prices.margin)],
          [told.markup, formatter.share(prices.markup)],
          [told.pays, money(prices.payPerHour)],
        ];
  return {
    ...styleOf(input),
    kind: told.ownKind,
    name: input.job.name,
    facts: [],
    says: told.ownSays(currency),
    tables: [
      costsTable(costSheet, money),
      { columns: columnsOf(told.leaves, currency), rows: left, total: null },
      askedTable(input, currency, money),
    ],
    foot: told.minutes(
      minutesWords(wholeJob(costSheet, 'attended'), locale),
      minutesWords(wholeJob(costSheet, 'unattended'), locale),
    ),
  };
}

// Helpers

type Money = (amount: number) => string;

const columnsOf = (head: string, currency: string): OwnTable['columns'] => [
  { head, isFigure: false },
  { head: currency, isFigure: true },
];

function costsTable(costSheet: CostSheet, money: Money): OwnTable {
  const { currency } = costSheet;
  const lines = costSheet.rows.filter(
    ({ id, table }) =>
      table === 'case' &&
      (costLineIds.some((line) => line === id && line !== 'ownCosts') || id.startsWith('own_')),
  );
  const amounts = lines.map(({ id }) => wholeJob(costSheet, id));
  const fullCost = wholeJob(costSheet, 'fullCost');
  const isShared = [fullCost, ...amounts].every((amount) => Math.abs(amount) <= LARGEST_AMOUNT);
  // In cents that add up to what stands under them.
  const shown = isShared
    ? shownParts(fullCost, amounts, currency).map((minor) => fromMinor(minor, currency))
    : amounts;
  return {
    columns: columnsOf(told.costs, currency),
    rows: lines.map(({ label }, at) => [label, money(shown[at] ?? 0)]),
    total: { name: told.fullCost, value: money(fullCost) },
  };
}

function askedTable({ job, workshop }: JobInput, currency: string, money: Money): OwnTable {
  const taxMode = workshop.channels.find(({ id }) => id === job.channelId)?.taxMode ?? 'unsaid';
  return {
    columns: columnsOf(told.asked[taxMode], currency),
    rows: job.lines.map(({ name, askedPrice, askedStart, upCharges }) => {
      const more = upCharges.map(
        ({ size, amount }) => `${apart(size)} ${amount < 0 ? '−' : '+'}${money(Math.abs(amount))}`,
      );
      const price = askedPrice === null ? told.notDecided : money(askedPrice);
      return [
        [apart(name), ...more].join(', '),
        askedStart === null ? price : told.toStart(price, money(askedStart)),
      ];
    }),
    total: null,
  };
}
