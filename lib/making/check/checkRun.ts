import { makeFinding } from '@/lib/findings/makeFinding';
import { orderFindings } from '@/lib/findings/orderFindings';
import { freeAtHome } from '@/lib/making/list/freeAtHome';
import type { RunJob, RunPlan } from '@/lib/making/runPlan';
import { blanksOfRun } from '@/lib/making/standard/blanksOfRun';
import type { RunQuestion } from '@/lib/making/study/runQuestion';
import type { Finding } from '@/shared/finding';
import { textileKinds } from '@/shared/schemas/blank';
import type { Run } from '@/shared/schemas/making/run';
import { runLimits } from '@/shared/tables/runLimits';
import { doneLate } from './doneLate';
import { lyingBetween } from './lyingBetween';

/** What the rules of a run look at. */
interface RunScene {
  readonly runId: string;
  readonly run: Run;
  readonly jobs: readonly RunJob[];
  /** Null where something keeps it from being planned. */
  readonly plan: RunPlan | null;
  readonly isBegun: boolean;
  /** What of the stock is kept for other work. */
  readonly kept: RunQuestion['kept'];
}

/** @returns TIM-01, REC-10, QTY-07 and TIM-05 of a run; of one that has begun nothing about its blanks, for they are in use */
export const checkRun = (scene: RunScene): readonly Finding[] =>
  scene.run.archivedOn !== null
    ? []
    : orderFindings([
        ...(scene.plan === null ? [] : doneLate(scene.runId, scene.jobs, scene.plan)),
        ...sheetsLying(scene),
        ...(scene.isBegun ? [] : blanksShort(scene)),
        ...waits(scene),
      ]);

/** REC-10: sheets pressed wet, or left to draw damp. */
function sheetsLying({ runId, run, plan }: RunScene): readonly Finding[] {
  const between = plan === null ? null : lyingBetween(plan);
  if (between === null) return [];
  const { dry, lying } = runLimits;
  const found: Finding[] = [];
  if (between.shortest < dry.value)
    found.push(
      makeFinding({
        id: 'REC-10',
        severity: 'caution',
        variant: 'wet',
        where: { document: 'run', id: runId, path: ['dryMinutes'] },
        found: { value: between.shortest, unit: 'min' },
        limit: { value: dry.value, unit: dry.unit },
        facts: { minutes: between.shortest, least: dry.value },
      }),
    );
  const hours = between.longest / 60;
  if (hours > lying.value && run.isStoredSealed !== true)
    found.push(
      makeFinding({
        id: 'REC-10',
        severity: 'note',
        variant: run.isStoredSealed === null ? 'untold' : 'unsealed',
        where: { document: 'run', id: runId, path: ['isStoredSealed'] },
        found: { value: hours, unit: 'h' },
        limit: { value: lying.value, unit: lying.unit },
        facts: { hours, most: lying.value },
      }),
    );
  return found;
}

/** TIM-05: waits that nobody planned, and what to say of the first wash. */
function waits({ runId, run, jobs, plan }: RunScene): readonly Finding[] {
  const { dry, cool, wash } = runLimits;
  const note = (field: string) =>
    ({ id: 'TIM-05', severity: 'note', where: { document: 'run', id: runId, path: [field] } }) as const;
  const kinds = jobs.flatMap(({ costed }) => costed.laidOut.job.lines.map(({ blank }) => blank.kind));
  const isCloth = (kind: (typeof kinds)[number]) => textileKinds.includes(kind);
  const brought = plan === null ? null : lyingBetween(plan)?.untilBrought;
  const hours = brought == null ? null : brought / 60;
  return [
    ...(run.dryMinutes === null
      ? [makeFinding({ ...note('dryMinutes'), variant: 'dry', facts: { minutes: dry.value } })]
      : []),
    ...(run.coolMinutes === null && kinds.some((kind) => !isCloth(kind))
      ? [makeFinding({ ...note('coolMinutes'), variant: 'cool', facts: { minutes: cool.value } })]
      : []),
    ...(hours !== null && hours < wash.value && kinds.some(isCloth)
      ? [
          makeFinding({
            ...note('works'),
            variant: 'wash',
            found: { value: hours, unit: 'h' },
            limit: { value: wash.value, unit: wash.unit },
            facts: { hours, least: wash.value },
          }),
        ]
      : []),
  ];
}

interface BlankNeed {
  readonly blankId: string;
  readonly name: string;
  readonly size: string;
  readonly take: number;
  /** Beyond what is kept for other work; null where nobody counted. */
  readonly free: number | null;
}

/** QTY-07: blanks of a size that all jobs of the run take together, against what lies free at home. */
function blanksShort({ runId, run, jobs, kept }: RunScene): readonly Finding[] {
  const needs = needsOf(jobs, run, kept);
  return [...new Set(needs.map(({ blankId }) => blankId))].flatMap((blankId) => {
    const own = needs.filter((need) => need.blankId === blankId);
    const short = own.flatMap(({ size, take, free }) =>
      free !== null && free < take ? [{ size, pieces: take - free }] : [],
    );
    const uncounted = own.flatMap(({ size, take, free }) => (free === null ? [{ size, pieces: take }] : []));
    return (
      [
        ['short', short],
        ['uncounted', uncounted],
      ] as const
    ).flatMap(([variant, sizes]) =>
      sizes.length === 0
        ? []
        : [
            makeFinding({
              id: 'QTY-07',
              severity: 'note',
              variant,
              where: { document: 'run', id: runId, path: ['works'] },
              found: { value: sizes.reduce((sum, { pieces }) => sum + pieces, 0), unit: 'pieces' },
              facts: {
                blank: own[0]?.name ?? '',
                pieces: sizes.reduce((sum, { pieces }) => sum + pieces, 0),
                each: sizes.map(({ size, pieces }) => `${size} ${pieces}`).join(', '),
              },
            }),
          ],
    );
  });
}

/** Of the customer's own nothing can be bought: they are asked for by their own rule. */
function needsOf(
  jobs: readonly RunJob[],
  { cover }: Pick<Run, 'cover'>,
  kept: RunScene['kept'],
): readonly BlankNeed[] {
  const needs = new Map<string, BlankNeed>();
  for (const { jobId, blankId, blankName, isBrought, size, take } of blanksOfRun(jobs, cover)) {
    const job = jobs.find(({ work }) => work.jobId === jobId);
    if (job === undefined || isBrought) continue;
    const key = `${blankId}\n${size}`;
    needs.set(key, {
      ...{ blankId, size, name: blankName },
      take: take + (needs.get(key)?.take ?? 0),
      free: freeAtHome(job.input, { blankId, size }, kept),
    });
  }
  return [...needs.values()];
}
