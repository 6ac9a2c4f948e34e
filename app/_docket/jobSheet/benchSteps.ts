import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import {
  heatWords,
  layoutWords,
  moreSheetsWords,
  piecesPerBox,
  placeWords,
  printSizesWords,
  recipeWords,
  toPrintWords,
} from '@/app/_words/docket/jobSheetWords';
import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { ownEntry } from '@/lib/job/ownEntry';
import type { JobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { JobPress, JobSheetBody, JobStep } from '@/lib/papers/bodies/jobSheetPaper';
import { apart } from '@/lib/papers/words/labelsFor';
import { printedSize } from '@/lib/quotes/goodsOf';
import type { JobInput } from '@/shared/schemas/request';
import { picturePair } from './picturePair';
import { placementDrawings } from './placementDrawings';
import { sharedRows, sharedTally, sizeAndSpares, stackOf } from './sharedSpares';

interface StepsTold {
  readonly facts: JobSheetFacts;
  readonly context: TextContext;
}

/** More sizes than this do not fit side by side. */
const MOST_COLUMNS = 9;
/** More tests than this are not ticked one by one. */
const MOST_TESTS = 4;
/** More good pieces of a size than this share their squares. */
const MOST_TICKS = 26;
const MOST_TICKS_OF_MANY = 10;
/** Squares in a line beside the picture of one print, and lines of all its sizes. */
const IN_LINE = 11;
const MOST_LINES = 12;
/** Of more prints than this each is told in fewer words, so that all find room. */
const FEW = 2;

const told = jobSheetTable;
export const plain = { aside: '', ticks: [], lines: [], tally: { words: '', labels: [] }, grid: null };

/** @returns the steps at the bench, in the order of the work. */
export function benchSteps(
  input: JobInput,
  { facts, context }: StepsTold,
): Pick<JobSheetBody, 'before' | 'presses' | 'after'> {
  const formatter = formatterFor(context);
  const ways = facts.placements.map((of) => wayOf(input, of, formatter));
  const [way] = ways;
  const everyWay = facts.placements.length > FEW && new Set(ways).size === 1 ? way : undefined;
  const warmUp: JobStep = {
    ...plain,
    heading: told.warmUp,
    aside: told.yourTime(minutesWords(facts.attendedMinutes, usableLocale(context.locale))),
    ticks: [
      told.measured(input.workshop.units.temperature),
      ...Array.from({ length: Math.min(facts.tests, MOST_TESTS) }, (_, at) => told.test(at + 1)),
      told.firstGood,
    ],
    lines: everyWay === undefined ? [] : [told.everyPrint(everyWay)],
  };
  return {
    before: [printStep(input, { facts, context }), blanksStep(input, facts, formatter), warmUp],
    presses: facts.placements.map((of) =>
      pressOf(input, of, { formatter, facts, isOneWay: everyWay !== undefined }),
    ),
    after: [packStep(input, formatter.number(facts.pieces))],
  };
}

// Helpers

type Of = JobSheetFacts['placements'][number];

/** @param isTimed whether a clock tells how long the printer takes */
export function printStep(
  { job, workshop }: JobInput,
  { facts, context, isTimed = false }: StepsTold & { readonly isTimed?: boolean },
): JobStep {
  const formatter = formatterFor(context);
  const paper = workshop.sheets.find(({ id }) => id === job.sheetId);
  const printer = workshop.printers.find(({ id }) => id === job.printerId);
  const more =
    facts.rollMm === null ? moreSheetsWords(facts.sheets - facts.goodSheets, facts.tests, formatter) : null;
  const minutes = told.unattended(minutesWords(facts.unattendedMinutes, usableLocale(context.locale)));
  return {
    ...plain,
    heading: told.print(toPrintWords(facts.sheets, facts.rollMm, formatter)),
    aside: [paper?.name ?? '', isTimed ? '' : minutes].filter((part) => part !== '').join('; '),
    ticks: [
      told.nozzleCheck,
      told.coatedSide(printer?.printedSide),
      facts.placements.every(({ placement }) => placement.mirror) ? told.mirrored : told.mirroredSome,
      ...facts.placements.map(({ lineId, placement, prints }) =>
        layoutWords(apart(nameOf(job, lineId, placement.name)), prints, formatter),
      ),
      ...(more === null ? [] : [more]),
      told.trimmed,
    ],
  };
}

/** The blanks to lay out, spares among them: of one line in a row, of several in a table by size. */
function blanksStep({ blanks }: JobInput, facts: JobSheetFacts, formatter: Formatter): JobStep {
  const { lines } = facts;
  const { number } = formatter;
  const sizes = [...new Set(lines.flatMap((line) => line.sizes.map(({ size }) => size)))];
  // All lines are made of one blank: its spares stand beside the sizes, for all of them.
  const isOneStack = facts.shared.length > 0 && new Set(lines.map(({ blankId }) => blankId)).size === 1;
  const isTable = lines.length > 1 && sizes.length <= MOST_COLUMNS;
  return {
    ...plain,
    heading: told.layOut,
    aside: told.counted({
      all: number(facts.take),
      spares: formatter.count(facts.spare, 'spare'),
      isOneStack: isTable && isOneStack,
      sure: number(facts.covered * 100, 0),
    }),
    grid: isTable
      ? {
          heads: isOneStack ? sizes.map((size) => sizeAndSpares(size, facts.shared, formatter)) : sizes,
          last: told.inAll,
          rows: [
            ...lines.map(({ name, sizes: own }) => ({
              name,
              ticks: sizes.map((size) => {
                const one = own.find((of) => of.size === size);
                return one === undefined ? '' : number(stackOf(one));
              }),
              last: number(own.reduce((sum, one) => sum + stackOf(one), 0)),
            })),
            ...(isOneStack ? [] : sharedRows(facts.shared, sizes, formatter)),
          ],
        }
      : null,
    ticks: isTable
      ? []
      : lines.flatMap(({ name, blankId, sizes: own }) => [
          lines.length > 1 ? name : (ownEntry(blanks, blankId)?.name ?? name),
          ...own.map((one) => `${apart(one.size)} ${number(stackOf(one))}`),
        ]),
    tally: isTable ? plain.tally : sharedTally(facts.shared, formatter),
  };
}

interface Pressed {
  readonly formatter: Formatter;
  readonly facts: Pick<JobSheetFacts, 'placements'>;
  /** True where all prints are pressed alike, and the sheet says how in one place. */
  readonly isOneWay: boolean;
}

/** One print at the press: where it sits, how it is pressed, and a square for every good piece. */
export function pressOf(input: JobInput, of: Of, { formatter, facts, isOneWay }: Pressed): JobPress {
  const { lineId, placement, sizes } = of;
  const { recipe } = placement;
  const artwork = ownEntry(input.artworks, placement.artworkId);
  const isMany = facts.placements.length > FEW;
  const pair = picturePair(input, of, !isMany);
  return {
    heading: nameOf(input.job, lineId, placement.name),
    aside: isOneWay ? '' : pressName(input, of),
    strong: isOneWay ? '' : heatWords(recipe, formatter),
    lines: [
      `${printSizesWords(printedSizes(of, artwork), formatter)}, ${placeWords(placement, formatter)}`,
      ...(isOneWay ? [] : recipeWords(recipe, formatter)),
      ...(pair === null ? [told.onPaper(placement.mirror)] : []),
      ...(isMany && pair !== null && pair.picture === null ? [told.noPicture] : []),
      ...(hasNames(input, lineId) ? [told.namesLast] : []),
    ],
    drawings: placementDrawings(input, of, { reads: pair?.asSeen.reads ?? null, isNamed: !isMany }),
    pair,
    sizes: sizes.map(({ size, wanted, spares, isShared }) => ({ size, good: wanted, spares, isShared })),
    perTick: isMany ? piecesPerBox(most(sizes), MOST_TICKS_OF_MANY) : perTickOfFew(sizes),
  };
}

const most = (sizes: Of['sizes']): number => Math.max(...sizes.map(({ wanted }) => wanted));

/** Two prints of six sizes are to stand on one page, so their squares are shared before they take too many lines. */
function perTickOfFew(sizes: Of['sizes']): number {
  const perTick = piecesPerBox(most(sizes), MOST_TICKS);
  const lines = sizes.reduce((sum, { wanted }) => sum + Math.ceil(Math.ceil(wanted / perTick) / IN_LINE), 0);
  return lines > MOST_LINES ? piecesPerBox(most(sizes), MOST_TICKS / 2) : perTick;
}

/** As large as each comes out: a picture of another shape than its place is smaller than that. */
const printedSizes = (
  { placement, prints }: Of,
  artwork: JobInput['artworks'][string] | undefined,
): Of['prints'] =>
  artwork === undefined
    ? prints
    : prints.map((print) => ({ ...print, ...printedSize(placement, artwork, print) }));

/** The last step: counted, packed, and what went wrong written down. */
export function packStep({ job, workshop }: JobInput, pieces: string): JobStep {
  const names = job.lines.flatMap(
    ({ packagingId }) => workshop.packagings.find(({ id }) => id === packagingId)?.name ?? [],
  );
  const packagings = [...new Set(names)];
  return {
    ...plain,
    heading: told.pack,
    ticks: [
      told.countedBySize(pieces),
      ...(job.lines.some(({ nameList }) => nameList.trim() !== '') ? [told.names] : []),
      ...packagings,
      // Who packs it with one has said so in the name of the packaging.
      ...(packagings.some((name) => /care card/i.test(name)) ? [] : [told.careCard]),
      told.label,
      told.cleaned,
    ],
    tally: { words: told.tally, labels: told.faults },
  };
}

const hasNames = ({ job }: JobInput, lineId: string): boolean =>
  job.lines.some(({ id, nameList }) => id === lineId && nameList.trim() !== '');

export const wayOf = (input: JobInput, of: Of, formatter: Formatter): string =>
  [
    heatWords(of.placement.recipe, formatter),
    ...recipeWords(of.placement.recipe, formatter),
    pressName(input, of),
  ].join(', ');

const pressName = ({ workshop }: JobInput, { placement }: Of): string =>
  workshop.presses.find(({ id }) => id === placement.pressId)?.name ?? told.noPress;

/** A print by its own name; where there are several lines, with what it is pressed on, by that alone where it is its only print. */
function nameOf(job: JobInput['job'], lineId: string, name: string): string {
  const line = job.lines.find(({ id }) => id === lineId);
  if (job.lines.length === 1 || line === undefined) return name;
  return line.placements.length === 1 ? line.name : `${line.name}: ${name}`;
}
