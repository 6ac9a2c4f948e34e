import { spareStacks } from '@/lib/job/spareStacks';
import type { Hours, Pressing } from '@/shared/schemas/making/runEvents';
import { LONG_DAY_MINUTES } from '@/shared/tables/longDay';
import type { MadeSize } from './goodMade';
import type { RunResult } from './runResult';

/** Longer than this in one go is more likely a clock that was left running; from memory. */
export const WHOLE_NIGHT_MINUTES = 480;

/** So much typed in one go is more likely a slip, or a clock that ran through a night; from memory. */
const LONG_NOTE_MINUTES = 720;

/** What cannot be, or hardly, in what was noted of a run. It is kept and counted as noted. */
export type ActualTrouble =
  | { readonly what: 'moreCameThanUsed'; readonly came: number; readonly used: number }
  | { readonly what: 'moreLostThanStarted'; readonly lost: number; readonly started: number }
  | { readonly what: 'moreCameThanStarted'; readonly came: number; readonly started: number }
  /** More went into the first press than was laid out of these sizes, for all designs that share them; of them alone. */
  | {
      readonly what: 'moreThanLaidOut';
      readonly sizes: readonly string[];
      readonly started: number;
      readonly laidOut: number;
    }
  | { readonly what: 'otherCurrency'; readonly noted: string; readonly run: string }
  | {
      readonly what: 'noTime' | 'wholeNight' | 'longNote';
      readonly entryId: string;
      readonly minutes: number;
    }
  | { readonly what: 'longDay'; readonly day: string; readonly minutes: number }
  | { readonly what: 'withoutCause'; readonly pieces: number }
  | { readonly what: 'noneUsed'; readonly of: 'blanks' | 'sheets' };

/**
 * @param hours entries in force of the run
 * @param pressings in force, of the run
 */
export function actualTroubles(
  { made, actuals, currency }: Pick<RunResult, 'made' | 'actuals' | 'currency'>,
  hours: readonly { readonly id: string; readonly body: Hours }[],
  pressings: readonly { readonly body: Pick<Pressing, 'result' | 'fault'> }[] = [],
): readonly ActualTrouble[] {
  const sum = (of: 'good' | 'seconds' | 'scrap' | 'started') =>
    (made ?? []).reduce((running, one) => running + one[of], 0);
  const came = sum('good') + sum('seconds') + sum('scrap');
  const used = actuals.blanks.quantity;
  const withoutCause = pressings.filter(({ body }) => body.result === 'scrap' && body.fault === null).length;
  const isUsedTyped = actuals.blanks.quantityFrom === 'typed';
  return [
    ...(sum('scrap') > sum('started')
      ? [{ what: 'moreLostThanStarted' as const, lost: sum('scrap'), started: sum('started') }]
      : !isUsedTyped && came > sum('started')
        ? [{ what: 'moreCameThanStarted' as const, came, started: sum('started') }]
        : []),
    ...moreThanLaidOut(made ?? []),
    ...(isUsedTyped && used > 0 && came > used ? [{ what: 'moreCameThanUsed' as const, came, used }] : []),
    ...(['blanks', 'sheets'] as const)
      .filter((of) => actuals[of].quantityFrom === 'typed' && actuals[of].quantity === 0)
      .map((of) => ({ what: 'noneUsed' as const, of })),
    ...actuals.otherCurrencies.map((noted) => ({ what: 'otherCurrency' as const, noted, run: currency })),
    ...hours.flatMap(({ id, body: { minutes, from } }): ActualTrouble[] => {
      if (minutes === 0) return [{ what: 'noTime', entryId: id, minutes }];
      if (from === 'clock' && minutes >= WHOLE_NIGHT_MINUTES)
        return [{ what: 'wholeNight', entryId: id, minutes }];
      return minutes >= LONG_NOTE_MINUTES ? [{ what: 'longNote', entryId: id, minutes }] : [];
    }),
    ...longDays(hours),
    ...(withoutCause > 0 ? [{ what: 'withoutCause' as const, pieces: withoutCause }] : []),
  ];
}

/** @returns whether a time that was noted is hardly so: the pay of an hour is doubtful until it is checked */
export const isTimeDoubtful = (troubles: readonly ActualTrouble[]): boolean =>
  troubles.some(({ what }) => ABOUT_TIME.has(what));

// Helpers

const ABOUT_TIME: ReadonlySet<ActualTrouble['what']> = new Set([
  'noTime',
  'wholeNight',
  'longNote',
  'longDay',
]);

function moreThanLaidOut(made: readonly MadeSize[]): readonly ActualTrouble[] {
  const over = spareStacks(made)
    .map(({ size, take, of }) => ({ size, take, started: of.reduce((sum, one) => sum + one.started, 0) }))
    .filter(({ started, take }) => started > take);
  if (over.length === 0) return [];
  const all = (of: 'started' | 'take') => over.reduce((sum, one) => sum + one[of], 0);
  const sizes = [...new Set(over.map(({ size }) => size))];
  return [{ what: 'moreThanLaidOut', sizes, started: all('started'), laidOut: all('take') }];
}

function longDays(hours: readonly { readonly body: Hours }[]): readonly ActualTrouble[] {
  const days = new Map<string, number>();
  for (const { body } of hours) days.set(body.day, (days.get(body.day) ?? 0) + body.minutes);
  return [...days].flatMap(([day, minutes]) =>
    minutes > LONG_DAY_MINUTES ? [{ what: 'longDay' as const, day, minutes }] : [],
  );
}
