import { recordReason } from '@/app/_words/store/recordWords';
import { readJobInput } from '@/lib/findings/readJobInput';
import { carHeld } from '@/lib/stall/car/carHeld';
import { pressedFor } from '@/lib/stall/car/dayMoves';
import { finishedFor } from '@/lib/stall/car/finishedFor';
import { plansCountedBy, plansOf } from '@/lib/stall/car/plansOf';
import { closeInForce } from '@/lib/stall/closeInForce';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import { tapsOfDay } from '@/lib/stall/count/tappedEntry';
import { type DayFigures, dayFigures } from '@/lib/stall/evening/dayFigures';
import { pastDaysOf } from '@/lib/stall/evening/pastDaysOf';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import { foldStock } from '@/lib/stock/foldStock';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';
import { workshopSchema } from '@/shared/schemas/workshop';
import { entriesOf } from './bodiesOf';
import { chosenDraft, copyOfFile, liveOf, requestOf, whichDraft } from './copyOfFile';
import { type KeptPaper, papersOf } from './papersOf';
import { plainContext } from './plainContext';

/** What of a stall day is in a file. */
type CopiedStall =
  | {
      readonly kind: 'stall';
      readonly asked: StallAsked;
      /** The money of the day; null where it was not counted. */
      readonly figures: DayFigures | null;
      readonly note: string | null;
    }
  | { readonly kind: 'unusable'; readonly why: string };

interface OfFile {
  readonly file: string;
  /** Null where none is named. */
  readonly dayId: string | null;
  /** The day it is asked on, YYYY-MM-DD. */
  readonly day: string;
}

/** What is planned of a copy or of a carried stall day: the one that was carried, the only one, or the one named. */
export async function stallOfCopy(bytes: Uint8Array, { file, dayId, day }: OfFile): Promise<CopiedStall> {
  const read = await copyOfFile(bytes, file, 'Nothing was planned.');
  if (read.kind === 'unusable') return read;
  const { copy, workshop, inForce } = read;
  // A day is planned whole or not at all: without a record that cannot be read it would be another one.
  const lost = copy.unreadable
    .filter(({ kind }) => kind !== null && needed.includes(kind))
    .map((record) => `${record.kind} ${record.id}: ${recordReason(record, plainContext)}`);
  if (lost.length > 0) return unusable(`${file} cannot be used.\n${lost.join('\n')}`);
  const draft = chosenDraft('stallDay', copy, dayId);
  if (draft === null) return unusable(`${file} ${whichDraft('stallDay', liveOf('stallDay', copy), dayId)}`);
  const stallDay = stallDaySchema.parse(draft.body);
  const named = jobsOf(stallDay);
  const jobs: StallAsked['jobs'][number][] = [];
  for (const job of liveOf('job', copy).filter(({ id }) => named.has(id))) {
    const input = readJobInput(requestOf(read, job, day));
    if (!input.ok) return unusable(`${file}: the job ${job.id} cannot be read.`);
    jobs.push({ jobId: job.id, input: input.value });
  }
  const plans = papersOf('stallPlan', read);
  const closes = papersOf('dayClose', read);
  const moves = entriesOf('stockMove', inForce);
  const piles = foldStock([
    ...moves,
    ...entriesOf('stockTransfer', inForce),
    ...entriesOf('stockCount', inForce),
  ]);
  return {
    kind: 'stall',
    note: read.note,
    asked: {
      day,
      stallDay,
      workshop: workshopSchema.parse(workshop.body),
      jobs,
      atHome: finishedFor(draft.id, piles, carHeld({ piles, moves }, { dayClose: closes })).filter(
        ({ jobId }) => named.has(jobId),
      ),
      madeForDay: pressedFor(moves, draft.id),
      past: pastDaysOf(plans, closes).filter(({ stallDayId }) => stallDayId !== draft.id),
    },
    figures: figuresOf(draft.id, plans, closes, read),
  };
}

// Helpers

const needed = ['stallDay', 'job', 'blank', 'artwork', 'stallPlan', 'stallTap', 'dayClose'];

const jobsOf = ({ ranges }: StallDay): ReadonlySet<string> =>
  new Set(ranges.flatMap(({ designs }) => designs.map(({ jobId }) => jobId)));

type ReadFile = Extract<Awaited<ReturnType<typeof copyOfFile>>, { readonly kind: 'copy' }>;
/** Of a day that somebody tapped or closed, by the plan it is counted by. */
function figuresOf(
  stallDayId: string,
  plans: readonly KeptPaper<'stallPlan'>[],
  closes: readonly KeptPaper<'dayClose'>[],
  { inForce }: ReadFile,
): DayFigures | null {
  const close = closeInForce(closes, stallDayId);
  const taps = tapsOfDay(entriesOf('stallTap', inForce), stallDayId);
  const { counts: plan, earlier } = plansOf(plans, stallDayId, plansCountedBy(taps, closes));
  if (plan === null || (taps.length === 0 && close === null)) return null;
  return dayFigures(plan.body, foldTaps(plan.body, taps, wallHere, earlier), close?.body ?? null);
}

/** As a clock on the wall shows it where this runs; money does not hang on it. */
const wallHere: WallClock = (at) => {
  const moment = new Date(at);
  const two = (part: number) => String(part).padStart(2, '0');
  return {
    day: `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`,
    minute: moment.getHours() * 60 + moment.getMinutes(),
  };
};

const unusable = (why: string): CopiedStall => ({ kind: 'unusable', why });
