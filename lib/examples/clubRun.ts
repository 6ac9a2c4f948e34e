import { addDays } from '@/shared/days';
import type { Run } from '@/shared/schemas/making/run';
import type {
  Hours,
  Pressing,
  RunActual,
  SheetsPrinted,
  WorkElement,
} from '@/shared/schemas/making/runEvents';
import type { PressFault } from '@/shared/tables/faults';

/** Id of the run in which the worked job is made. */
export const CLUB_RUN_ID = 'club-run';

/** Blanks ordered in time lie there by then. */
const DAYS_BEFORE_THE_EVENT = 4;
/** 18:00 to 23:00. */
const EVENING = { fromMinute: 18 * 60, minutes: 5 * 60 } as const;

/** @returns the day on which the worked job is pressed: the Monday before the event, which is a Friday. */
export const clubRunDay = (wantedOn: string): string => addDays(wantedOn, -DAYS_BEFORE_THE_EVENT);

/**
 * The run in which the worked job is made, on one evening.
 *
 * @param of the worked job and its order
 * @param day of the evening
 */
export const clubRun = (of: { readonly jobId: string; readonly orderId: string }, day: string): Run => ({
  name: 'Ramblers Club shirts',
  works: [{ ...of, stallDayId: null }],
  cover: 'usual',
  startsOn: null,
  ownBlocks: [{ id: 'evening', day, ...EVENING }],
  heatings: null,
  sizesFirst: [],
  isPreTaped: false,
  dryMinutes: null,
  coolMinutes: null,
  isStoredSealed: true,
  note: '',
  archivedOn: null,
});

/** What is noted of a run, with the minute of its day. */
type Noted =
  | { readonly kind: 'sheetsPrinted'; readonly minute: number; readonly body: SheetsPrinted }
  | { readonly kind: 'pressing'; readonly minute: number; readonly body: Pressing }
  | { readonly kind: 'runActual'; readonly minute: number; readonly body: RunActual }
  | { readonly kind: 'hours'; readonly minute: number; readonly body: Hours };

interface NotedOf {
  readonly standardId: string;
  readonly jobId: string;
  readonly day: string;
}

/**
 * What became of it: 41 of 45 blanks bought at 4.95, 58 sheets at 0.15, 44 mL, 8.40 h; of 41 backs two ghosted, of 39
 * badges one had specks and one was reversed; 37 good, and 6.22 spent on reprints.
 */
export function clubRunNoted({ standardId, jobId, day }: NotedOf): readonly Noted[] {
  const ofRun = { runId: CLUB_RUN_ID, standardId } as const;
  const actual = (body: RunActual['actual']): Noted => ({
    ...{ kind: 'runActual', minute: NIGHT },
    body: { runId: CLUB_RUN_ID, day, currency: 'USD', actual: body },
  });
  const presses = (placementId: string, results: readonly PressResult[], from: number, each: number) =>
    results.map(
      ({ size, fault }, at): Noted => ({
        ...{ kind: 'pressing', minute: from + at * each },
        body: {
          ...{ ...ofRun, jobId, lineId: 'shirts', placementId, size, fault },
          result: fault === null ? 'good' : 'scrap',
        },
      }),
    );
  return [
    {
      ...{ kind: 'sheetsPrinted', minute: EVENING.fromMinute },
      body: { ...ofRun, jobId, placementId: null, good: 53, rejected: 5, fault: 'bands' },
    },
    ...presses('back', pressed(BACKS_LOST, { M: 1, L: 1 }), EVENING.fromMinute + 30, 2.5),
    ...presses('badge', pressed(BADGES_LOST, {}), EVENING.fromMinute + 150, 2.2),
    ...HOURS.map(
      ([element, minutes, placementId, pieces]): Noted => ({
        ...{ kind: 'hours', minute: NIGHT },
        body: {
          ...{ day, minutes, element, placementId, pieces, from: 'typed', note: '' },
          for: { kind: 'run', id: CLUB_RUN_ID },
        },
      }),
    ),
    actual({ of: 'blanks', quantity: 41, amountMinor: 41 * 495 }),
    actual({ of: 'sheets', quantity: 58, amountMinor: 58 * 15 }),
    actual({ of: 'ink', mL: 44 }),
    actual({ of: 'reprints', amountMinor: 622 }),
  ];
}

// Helpers

interface PressResult {
  readonly size: string;
  readonly fault: PressFault | null;
}

/** After the last shirt is packed. */
const NIGHT = 22 * 60 + 50;

/** Good pieces, common sizes first. */
const GOOD = [
  ['L', 11],
  ['M', 9],
  ['XL', 8],
  ['S', 4],
  ['2XL', 4],
  ['3XL', 1],
] as const;
const BACKS_LOST: readonly PressResult[] = [
  { size: 'L', fault: 'ghost' },
  { size: 'XL', fault: 'ghost' },
];
const BADGES_LOST: readonly PressResult[] = [
  { size: 'M', fault: 'specks' },
  { size: 'L', fault: 'reversed' },
];

/** Size by size, what was lost before what came out good; `more` came out good here and was lost at the next press. */
const pressed = (
  lost: readonly PressResult[],
  more: Readonly<Record<string, number>>,
): readonly PressResult[] =>
  GOOD.flatMap(([size, good]) => [
    ...lost.filter((one) => one.size === size),
    ...Array.from({ length: good + (more[size] ?? 0) }, () => ({ size, fault: null })),
  ]);

/** 8.40 h by what was done, min; a print and how many presses where it was one. */
const HOURS: readonly (readonly [WorkElement, number, string | null, number | null])[] = [
  ['enquiry', 40, null, null],
  ['art', 60, null, null],
  ['proof', 15, null, null],
  ['setUp', 25, null, null],
  ['sheets', 58, null, 58],
  ['presses', 115, 'back', 43],
  ['presses', 92, 'badge', 39],
  ['finish', 47, null, 37],
  ['pack', 12, null, null],
  ['cleanDown', 10, null, null],
  ['deliver', 30, null, null],
];
