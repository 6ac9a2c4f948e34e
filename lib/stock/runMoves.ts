import { inOrder } from '@/lib/stored/entriesInForce';
import type { Entry } from '@/shared/schemas/happened';
import type { BlankFault, Pressing, RunActual, SheetsPrinted } from '@/shared/schemas/runEvents';
import type { RunStandard, StandardWork } from '@/shared/schemas/runPapers';
import type { StockItem, StockMove } from '@/shared/schemas/stock';
import { missedMoves } from './missedMoves';
import { type PiecesMade, piecesMade } from './piecesMade';

/** What is known of a run once it is over; entries in force, in any order, of other runs too. */
export interface RunDone {
  readonly runId: string;
  readonly standard: Pick<RunStandard, 'works'>;
  readonly pressing: readonly Entry<'pressing', Pressing>[];
  readonly blankFault: readonly Entry<'blankFault', BlankFault>[];
  readonly sheetsPrinted: readonly Entry<'sheetsPrinted', SheetsPrinted>[];
  readonly runActual: readonly Entry<'runActual', RunActual>[];
  readonly stockMove: readonly Entry<'stockMove', StockMove>[];
  /** Shares of its ink by channel; empty where nobody knows them. */
  readonly inkShares: readonly {
    readonly printerId: string;
    readonly name: string;
    readonly share: number;
  }[];
  /** What making one cost; null where nobody knows. */
  readonly costOf: (
    goods: Pick<PiecesMade, 'jobId' | 'lineId' | 'size'>,
  ) => NonNullable<StockMove['unitCost']> | null;
}

/** What of a run cannot be booked by itself, because nobody said of what it is. */
export type RunUnsaid =
  /** More blanks used than pieces were pressed or found faulty; below 0 fewer. Of several sizes. */
  | { readonly what: 'blanks'; readonly pieces: number }
  /** Begun, neither finished nor spoiled; below 0 more came out than went in. */
  | { readonly what: 'unfinished'; readonly size: string; readonly pieces: number }
  /** Of several papers. */
  | { readonly what: 'sheets'; readonly sheets: number }
  | { readonly what: 'ink'; readonly mL: number };

/**
 * What a run does to the stock: blanks used, spoiled or found faulty leave it, sheets and ink as well; finished pieces
 * that nobody waits for and seconds lie at home from then on. It is what the run moves in all less what was booked for
 * it already, so that a second device that closes it books its difference alone.
 */
export function runMoves(done: RunDone): {
  readonly moves: readonly StockMove[];
  readonly unsaid: readonly RunUnsaid[];
} {
  const { runId, standard } = done;
  const pieces = piecesMade(
    standard,
    done.pressing.filter(({ body }) => body.runId === runId),
  );
  const faults = inOrder(done.blankFault).filter(({ body }) => body.runId === runId);
  const told = toldOf(done);
  const blanks = blankMoves(pieces, faults, told.blanks);
  const sheets = sheetMoves(done, told.sheets);
  const ink = inkMoves(done, told.ink);
  const wanted = [...blanks.moves, ...sheets.moves, ...ink.moves, ...finishedMoves(pieces, done)];
  const reference = { kind: 'run', id: runId };
  return {
    moves: missedMoves(
      wanted.map((move) => ({ ...move, reference })),
      done.stockMove
        .map(({ body }) => body)
        .filter((body) => body.reference?.kind === 'run' && body.reference.id === runId),
    ),
    unsaid: [
      ...blanks.unsaid,
      ...pieces.flatMap(({ size, unfinished }): readonly RunUnsaid[] =>
        unfinished === 0 ? [] : [{ what: 'unfinished', size, pieces: unfinished }],
      ),
      ...sheets.unsaid,
      ...ink.unsaid,
    ],
  };
}

// Helpers

type Wanted = Omit<StockMove, 'reference'>;
interface Part {
  readonly moves: readonly Wanted[];
  readonly unsaid: readonly RunUnsaid[];
}

const HOME = { place: { kind: 'home' }, grade: 'first' } as const;

const move = (item: StockItem, quantity: number, cause: Wanted['cause']): readonly Wanted[] =>
  quantity === 0 ? [] : [{ ...HOME, item, quantity, cause, unitCost: null }];

