import type { LearnedFrom, LearnedRun } from './learnedFrom';
import { learnedShare, PRIOR_BLANKS, PRIOR_SHEETS } from './learnedShare';
import type { Lesson } from './lesson';
import { measuredPlace } from './measuredRate';

/**
 * Blanks found faulty, of each blank: the first standard counted like 100 blanks. Until the first fault is noted nobody
 * is known to look, and nothing is learned; from then on every blank of these runs counts.
 */
export function learnedBlankFaults({ runs, documents, day }: LearnedFrom): readonly Lesson[] {
  const faulty = runs.flatMap(({ facts }) => facts.blankFaults.map(({ body }) => body));
  return [...new Set(faulty.map(({ blankId }) => blankId))].flatMap((blankId): readonly Lesson[] => {
    const seen = faulty.reduce((sum, one) => sum + (one.blankId === blankId ? one.pieces : 0), 0);
    const drawn = runs.map((run) => ({ runId: run.runId, started: startedOf(run, blankId) }));
    const observations = seen + drawn.reduce((sum, { started }) => sum + started, 0);
    const standard = standardFault(runs, blankId);
    if (standard === null || observations === 0) return [];
    const { measured, upper, spread } = learnedShare(standard, PRIOR_BLANKS, seen, observations);
    return [
      {
        subject: { of: 'blankFault', blankId },
        ...{ standard, measured, upper, spread, unit: 'share', observations, seen },
        runIds: drawn.filter(({ started }) => started > 0).map(({ runId }) => runId),
        places: documents.blanks
          .filter(({ id }) => id === blankId)
          .flatMap(({ id, body }) =>
            measuredPlace(
              { kind: 'blank', id, path: ['blankFault'], before: body.blankFault },
              measured,
              'share',
              day,
              { count: observations },
            ),
          ),
      },
    ];
  });
}

/** Sheets that were not pressed: the share in force before any was taken over counted like 50 sheets. */
export function learnedSheetRejects({ runs, documents, taken, day }: LearnedFrom): readonly Lesson[] {
  const { workshop } = documents;
  const noted = runs.filter(({ facts }) => facts.sheetsPrinted.length > 0);
  const bodies = noted.flatMap(({ facts }) => facts.sheetsPrinted.map(({ body }) => body));
  const seen = bodies.reduce((sum, { rejected }) => sum + rejected, 0);
  const observations = bodies.reduce((sum, { good, rejected }) => sum + good + rejected, 0);
  const before = taken.find(({ subject }) => subject.of === 'sheetReject')?.places[0]?.before;
  const held = typeof before === 'object' && before !== null && 'value' in before ? before : null;
  const standard = (held ?? workshop?.body.rates.sheetReject)?.value;
  if (workshop === null || standard === undefined || observations === 0) return [];
  const { measured, upper, spread } = learnedShare(standard, PRIOR_SHEETS, seen, observations);
  return [
    {
      subject: { of: 'sheetReject' },
      ...{ standard, measured, upper, spread, unit: 'share', observations, seen },
      runIds: noted.map(({ runId }) => runId),
      places: measuredPlace(
        {
          ...{ kind: 'workshop', id: workshop.id, path: ['rates', 'sheetReject'] },
          before: workshop.body.rates.sheetReject,
        },
        measured,
        'share',
        day,
        { count: observations },
      ),
    },
  ];
}

// Helpers

const startedOf = ({ standard, result }: LearnedRun, blankId: string): number =>
  (result.made ?? []).reduce((sum, { jobId, lineId, started }) => {
    const line = standard.works
      .find((work) => work.jobId === jobId)
      ?.lines.find((one) => one.lineId === lineId);
    return sum + (line?.blankId === blankId ? started : 0);
  }, 0);

/** A blank ends good where it is not faulty and no press spoils it: what is left of that chance is the fault. */
function standardFault(runs: readonly LearnedRun[], blankId: string): number | null {
  const lines = runs.flatMap(({ standard }) => standard.works.flatMap(({ lines: all }) => all));
  const line = lines.find((one) => one.blankId === blankId && one.sizes.length > 0);
  const chance = line?.sizes[0]?.chance;
  if (line === undefined || chance === undefined) return null;
  const pressed = line.placements.reduce((product, { scrap }) => product * (1 - scrap), 1);
  return Math.max(0, Number((1 - chance / pressed).toPrecision(9)));
}
