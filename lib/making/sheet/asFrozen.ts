import { spareStacks, stackFinder } from '@/lib/job/spareStacks';
import type { JobSheetFacts, SheetPlacement } from '@/lib/jobSheet/jobSheet';
import type { RunJob } from '@/lib/making/runPlan';
import { laidOutOf } from '@/lib/pressing/laidOutOf';
import type { RunStandard, StandardPlacement, StandardWork } from '@/shared/schemas/making/runPapers';

/**
 * A job of a run as it stood when the run began: what is pressed, how, and how many of each size. What the standard does
 * not hold, as the file of a picture, stays as it is now; a print taken out of the job since is left out.
 */
export function jobAsFrozen(job: RunJob, { works }: Pick<RunStandard, 'works'>): RunJob {
  const frozen = works.find(({ jobId }) => jobId === job.work.jobId);
  if (frozen === undefined) return job;
  const { job: now } = job.input;
  const lines = now.lines.map((line) => {
    const of = frozen.lines.find(({ lineId }) => lineId === line.id);
    return of === undefined
      ? line
      : {
          ...line,
          name: of.name,
          placements: line.placements.map((placement) => {
            const set = of.placements.find(({ placementId }) => placementId === placement.id);
            if (set === undefined) return placement;
            const { name, position, pressId, recipe, mirror, dropFromCollarMm, testPresses } = set;
            return {
              ...placement,
              ...{ name, position, pressId, recipe, mirror, dropFromCollarMm, testPresses },
            };
          }),
        };
  });
  return { ...job, input: { ...job.input, job: { ...now, name: frozen.name, lines } } };
}

/** What the bench was told of a job when the run began. */
export function factsAsFrozen(facts: JobSheetFacts, frozen: StandardWork): JobSheetFacts {
  const laid = laidOutOf({ works: [frozen] });
  const stackOf = stackFinder(laid);
  const lines = frozen.lines.map(({ lineId, name, blankId, sizes: own }) => {
    const sizes = own.map((one) => {
      const { spares = 0, isShared = false } = stackOf({ jobId: frozen.jobId, lineId, size: one.size }) ?? {};
      return { ...one, spares, isShared };
    });
    const take = sum(sizes.map((size) => size.take));
    return { lineId, name, blankId, sizes, take, spare: take - sum(sizes.map(({ wanted }) => wanted)) };
  });
  const sheets = Math.ceil(frozen.sheets.quantity - 1e-9);
  const take = sum(lines.map((line) => line.take));
  const pieces = take - sum(lines.map(({ spare }) => spare));
  return {
    ...facts,
    ...{ lines, take, pieces, sheets, spare: take - pieces },
    shared: spareStacks(laid).filter(({ isShared }) => isShared),
    goodSheets: Math.min(facts.goodSheets, sheets),
    placements: facts.placements.map((of) => placementAsFrozen(of, frozen)),
    tests: sum(
      frozen.lines.flatMap(({ placements }) => placements.map(({ testPresses }) => Math.round(testPresses))),
    ),
  };
}

// Helpers

function placementAsFrozen(of: SheetPlacement, { lines }: StandardWork): SheetPlacement {
  const set = lines
    .find(({ lineId }) => lineId === of.lineId)
    ?.placements.find(({ placementId }) => placementId === of.placement.id);
  return set === undefined
    ? of
    : { ...of, prints: of.prints.map((print) => ({ ...print, ...sizeOf(set, print) })) };
}

/** The print size of then, where the same sizes share a print. */
function sizeOf(
  { prints }: StandardPlacement,
  { sizes }: SheetPlacement['prints'][number],
): Partial<Pick<SheetPlacement['prints'][number], 'widthMm' | 'heightMm'>> {
  const same = prints.find((one) => one.sizes.some((size) => sizes.includes(size)));
  return same === undefined ? {} : { widthMm: same.widthMm, heightMm: same.heightMm };
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
