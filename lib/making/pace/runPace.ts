import { type Pace, paceOf, type StageMinutes } from '@/lib/calendar/pace';
import { benchWorkOf, stagesOf } from '@/lib/costing/benchWorkOf';
import type { PaceGain, RunJob, RunPace } from '@/lib/making/runPlan';
import { pressCycle, preTapedShare } from './pressCycle';

/**
 * How many pieces an hour go through the press, by who is slowest: the printer, the press, or the hands at the press. The
 * minutes are the job's own; the cycle only shares them between hands and heat.
 *
 * @param isPreTaped transfers are taped at the bench before
 * @returns null where no piece is made
 */
export function runPace(jobs: readonly RunJob[], isPreTaped: boolean): RunPace | null {
  const stages = jobs.map((job) => atPress(job, isPreTaped));
  const pace = paceOf(stages);
  const wholeRun = paceOf(jobs.map(({ costed }) => stagesOf(costed)));
  if (pace === null || wholeRun === null) return null;
  return { ...pace, piecesPerHour: perHour(pace), gains: gainsOf(jobs, stages, pace, isPreTaped), wholeRun };
}

// Helpers

const perHour = ({ each, bottleneck }: Pace): number => 60 / each[bottleneck];

/** Minutes of a job while it is pressed. Where the job tells what the press does alone, its own hands’ minutes stand. */
function atPress({ costed }: RunJob, isPreTaped: boolean): StageMinutes {
  const all = stagesOf(costed);
  const runs = benchWorkOf(costed).press?.runs ?? [];
  const { lines, rates } = costed.laidOut.job;
  const placements = lines.flatMap((line) => line.placements);
  let press = 0;
  let hands = 0;
  for (const [at, { placement, handMinutes, aloneMinutes }] of placements.entries()) {
    const { recipe } = placement;
    const minutes = (runs[at]?.minutes ?? 0) * (isPreTaped ? preTapedShare(recipe) : 1);
    const cycle = pressCycle(recipe, isPreTaped);
    const own = handMinutes.value * (1 + rates.restAllowance.value);
    press += minutes;
    hands +=
      aloneMinutes.value > 0
        ? minutes * (own / (own + aloneMinutes.value))
        : minutes * (cycle.handSeconds / cycle.seconds);
  }
  return { pieces: all.pieces, printer: all.printer, press, hands };
}

/** Sheets lie printed when the press is hot, so the printer sets no pace once anything else is widened. */
function gainsOf(
  jobs: readonly RunJob[],
  stages: readonly StageMinutes[],
  pace: Pace,
  isPreTaped: boolean,
): readonly PaceGain[] {
  const ready = (some: readonly StageMinutes[]) => some.map((one) => ({ ...one, printer: 0 }));
  const widened: readonly (readonly [PaceGain['what'], readonly StageMinutes[]])[] = [
    ...(pace.bottleneck === 'printer' ? [['printBefore', ready(stages)] as const] : []),
    ...(isPreTaped ? [] : [['preTaping', ready(jobs.map((job) => atPress(job, true)))] as const]),
    ['secondPress', ready(stages).map((one) => ({ ...one, press: one.press / 2 }))],
  ];
  return widened
    .flatMap(([what, then]): readonly PaceGain[] => {
      const next = paceOf(then);
      return next === null
        ? []
        : [{ what, gain: Math.max(0, perHour(next) / perHour(pace) - 1), next: next.bottleneck }];
    })
    .toSorted((one, other) => other.gain - one.gain);
}
