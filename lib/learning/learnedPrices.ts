import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import type { Rate } from '@/shared/schemas/rate';
import type { LearnedFrom } from './learnedFrom';
import type { Lesson } from './lesson';
import { measuredPlace } from './measuredRate';

/**
 * Prices that were paid. They are facts and taken over whole: that of the newest delivery; else, where somebody typed
 * what the blanks of the newest run cost, each size so much dearer or cheaper as the mean was. What the maker set later
 * than that was paid stays: an old bill says nothing against it.
 */
export function learnedPrices(from: LearnedFrom): readonly Lesson[] {
  return [...blankPrices(from), ...sheetPrices(from)];
}

// Helpers

function blankPrices({ runs, prices, documents }: LearnedFrom): readonly Lesson[] {
  return documents.blanks.flatMap(({ id, body }) =>
    body.sizes.flatMap((size, at): readonly Lesson[] => {
      const typed = runs.findLast((run) => usesBlank(run, id));
      const delivered = prices.find(
        ({ item }) => item.kind === 'blank' && item.blankId === id && item.size === size.name,
      );
      const last = typed === undefined ? null : typedPrice(typed, id, size.name);
      const paid = newsOf([delivered, last], size.price);
      if (paid === null || size.price === null || same(paid.each, size.price.value, typed)) return [];
      return [
        {
          subject: { of: 'blankPrice', blankId: id, size: size.name },
          ...{ standard: size.price.value, measured: paid.each, unit: 'money' },
          ...{ observations: 1, spread: null, upper: null, seen: null },
          runIds: paid === last && typed !== undefined ? [typed.runId] : [],
          places: measuredPlace(
            { kind: 'blank', id, path: ['sizes', at, 'price'], before: size.price },
            paid.each,
            'money/piece',
            paid.day,
            'yours',
          ),
        },
      ];
    }),
  );
}

function sheetPrices({ runs, prices, documents: { workshop } }: LearnedFrom): readonly Lesson[] {
  if (workshop === null) return [];
  return workshop.body.sheets.flatMap((sheet): readonly Lesson[] => {
    const run = runs.findLast(({ standard }) =>
      standard.works.every(({ sheets }) => sheets.sheetId === sheet.id),
    );
    const delivered = prices.find(({ item }) => item.kind === 'paper' && item.sheetId === sheet.id);
    const noted = run === undefined ? null : notedOn(run, 'sheets');
    const isTyped = run?.result.actuals.sheets.eachFrom === 'typed' && run.result.actuals.sheets.quantity > 0;
    // What a sheet of a roll cost is asked, and what a metre of it costs is held.
    const metres = run?.standard.works[0]?.sheets.metresEach ?? 1;
    const typed =
      isTyped && noted !== null ? { each: run.result.actuals.sheets.each / metres, day: noted } : null;
    const paid = newsOf([delivered, typed], sheet.price);
    if (paid === null || sheet.price === null || same(paid.each, sheet.price.value, run)) return [];
    return [
      {
        subject: { of: 'sheetPrice', sheetId: sheet.id },
        ...{ standard: sheet.price.value, measured: paid.each, unit: 'money' },
        ...{ observations: 1, spread: null, upper: null, seen: null },
        runIds: paid === typed && run !== undefined ? [run.runId] : [],
        places: measuredPlace(
          { kind: 'workshop', id: workshop.id, path: ['sheets', sheet.id, 'price'], before: sheet.price },
          paid.each,
          sheet.price.unit,
          paid.day,
          'yours',
        ),
      },
    ];
  });
}

type Run = LearnedFrom['runs'][number];

/** A mean over several blanks tells nothing of any of them. */
function usesBlank({ standard, result }: Run, blankId: string): boolean {
  const lines = standard.works.flatMap((work) => work.lines);
  return (
    result.actuals.blanks.eachFrom === 'typed' &&
    result.actuals.blanks.quantity > 0 &&
    lines.length > 0 &&
    lines.every((line) => line.blankId === blankId)
  );
}

interface Paid {
  readonly each: number;
  readonly day: string;
}

/** The first that is not older than the price held. A typical price is of no day: nobody set it against a bill. */
const newsOf = (found: readonly (Paid | null | undefined)[], held: Rate | null): Paid | null =>
  found.find((paid) => paid != null && (held?.origin === 'typical' || (held?.date ?? '') <= paid.day)) ??
  null;

/** The day of the newest note of what was used; null where there is none. */
const notedOn = ({ facts }: Run, of: 'blanks' | 'sheets'): string | null =>
  facts.actuals.findLast(({ body }) => body.actual.of === of)?.body.day ?? null;

function typedPrice(run: Run, blankId: string, size: string): Paid | null {
  const { standard, result } = run;
  const day = notedOn(run, 'blanks');
  const { each } = result.actuals.blanks;
  const dearer = each - result.budget.blanks.each;
  const price = standard.works
    .flatMap(({ lines }) => lines)
    .filter((line) => line.blankId === blankId)
    .flatMap(({ sizes }) => sizes)
    .find((one) => one.size === size)?.price;
  if (price === undefined || day === null) return null;
  const { currency } = standard;
  return { each: fromMinor(Math.max(0, toMinor(price + dearer, currency)) as MinorUnits, currency), day };
}

/** Less than a hundredth of the smallest coin apart is the same price. */
const same = (one: number, other: number, run: Run | undefined): boolean =>
  Math.abs(one - other) <
  (run === undefined ? 1e-9 : fromMinor(1 as MinorUnits, run.standard.currency) / 100);
