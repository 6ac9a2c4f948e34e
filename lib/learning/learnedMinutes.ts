import type { WorkElement } from '@/shared/schemas/making/runEvents';
import { rateDefinition } from '@/shared/tables/rateCatalogue';
import { blankTypicals } from '@/shared/tables/typicalRates';
import { heldWhen } from './heldWhen';
import type { LearnedFrom, LearnedRun } from './learnedFrom';
import type { Lesson } from './lesson';
import { measuredPlace } from './measuredRate';
import { shrunk } from './shrunk';

/** Work whose minutes one rate of the workshop holds: once an order, once a session, or of a sheet. */
const workshopRates = {
  enquiry: 'enquiryMinutes',
  proof: 'proofMinutes',
  setUp: 'setUpMinutes',
  sheets: 'sheetMinutes',
  pack: 'packMinutes',
  cleanDown: 'cleanDownMinutes',
  deliver: 'deliverMinutes',
} as const satisfies Partial<Record<WorkElement, string>>;

/** Work that no rate of the workshop holds: a blank, an artwork, a print or a way of selling does. */
const otherWork = ['art', 'presses', 'finish', 'selling'] as const satisfies readonly WorkElement[];

/**
 * Minutes of each element of work that somebody noted. A run is held against its own standard, for one that heats up
 * three times, or is of two jobs, plans more: what is shrunk is how much longer it took, and that goes to the rate.
 */
export const learnedMinutes = (from: LearnedFrom): readonly Lesson[] => [
  ...Object.entries(workshopRates).flatMap(([element, rate]) =>
    workshopLesson(from, element as keyof typeof workshopRates, rate),
  ),
  ...otherWork.flatMap((element) => (element === 'finish' ? finishLessons(from) : watched(from, element))),
];

// Helpers

/** What was noted of an element in one run, beside what its own standard plans for it. */
interface Noted {
  readonly run: LearnedRun;
  readonly standard: number;
  readonly actual: number;
}

function notedOf({ runs }: Pick<LearnedFrom, 'runs'>, element: WorkElement): readonly Noted[] {
  return runs.flatMap((run): readonly Noted[] => {
    const found = run.result.actuals.elements.find((one) => one.element === element);
    return found?.actual == null || found.standard === 0
      ? []
      : [{ run, standard: found.standard, actual: found.actual }];
  });
}

function workshopLesson(
  from: LearnedFrom,
  element: keyof typeof workshopRates,
  rate: (typeof workshopRates)[typeof element],
): readonly Lesson[] {
  const { workshop } = from.documents;
  if (workshop === null) return [];
  return rateLesson(from, notedOf(from, element), {
    subject: { of: 'minutes', element, blankId: null, position: null },
    place: { kind: 'workshop', id: workshop.id, path: ['rates', rate], before: workshop.body.rates[rate] },
    typical: rateDefinition(rate).typical,
  });
}

/** A mean over several blanks tells nothing of any of them: it is watched. */
function finishLessons(from: LearnedFrom): readonly Lesson[] {
  const noted = notedOf(from, 'finish');
  const blankOf = ({ run }: Noted) =>
    from.documents.blanks.find(({ id }) => id === onlyBlank(run.standard)) ?? null;
  return [...new Set(noted.map(blankOf))].flatMap((blank): readonly Lesson[] => {
    const own = noted.filter((one) => blankOf(one) === blank);
    const typical = blank && blankTypicals[blank.body.kind].finishMinutes.typical;
    if (blank === null || typical === null) return watchedOf(own, 'finish');
    const { id, body } = blank;
    return rateLesson(from, own, {
      subject: { of: 'minutes', element: 'finish', blankId: id, position: null },
      place: { kind: 'blank', id, path: ['finishMinutes'], before: body.finishMinutes },
      typical,
    });
  });
}

function onlyBlank({ works }: LearnedRun['standard']): string | null {
  const blankIds = works.flatMap(({ lines }) => lines.map(({ blankId }) => blankId));
  const [first] = blankIds;
  return first !== undefined && blankIds.every((one) => one === first) ? first : null;
}

interface HeldRate {
  readonly subject: Lesson['subject'];
  readonly place: Parameters<typeof measuredPlace>[0];
  /** What is reckoned with where the place holds nothing. */
  readonly typical: number;
}

function rateLesson(
  { taken, day }: LearnedFrom,
  noted: readonly Noted[],
  { subject, place, typical }: HeldRate,
): readonly Lesson[] {
  if (noted.length === 0) return [];
  const held = heldWhen(taken, place, place.before, typical);
  const { measured, spread } = shrunk(
    held.first,
    noted.map(({ run, standard, actual }) => (actual / standard) * held.of(run)),
  );
  return [
    {
      subject,
      ...{ standard: held.first, measured, spread, unit: 'min', upper: null, seen: null },
      ...{ observations: noted.length, runIds: noted.map(({ run }) => run.runId) },
      places: measuredPlace(place, measured, 'min', day, { count: noted.length }),
    },
  ];
}

/** Time at the presses is told by each print where the clock says which it was for. */
const watched = (from: LearnedFrom, element: WorkElement): readonly Lesson[] =>
  watchedOf(
    notedOf(from, element).filter(
      ({ run }) =>
        element !== 'presses' ||
        run.facts.hours.some(({ body }) => body.element === element && body.placementId === null),
    ),
    element,
  );

/** Told in minutes of the last of these runs. */
function watchedOf(noted: readonly Noted[], element: WorkElement): readonly Lesson[] {
  const standard = noted.at(-1)?.standard;
  if (standard === undefined) return [];
  const { measured, spread } = shrunk(
    1,
    noted.map((one) => one.actual / one.standard),
  );
  return [
    {
      subject: { of: 'minutes', element, blankId: null, position: null },
      ...{ standard, measured: measured * standard, unit: 'min', upper: null, seen: null },
      spread: spread === null ? null : spread * standard,
      ...{ observations: noted.length, runIds: noted.map(({ run }) => run.runId), places: [] },
    },
  ];
}
