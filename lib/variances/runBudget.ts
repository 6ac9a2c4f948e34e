import type { RunStandard, StandardWork } from '@/shared/schemas/making/runPapers';

/** So much of something at so much each. */
export interface Used {
  readonly quantity: number;
  /** Currency units. */
  readonly each: number;
}

/** What a run should take for so many good pieces, currency units, unrounded. */
export interface RunBudget {
  /** Good ones. */
  readonly pieces: number;
  readonly blanks: Used;
  readonly sheets: Used;
  /** mL. */
  readonly ink: Used;
  /** Hours at the pay wanted for one. */
  readonly labour: Used;
  readonly overheadPerHour: number;
  readonly freight: number;
  readonly otherCost: number;
  readonly reprints: number;
  readonly fees: number;
  /** Without tax; null where no price was asked. */
  readonly revenue: number | null;
}

/** What the works of a standard come to together; several prices of one thing to their mean. */
export function runBudget({ works }: Pick<RunStandard, 'works'>): RunBudget {
  const parts = works.map(ofWork);
  const sum = (of: (part: Part) => number) => parts.reduce((running, part) => running + of(part), 0);
  const used = (quantity: (part: Part) => number, cost: (part: Part) => number, each: number): Used => {
    const all = sum(quantity);
    return { quantity: all, each: all > 0 ? sum(cost) / all : each };
  };
  const [first] = works;
  return {
    pieces: sum(({ pieces }) => pieces),
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

function ofWork(work: StandardWork) {
  const sizes = work.lines.flatMap((line) => line.sizes);
  const sum = (of: (size: (typeof sizes)[number]) => number) =>
    sizes.reduce((running, size) => running + of(size), 0);
  const { sheets, ink, labour, freight, otherCost, reprints, fees, revenue } = work;
  return {
    pieces: sum(({ wanted }) => wanted),
    blanks: sum(({ wanted, blanksEach }) => wanted * blanksEach),
    blanksCost: sum(({ wanted, blanksEach, price }) => wanted * blanksEach * price),
    sheets: sheets.quantity,
    sheetPrice: sheets.price,
    mL: ink.mL,
    inkPrice: ink.pricePerMl,
    hours: labour.minutes / 60,
    wage: labour.wagePerHour,
    overhead: work.overheadPerHour,
    ...{ freight, otherCost, reprints, fees, revenue },
  };
}
