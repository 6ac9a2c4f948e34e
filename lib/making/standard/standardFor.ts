import type { RunStandard, StandardWork } from '@/shared/schemas/making/runPapers';

/** Good pieces that came out, of a size of a run. */
export interface GoodOutput {
  readonly jobId: string;
  readonly lineId: string;
  readonly size: string;
  /** Whole, 0 or more. */
  readonly good: number;
}

/**
 * The standard for what was really made (a flexible budget): what an order, a design and a session take stays, what a
 * piece of a size takes goes with its pieces. At the output that was planned it is the frozen one, to the last digit.
 * Nobody pays for pieces beyond what an order asked for: they take what any piece takes, and bring no price in.
 *
 * @param output a size that is not named came out with no good piece; one the standard does not know counts for nothing
 */
export const standardFor = (standard: RunStandard, output: readonly GoodOutput[]): RunStandard => ({
  ...standard,
  works: standard.works.map((work) => flexed(work, output)),
});

// Helpers

type Line = StandardWork['lines'][number];
type Takes = Line['sizes'][number]['takes'];

function flexed(work: StandardWork, output: readonly GoodOutput[]): StandardWork {
  const lines = work.lines.map((line) => flexedLine(work.jobId, line, output));
  const isAsPlanned = work.lines.every((line, at) => piecesBySize(line).every(isSameAs(lines[at])));
  if (isAsPlanned) return work;
  const sold = work.orderId === null ? lines : work.lines.map((line, at) => atMost(line, lines[at]));
  const more = (of: (takes: Takes) => number): number => taken(lines, of) - taken(work.lines, of);
  const pieces = ratio(work.lines, lines, piecesOf);
  const sheets = work.sheets.quantity + more((takes) => takes.sheets);
  const mL = work.ink.mL + more((takes) => takes.mL);
  const growth: Readonly<Record<string, number>> = {
    sheets: work.sheets.quantity > 0 ? sheets / work.sheets.quantity : 1,
    presses: pressGrowth(work.lines, lines),
    finish: ratio(work.lines, lines, (line) => taken([line], ({ finishMinutes }) => finishMinutes)),
    selling: pieces,
  };
  const elements = work.labour.elements.map(({ element, minutes }) => ({
    element,
    minutes: minutes * (growth[element] ?? 1),
  }));
  const grown = elements.reduce(
    (all, { minutes }, at) => all + minutes - (work.labour.elements[at]?.minutes ?? 0),
    0,
  );
  const otherCost = work.otherCost + more((takes) => takes.otherCost);
  const held = (line: readonly Line[]) => taken(line, (takes) => takes.reprints);
  const reprints = work.reprints + held(sold) - held(work.lines);
  const revenue =
    work.revenue === null ? null : work.revenue + sum(sold.map(revenueOf)) - sum(work.lines.map(revenueOf));
  const fees = work.fees + (revenue === null ? 0 : work.feeShare * (revenue - (work.revenue ?? 0)));
  const fullCost =
    work.fullCost +
    sum(lines.map(blanksCost)) -
    sum(work.lines.map(blanksCost)) +
    (sheets - work.sheets.quantity) * work.sheets.price +
    (mL - work.ink.mL) * work.ink.pricePerMl +
    (grown / 60) * (work.labour.wagePerHour + work.overheadPerHour) +
    (otherCost - work.otherCost) +
    (reprints - work.reprints);
  return {
    ...work,
    lines,
    sheets: { ...work.sheets, quantity: sheets },
    ink: { ...work.ink, mL },
    labour: { ...work.labour, minutes: work.labour.minutes + grown, elements },
    ...{ otherCost, reprints, revenue, fees, fullCost },
  };
}

function flexedLine(jobId: string, line: Line, output: readonly GoodOutput[]): Line {
  const goodOf = (size: string): number =>
    sum(
      output
        .filter((one) => one.jobId === jobId && one.lineId === line.lineId && one.size === size)
        .map(({ good }) => good),
    );
  const sizes = line.sizes.map((one) => ({ ...one, wanted: goodOf(one.size) }));
  const planned = sum(line.sizes.map(({ wanted }) => wanted));
  const made = sum(sizes.map(({ wanted }) => wanted));
  return {
    ...line,
    sizes,
    placements: line.placements.map((one) => ({
      ...one,
      entering: planned === 0 ? one.entering : (one.entering * made) / planned,
    })),
  };
}

/** What came of a line, no size of it above what was ordered. */
const atMost = (ordered: Line, made: Line | undefined): Line => ({
  ...ordered,
  sizes: ordered.sizes.map((one, at) => ({
    ...one,
    wanted: Math.min(one.wanted, made?.sizes[at]?.wanted ?? 0),
  })),
});

/** What the pieces of lines take together. */
const taken = (lines: readonly Line[], of: (takes: Takes) => number): number =>
  sum(lines.flatMap(({ sizes }) => sizes.map(({ wanted, takes }) => wanted * of(takes))));

const piecesOf = ({ sizes }: Line): number => sum(sizes.map(({ wanted }) => wanted));

const piecesBySize = ({ sizes }: Line): readonly (readonly [string, number])[] =>
  sizes.map(({ size, wanted }) => [size, wanted]);

const isSameAs =
  (line: Line | undefined) =>
  ([size, wanted]: readonly [string, number]): boolean =>
    line?.sizes.find((one) => one.size === size)?.wanted === wanted;

/** Minutes at the presses, tests in them, against those planned. */
function pressGrowth(planned: readonly Line[], made: readonly Line[]): number {
  const minutesOf = ({ placements }: Line): number =>
    sum(placements.map(({ entering, testPresses, handMinutes }) => (entering + testPresses) * handMinutes));
  return ratio(planned, made, minutesOf);
}

function ratio(planned: readonly Line[], made: readonly Line[], of: (line: Line) => number): number {
  const all = sum(planned.map(of));
  return all === 0 ? 1 : sum(made.map(of)) / all;
}

const blanksCost = ({ sizes }: Line): number =>
  sum(sizes.map(({ wanted, price, blanksEach }) => wanted * price * blanksEach));

const revenueOf = ({ sizes }: Line): number =>
  sum(sizes.map(({ wanted, revenueEach }) => wanted * (revenueEach ?? 0)));

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
