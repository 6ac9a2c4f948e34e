import { sparesWords, troubleWords } from '@/app/_words/afterRun/afterRunWords';
import { formatterFor } from '@/app/_words/formatter';
import { otherBarsWords } from '@/app/_words/making/runCommandWords';
import { severalBegan } from '@/app/_words/making/runs/severalBegan';
import { sinceWords } from '@/app/_words/making/runs/sinceWords';
import { devicesWords, faultyOutsideWords, outsideWords } from '@/app/_words/press/pressWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { changedSince } from '@/lib/making/list/changedSince';
import type { RunFacts, StandardPaper } from '@/lib/making/runFacts';
import { foldPressings } from '@/lib/pressing/foldPressings';
import { actualTroubles } from '@/lib/variances/actualTroubles';
import type { RunResult } from '@/lib/variances/runResult';
import type { RunOfFile } from './runOfCopy';

/** Bars of the bridge as the command has them. */
type Bars = Parameters<typeof otherBarsWords>[0];

interface CameOut {
  readonly facts: RunFacts;
  readonly standard: StandardPaper;
  readonly result: RunResult;
  /** Those that stand in no variance of the answer. */
  readonly otherBars: Bars;
}

/** @returns what is to be said beside the figures of a run that has begun: what changed since, and what in its notes does not add up */
export function besideRun(
  { inputs, workshop }: Pick<RunOfFile, 'inputs' | 'workshop'>,
  { facts, standard, result, otherBars }: CameOut,
): readonly string[] {
  const { currency } = result;
  const locale = usableLocale(workshop.locale);
  const formatter = formatterFor({ ...workshop, currency });
  const pressed = foldPressings(standard.body, facts.pressings, facts.blankFaults);
  const counted = (many: number, words: (many: number) => string, from = 1) =>
    many < from ? [] : [words(many)];
  return [
    ...sinceWords(changedSince(standard.body, (jobId) => inputs.get(jobId) ?? null)),
    ...(facts.otherStandards.length > 0 ? [severalBegan] : []),
    ...counted(pressed.devices.length, devicesWords, 2),
    ...actualTroubles(result, facts.hours, facts.pressings).map((trouble) =>
      troubleWords(trouble, formatter, locale),
    ),
    ...counted(pressed.outside.length, outsideWords),
    ...counted(pressed.faultyOutside.length, faultyOutsideWords),
    ...counted(result.spares.pieces + result.spares.seconds, () => sparesWords(result, formatter, locale)),
    ...otherBarsWords(otherBars, currency, locale),
  ];
}
