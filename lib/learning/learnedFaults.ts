import { rateDefinition } from '@/shared/tables/rateCatalogue';
import { heldWhen } from './heldWhen';
import type { LearnedFrom, LearnedRun } from './learnedFrom';
import { learnedShare, PRIOR_BLANKS, PRIOR_SHEETS } from './learnedShare';
import type { Lesson } from './lesson';
import { measuredPlace } from './measuredRate';

/**
 * Blanks found faulty, of each blank: the first standard counted like 100 blanks. Until the first fault is noted nobody
 * is known to look, at the press or as goods come in; from then on every blank of these runs and deliveries counts. One
 * that was looked at when it came and again at the press counts once.
 */
export function learnedBlankFaults(from: LearnedFrom): readonly Lesson[] {
  const { runs, goodsIn, documents, day } = from;
  const noted = runs.flatMap(({ facts }) => facts.blankFaults.map(({ body }) => body.blankId));
  const sent = goodsIn.flatMap(({ rows }) => rows.flatMap((row) => (row.faulty > 0 ? blankOf(row) : [])));
  return [...new Set([...noted, ...sent])].flatMap((blankId): readonly Lesson[] => {
    const pressed = lookedAtPress(runs, blankId);
    const came = lookedAsItCame(goodsIn, blankId);
    const seen = came.faulty + pressed.faulty;
    // What came whole is what is drawn; what is drawn beyond it lay there before.
    const observations = Math.round(came.faulty + Math.max(came.whole, pressed.drawn + pressed.faulty));
    const standard = standardFault(runs, blankId);
    if (standard === null || observations === 0) return [];
    const { measured, upper, spread } = learnedShare(standard, PRIOR_BLANKS, seen, observations);
    return [
      {
        subject: { of: 'blankFault', blankId },
        ...{ standard, measured, upper, spread, unit: 'share', observations, seen },
        runIds: pressed.runIds,
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
  if (workshop === null || observations === 0) return [];
  const held = workshop.body.rates.sheetReject;
  const at = { kind: 'workshop' as const, id: workshop.id, path: ['rates', 'sheetReject'] };
  const place = { ...at, before: held };
  const { first: standard } = heldWhen(taken, place, held, rateDefinition('sheetReject').typical);
  const { measured, upper, spread } = learnedShare(standard, PRIOR_SHEETS, seen, observations);
  return [
    {
      subject: { of: 'sheetReject' },
      ...{ standard, measured, upper, spread, unit: 'share', observations, seen },
      runIds: noted.map(({ runId }) => runId),
      places: measuredPlace(place, measured, 'share', day, { count: observations }),
    },
  ];
}

// Helpers

type Delivered = LearnedFrom['goodsIn'][number];

/** From the run on in which the first was noted. */
function lookedAtPress(runs: readonly LearnedRun[], blankId: string) {
  const isFaulty = ({ facts }: LearnedRun) => facts.blankFaults.some(({ body }) => body.blankId === blankId);
  const first = runs.findIndex(isFaulty);
  const looked = (first < 0 ? [] : runs.slice(first)).map((run) => ({
    runId: run.runId,
    drawn: startedOf(run, blankId),
    faulty: sum(run.facts.blankFaults, ({ body }) => (body.blankId === blankId ? body.pieces : 0)),
  }));
  return {
    drawn: sum(looked, ({ drawn }) => drawn),
    faulty: sum(looked, ({ faulty }) => faulty),
    runIds: looked.filter(({ drawn, faulty }) => drawn + faulty > 0).map(({ runId }) => runId),
  };
}

/** From the day on on which the first was noted. */
function lookedAsItCame(goodsIn: readonly Delivered[], blankId: string) {
  const rows = goodsIn.flatMap(({ day, rows: all }) =>
    all.filter((row) => blankOf(row)[0] === blankId).map((row) => ({ ...row, day })),
  );
  const days = rows.filter(({ faulty }) => faulty > 0).map(({ day }) => day);
  const [first] = days.toSorted();
  const looked = first === undefined ? [] : rows.filter(({ day }) => day >= first);
  const faulty = sum(looked, (row) => row.faulty);
  return { faulty, whole: sum(looked, (row) => Math.max(0, row.counted - row.faulty)) };
}

const blankOf = ({ item }: Delivered['rows'][number]): readonly string[] =>
  item.kind === 'blank' ? [item.blankId] : [];

const sum = <One>(all: readonly One[], of: (one: One) => number): number =>
  all.reduce((running, one) => running + of(one), 0);

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
