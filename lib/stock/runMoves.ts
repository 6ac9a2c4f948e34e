import type { Entry } from '@/shared/schemas/happened';
import type { BlankFault, SheetsPrinted } from '@/shared/schemas/making/runEvents';
import type { RunStandard, StandardWork } from '@/shared/schemas/making/runPapers';
import type { StockItem, StockMove, StockUnitCost } from '@/shared/schemas/stock';
import { missedMoves } from './missedMoves';

/** What became of the blanks of one size in a run, by its presses. */
export interface RunPieces {
  readonly jobId: string;
  readonly lineId: string;
  readonly size: string;
  /** Good pieces that were to come out. */
  readonly wanted: number;
  /** That went into the first press. */
  readonly started: number;
  /** Blanks it took; more than started where only later presses are noted. */
  readonly drawn: number;
  /** Lost at any press. */
  readonly scrap: number;
  /** Out of the last press. */
  readonly good: number;
  readonly seconds: number;
}

/** What is known of a run once it is over. Entries are in force and of the run, each once. */
export interface RunDone {
  readonly runId: string;
  readonly standard: Pick<RunStandard, 'works'>;
  /** Every size of the run; none where nobody noted a piece. */
  readonly pieces: readonly RunPieces[];
  readonly blankFaults: readonly Pick<Entry<'blankFault', BlankFault>, 'body'>[];
  readonly sheetsPrinted: readonly Pick<Entry<'sheetsPrinted', SheetsPrinted>, 'body'>[];
  /** What somebody told of the whole run; null where nobody did. */
  readonly told: {
    readonly blanks: number | null;
    readonly sheets: number | null;
    readonly inkMl: number | null;
  };
  /** All moves in force: those that were booked for the run are found among them. */
  readonly moves: readonly Pick<Entry<'stockMove', StockMove>, 'body'>[];
  /** Shares of its ink by channel; empty where nobody knows them. */
  readonly inkShares: readonly {
    readonly printerId: string;
    readonly name: string;
    readonly share: number;
  }[];
  /** What of one was bought; null where nobody knows. */
  readonly costOf: (goods: Pick<RunPieces, 'jobId' | 'lineId' | 'size'>) => StockUnitCost | null;
}

/** What of a run cannot be booked by itself, because nobody said of what it is. */
type RunUnsaid =
  /** More blanks used than pieces were pressed or found faulty; below 0 fewer. Of several sizes. */
  | { readonly what: 'blanks'; readonly pieces: number }
  /** Begun, neither finished nor spoiled; below 0 more came out than are noted at the first press. */
  | { readonly what: 'unfinished'; readonly size: string; readonly pieces: number }
  /** Of several papers. */
  | { readonly what: 'sheets'; readonly sheets: number }
  | { readonly what: 'ink'; readonly mL: number };

/** What is to be booked of a run, and what is not. */
export interface RunMoves {
  readonly moves: readonly StockMove[];
  readonly unsaid: readonly RunUnsaid[];
}

/**
 * What a run does to the stock: blanks used, spoiled or found faulty leave it, sheets and ink as well; finished pieces
 * that nobody waits for and seconds lie at home from then on. It is what the run moves in all less what was booked for
 * it already, so that a second device that closes it books its difference alone.
 */
export function runMoves(done: RunDone): RunMoves {
  const { runId, pieces, told } = done;
  const blanks = blankMoves(done, told.blanks);
  const sheets = sheetMoves(done, told.sheets);
  const ink = inkMoves(done, told.inkMl);
  const wanted = [...blanks.moves, ...sheets.moves, ...ink.moves, ...finishedMoves(done)];
  const reference = { kind: 'run', id: runId };
  return {
    moves: missedMoves(
      wanted.map((move) => ({ ...move, reference })),
      done.moves
        .map(({ body }) => body)
        .filter((body) => body.reference?.kind === 'run' && body.reference.id === runId),
    ),
    unsaid: [...blanks.unsaid, ...pieces.flatMap(unfinishedOf), ...sheets.unsaid, ...ink.unsaid],
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

function unfinishedOf({ size, started, drawn, scrap, good, seconds }: RunPieces): readonly RunUnsaid[] {
  return [drawn - scrap - good - seconds, started - drawn].flatMap((pieces): readonly RunUnsaid[] =>
    pieces === 0 ? [] : [{ what: 'unfinished', size, pieces }],
  );
}

function blankMoves({ standard, pieces, blankFaults }: RunDone, told: number | null): Part {
  const lines = standard.works.flatMap(({ jobId, lines }) => lines.map((line) => ({ jobId, ...line })));
  const own = pieces.flatMap((one) => {
    const line = lines.find(({ jobId, lineId }) => jobId === one.jobId && lineId === one.lineId);
    return line === undefined || line.isBrought ? [] : [{ ...one, blankId: line.blankId }];
  });
  const item = (of: { readonly blankId: string; readonly size: string }, lot: string | null): StockItem => ({
    ...{ kind: 'blank', blankId: of.blankId, size: of.size, lot },
  });
  // Those that a customer brings lie in no stock, but are among all that were told.
  const brought = new Set(lines.filter(({ isBrought }) => isBrought).map(({ blankId }) => blankId));
  for (const { isBrought, blankId } of lines) if (!isBrought) brought.delete(blankId);
  const pressed = pieces.reduce((sum, { drawn }) => sum + drawn, 0);
  const faulty = blankFaults.reduce((sum, { body }) => sum + body.pieces, 0);
  const more = told === null ? 0 : told - pressed - faulty;
  const only = own.length === 1 && pieces.length === 1 ? own[0] : undefined;
  return {
    moves: [
      ...own.flatMap((one) => [
        ...move(item(one, null), one.scrap - one.drawn - (one === only ? more : 0), 'used'),
        ...move(item(one, null), -one.scrap, 'scrapped'),
      ]),
      ...blankFaults.flatMap(({ body }) =>
        brought.has(body.blankId) ? [] : move(item(body, body.lot), -body.pieces, 'scrapped'),
      ),
    ],
    unsaid: more === 0 || only !== undefined ? [] : [{ what: 'blanks', pieces: more }],
  };
}

function sheetMoves({ standard, sheetsPrinted }: RunDone, told: number | null): Part {
  const papers = new Map<string, number>();
  const paperOf = new Map(standard.works.map(({ jobId, sheets }) => [jobId, sheets.sheetId]));
  for (const { body } of sheetsPrinted) {
    const sheetId = paperOf.get(body.jobId);
    if (sheetId === undefined) continue;
    papers.set(sheetId, (papers.get(sheetId) ?? 0) + body.good + body.rejected);
  }
  const [only, ...others] = new Set(paperOf.values());
  const printed = [...papers.values()].reduce((sum, sheets) => sum + sheets, 0);
  const more = told === null ? 0 : told - printed;
  if (only !== undefined && others.length === 0) papers.set(only, printed + more);
  // A roll lies in stock by the metre.
  const metres = new Map(standard.works.map(({ sheets }) => [sheets.sheetId, sheets.metresEach ?? 1]));
  return {
    moves: [...papers].flatMap(([sheetId, sheets]) =>
      move({ kind: 'paper', sheetId }, -sheets * (metres.get(sheetId) ?? 1), 'used'),
    ),
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
function finishedMoves({ pieces, standard, costOf }: RunDone): readonly Wanted[] {
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
