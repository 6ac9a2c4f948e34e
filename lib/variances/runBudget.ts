import type { RunStandard, StandardWork } from '@/shared/schemas/runPapers';
import type { MadeSize } from './goodMade';

/** So much of something at so much each. */
export interface Used {
  readonly quantity: number;
  /** Currency units. */
  readonly each: number;
}

/** What a run should have taken for the good pieces that came of it, currency units, unrounded. */
export interface RunBudget {
  readonly good: number;
  readonly wanted: number;
  readonly blanks: Used;
  readonly sheets: Used;
  /** mL. */
  readonly ink: Used;
  /** Hours at the pay wanted for one. */
  readonly labour: Used;
  readonly elements: readonly { readonly element: string; readonly minutes: number }[];
  readonly overheadPerHour: number;
  readonly freight: number;
  readonly otherCost: number;
  readonly reprints: number;
  readonly fees: number;
  /** Without tax; null where no price was asked. */
  readonly revenue: number | null;
}

/** Work that every piece takes anew; all else of a run is done once. */
const ofPieces: ReadonlySet<string> = new Set(['sheets', 'presses', 'finish', 'selling']);

/**
 * The standard for the good pieces that were made: a flexible budget. What goes with the pieces follows them; what an
 * order, a design or a session takes once does not.
 *
 * @param made null takes as many as were wanted
 */
export function runBudget(
  { works }: Pick<RunStandard, 'works'>,
  made: readonly MadeSize[] | null,
): RunBudget {
  const parts = works.map((work) => ofWork(work, made));
  const sum = (of: (part: Part) => number) => parts.reduce((running, part) => running + of(part), 0);
  const used = (quantity: (part: Part) => number, cost: (part: Part) => number, each: number): Used => {
    const all = sum(quantity);
    return { quantity: all, each: all > 0 ? sum(cost) / all : each };
  };
  const [first] = works;
  const elements = new Map<string, number>();
  for (const { element, minutes } of parts.flatMap((part) => part.elements)) {
    elements.set(element, (elements.get(element) ?? 0) + minutes);
  }
  return {
    good: sum(({ good }) => good),
    wanted: sum(({ wanted }) => wanted),
    blanks: used(
      ({ blanks }) => blanks,
      ({ blanksCost }) => blanksCost,
      first?.lines[0]?.sizes[0]?.price ?? 0,
    ),
    sheets: used(
      ({ sheets }) => sheets,
      ({ sheets, sheetPrice }) => sheets * sheetPrice,
      first?.sheets.price ?? 0,
    ),
    ink: used(
      ({ mL }) => mL,
      ({ mL, inkPrice }) => mL * inkPrice,
      first?.ink.pricePerMl ?? 0,
    ),
    labour: used(
      ({ hours }) => hours,
      ({ hours, wage }) => hours * wage,
      first?.labour.wagePerHour ?? 0,
    ),
    elements: [...elements].map(([element, minutes]) => ({ element, minutes })),
    overheadPerHour: used(
      ({ hours }) => hours,
      ({ hours, overhead }) => hours * overhead,
      first?.overheadPerHour ?? 0,
    ).each,
    freight: sum(({ freight }) => freight),
    otherCost: sum(({ otherCost }) => otherCost),
    reprints: sum(({ reprints }) => reprints),
    fees: sum(({ fees }) => fees),
    revenue: parts.some(({ revenue }) => revenue === null) ? null : sum(({ revenue }) => revenue ?? 0),
  };
}

// Helpers

type Part = ReturnType<typeof ofWork>;

function ofWork(work: StandardWork, made: readonly MadeSize[] | null) {
  const sizes = work.lines.flatMap(({ lineId, sizes }) =>
    sizes.map((size) => ({ ...size, good: goodOf(work.jobId, lineId, size, made) })),
  );
  const sum = (of: (size: (typeof sizes)[number]) => number) =>
    sizes.reduce((running, size) => running + of(size), 0);
  const good = sum((size) => size.good);
  const wanted = sum((size) => size.wanted);
  // With nothing wanted there is nothing to follow.
  const ratio = wanted > 0 ? good / wanted : 1;
  const elements = work.labour.elements.map(({ element, minutes }) => ({
    element,
    minutes: ofPieces.has(element) ? minutes * ratio : minutes,
  }));
  const changed = elements.reduce((running, { minutes }, at) => {
    return running + minutes - (work.labour.elements[at]?.minutes ?? 0);
  }, 0);
  const revenue =
    work.revenue === null
      ? null
      : work.revenue + sum((size) => (size.good - size.wanted) * (size.revenueEach ?? 0));
  const { sheets, ink, labour } = work;
  return {
    ...{ good, wanted, elements, revenue },
    blanks: sum((size) => size.good * size.blanksEach),
    blanksCost: sum((size) => size.good * size.blanksEach * size.price),
    sheets: sheets.tests + (sheets.quantity - sheets.tests) * ratio,
    sheetPrice: sheets.price,
    mL: ink.sessionMl + (ink.mL - ink.sessionMl) * ratio,
    inkPrice: ink.pricePerMl,
    hours: (labour.minutes + changed) / 60,
    wage: labour.wagePerHour,
    overhead: work.overheadPerHour,
    ...{ freight: work.freight, otherCost: work.otherCost, reprints: work.reprints },
    fees: work.fees * (revenue === null || !work.revenue ? 1 : revenue / work.revenue),
  };
}

const goodOf = (
  jobId: string,
  lineId: string,
  { size, wanted }: { readonly size: string; readonly wanted: number },
  made: readonly MadeSize[] | null,
): number =>
  made === null
    ? wanted
    : (made.find((one) => one.jobId === jobId && one.lineId === lineId && one.size === size)?.good ?? 0);
