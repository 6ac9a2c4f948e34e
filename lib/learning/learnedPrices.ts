import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import type { LearnedFrom } from './learnedFrom';
import type { Lesson } from './lesson';
import { measuredPlace } from './measuredRate';

/**
 * Prices that were paid. They are facts and taken over whole: that of the newest delivery; else, where somebody typed
 * what the blanks of the newest run cost, each size so much dearer or cheaper as the mean was.
 */
export function learnedPrices(from: LearnedFrom): readonly Lesson[] {
  return [...blankPrices(from), ...sheetPrices(from)];
}

// Helpers

function blankPrices({ runs, prices, documents, day }: LearnedFrom): readonly Lesson[] {
  return documents.blanks.flatMap(({ id, body }) =>
    body.sizes.flatMap((size, at): readonly Lesson[] => {
      const typed = runs.findLast((run) => usesBlank(run, id));
      const delivered = prices.find(
        ({ item }) => item.kind === 'blank' && item.blankId === id && item.size === size.name,
      );
      const last = typed === undefined ? null : typedPrice(typed, id, size.name);
      const paid =
        delivered !== undefined
          ? { each: delivered.each, day: delivered.day }
          : last === null
            ? null
            : { ...last, day };
      if (paid === null || size.price === null || same(paid.each, size.price.value, typed)) return [];
      return [
        {
          subject: { of: 'blankPrice', blankId: id, size: size.name },
          ...{ standard: size.price.value, measured: paid.each, unit: 'money' },
          ...{ observations: 1, spread: null, upper: null, seen: null },
          runIds: delivered === undefined && typed !== undefined ? [typed.runId] : [],
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

function sheetPrices({ runs, prices, documents: { workshop }, day }: LearnedFrom): readonly Lesson[] {
  if (workshop === null) return [];
  return workshop.body.sheets.flatMap((sheet): readonly Lesson[] => {
    const run = runs.findLast(({ standard }) =>
      standard.works.every(({ sheets }) => sheets.sheetId === sheet.id),
    );
    const delivered = prices.find(({ item }) => item.kind === 'paper' && item.sheetId === sheet.id);
    const isTyped = run?.result.actuals.sheets.eachFrom === 'typed' && run.result.actuals.sheets.quantity > 0;
    // What a sheet of a roll cost is asked, and what a metre of it costs is held.
    const metres = run?.standard.works[0]?.sheets.metresEach ?? 1;
    const typed = isTyped ? { each: run.result.actuals.sheets.each / metres, day } : null;
    const paid = delivered ?? typed;
    if (paid === null || sheet.price === null || same(paid.each, sheet.price.value, run)) return [];
    return [
      {
        subject: { of: 'sheetPrice', sheetId: sheet.id },
        ...{ standard: sheet.price.value, measured: paid.each, unit: 'money' },
        ...{ observations: 1, spread: null, upper: null, seen: null },
        runIds: delivered === undefined && run !== undefined ? [run.runId] : [],
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

function typedPrice({ standard, result }: Run, blankId: string, size: string) {
  const { each } = result.actuals.blanks;
  const dearer = each - result.budget.blanks.each;
  const price = standard.works
    .flatMap(({ lines }) => lines)
    .filter((line) => line.blankId === blankId)
    .flatMap(({ sizes }) => sizes)
    .find((one) => one.size === size)?.price;
  if (price === undefined) return null;
  const { currency } = standard;
  return { each: fromMinor(Math.max(0, toMinor(price + dearer, currency)) as MinorUnits, currency) };
}

/** Less than a hundredth of the smallest coin apart is the same price. */
const same = (one: number, other: number, run: Run | undefined): boolean =>
  Math.abs(one - other) <
  (run === undefined ? 1e-9 : fromMinor(1 as MinorUnits, run.standard.currency) / 100);