/** Figures of the whole run that somebody told: the last counts. */
function toldOf({ runId, runActual }: RunDone) {
  let [blanks, sheets, ink]: [number | null, number | null, number | null] = [null, null, null];
  for (const { body } of inOrder(runActual)) {
    if (body.runId !== runId) continue;
    const { actual } = body;
    if (actual.of === 'blanks') blanks = actual.quantity;
    if (actual.of === 'sheets') sheets = actual.quantity;
    if (actual.of === 'ink') ink = actual.mL;
  }
  return { blanks, sheets, ink };
}

function blankMoves(
  pieces: readonly PiecesMade[],
  faults: readonly Entry<'blankFault', BlankFault>[],
  told: number | null,
): Part {
  const own = pieces.filter(({ isBrought }) => !isBrought);
  const item = ({ blankId, size }: Pick<PiecesMade, 'blankId' | 'size'>, lot: string | null): StockItem => ({
    ...{ kind: 'blank', blankId, size, lot },
  });
  const pressed = own.reduce((sum, { begun }) => sum + begun, 0);
  const faulty = faults.reduce((sum, { body }) => sum + body.pieces, 0);
  const more = told === null ? 0 : told - pressed - faulty;
  const only = own.length === 1 ? own[0] : undefined;
  return {
    moves: [
      ...own.flatMap((one) => [
        ...move(item(one, null), one.spoiled - one.begun - (one === only ? more : 0), 'used'),
        ...move(item(one, null), -one.spoiled, 'scrapped'),
      ]),
      ...faults.flatMap(({ body }) => move(item(body, body.lot), -body.pieces, 'scrapped')),
    ],
    unsaid: more === 0 || only !== undefined ? [] : [{ what: 'blanks', pieces: more }],
  };
}

function sheetMoves({ runId, standard, sheetsPrinted }: RunDone, told: number | null): Part {
  const papers = new Map<string, number>();
  const paperOf = new Map(standard.works.map(({ jobId, sheets }) => [jobId, sheets.sheetId]));
  for (const { body } of inOrder(sheetsPrinted)) {
    const sheetId = paperOf.get(body.jobId);
    if (body.runId !== runId || sheetId === undefined) continue;
    papers.set(sheetId, (papers.get(sheetId) ?? 0) + body.good + body.rejected);
  }
  const [only, ...others] = new Set(paperOf.values());
  const printed = [...papers.values()].reduce((sum, sheets) => sum + sheets, 0);
  const more = told === null ? 0 : told - printed;
  if (only !== undefined && others.length === 0) papers.set(only, printed + more);
  return {
    moves: [...papers].flatMap(([sheetId, sheets]) => move({ kind: 'paper', sheetId }, -sheets, 'used')),
    unsaid: more === 0 || others.length === 0 ? [] : [{ what: 'sheets', sheets: more }],
  };
}

function inkMoves({ inkShares }: RunDone, told: number | null): Part {
  if (told === null || told === 0) return { moves: [], unsaid: [] };
  if (inkShares.length === 0) return { moves: [], unsaid: [{ what: 'ink', mL: told }] };
  return {
    moves: inkShares.flatMap(({ printerId, name, share }) =>
      move({ kind: 'ink', printerId, name }, -told * share, 'used'),
    ),
    unsaid: [],
  };
}

/** Pieces of an order go to whoever asked for them; what came out beyond them stays. */
function finishedMoves(pieces: readonly PiecesMade[], { standard, costOf }: RunDone): readonly Wanted[] {
  const works = new Map(standard.works.map((work): [string, StandardWork] => [work.jobId, work]));
  return pieces.flatMap(({ jobId, lineId, size, good, seconds, wanted }): readonly Wanted[] => {
    const item = { kind: 'finished', jobId, lineId, size } as const;
    const isAwaited = works.get(jobId)?.orderId != null;
    const firsts = isAwaited ? Math.max(0, good - wanted) : good;
    const unitCost = costOf({ jobId, lineId, size });
    return [...move(item, firsts, 'made'), ...move(item, seconds, 'made').map(asSecond)].map((one) => ({
      ...one,
      unitCost,
    }));
  });
}

const asSecond = (wanted: Wanted): Wanted => ({ ...wanted, grade: 'second' });
