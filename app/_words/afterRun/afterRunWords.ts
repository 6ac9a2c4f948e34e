import type { Formatter } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { withCapital } from '@/app/_words/spelledNumber';
import type { Lesson } from '@/lib/learning/lesson';
import type { ActualTrouble } from '@/lib/variances/actualTroubles';
import type { WorkElement } from '@/shared/schemas/runEvents';

const elements: Readonly<Record<WorkElement, string>> = {
  enquiry: 'enquiry and quote',
  art: 'art',
  proof: 'proof',
  setUp: 'set-up',
  sheets: 'sheets',
  presses: 'pressing',
  finish: 'finishing',
  pack: 'packing',
  cleanDown: 'cleaning down',
  deliver: 'delivery',
  buying: 'buying',
  selling: 'selling',
  office: 'office',
  other: 'other work',
  rest: 'all the rest, not told apart',
};

/** @returns what an element of work is called; one from a later build is called as it is kept. */
export const elementWords = (element: string): string =>
  Object.hasOwn(elements, element) ? withCapital(elements[element as WorkElement]) : element;

/** What the maker may choose time for. */
export const elementChoices = Object.entries(elements).map(([value, label]) => ({
  value: value as WorkElement,
  label: withCapital(label),
}));

/** What is wrong, what it causes, how to mend it. */
export function troubleWords(trouble: ActualTrouble, locale: string): string {
  switch (trouble.what) {
    case 'moreLostThanStarted':
      return `${trouble.lost} pieces are noted as lost, but only ${trouble.started} went into the first press. The share of scrap is too high with them: take back what was noted twice.`;
    case 'moreCameThanUsed':
      return `${trouble.came} pieces came of ${trouble.used} blanks. The blanks look cheaper than they were: correct how many were used.`;
    case 'moreCameThanStarted':
      return `${trouble.came} pieces came out, but only ${trouble.started} are noted at the first press. As many blanks count as used as came out: type how many it were if that is wrong.`;
    case 'otherCurrency':
      return `An amount is noted in ${trouble.noted}, but this run is reckoned in ${trouble.run}. It counts for nothing: type it again in ${trouble.run}.`;
    case 'noTime':
      return 'A time of 0 min is noted. It makes that work look free: take it back, or type how long it took.';
    case 'wholeNight':
      return `The clock ran for ${minutesWords(trouble.minutes, locale)} in one go. It counts as work and lowers your pay an hour: take it back and type how long it took if it was left running.`;
    case 'noneUsed':
      return `No ${trouble.of} are noted as used. The run looks cheaper than it was: correct how many there were.`;
    default:
      return trouble satisfies never;
  }
}

/** Names of what a lesson is about, as the documents have them. */
export interface LessonNames {
  readonly blank: (id: string) => string;
  readonly press: (id: string) => string;
  readonly sheet: (id: string) => string;
  readonly place: (position: string) => string;
}

export function lessonName({ subject }: Pick<Lesson, 'subject'>, names: LessonNames): string {
  switch (subject.of) {
    case 'scrap':
      return `Scrap, ${names.place(subject.position)} of ${names.blank(subject.blankId)}, ${names.press(subject.pressId)}`;
    case 'blankFault':
      return `Faulty ${names.blank(subject.blankId)}`;
    case 'sheetReject':
      return 'Sheets not pressed';
    case 'blankPrice':
      return `Price of ${names.blank(subject.blankId)}, ${subject.size}`;
    case 'sheetPrice':
      return `Price of ${names.sheet(subject.sheetId)}`;
    case 'consumablePrice':
      return 'Price of what is used up';
    case 'minutes':
      return subject.position === null
        ? elementWords(subject.element)
        : `${elementWords(subject.element)}, ${names.place(subject.position)}, minutes a piece`;
    case 'ink':
      return 'Ink of the last run';
    case 'sizeMix':
      return 'Mix of sizes';
    default:
      return subject satisfies never;
  }
}

/** “4.1 % measured, 3.5 % assumed; 2 in 41, most likely under 6.9 %” */
export function lessonWords(lesson: Lesson, formatter: Formatter): string {
  const { unit, standard, measured, observations, spread, upper, seen } = lesson;
  const written = (value: number): string => {
    if (unit === 'share') return `${formatter.number(value * 100, 2)} %`;
    return unit === 'money' ? formatter.money(value) : `${formatter.number(value, 2)} ${unit}`;
  };
  if (unit === 'money') return `${written(measured)} was paid, ${written(standard)} is reckoned with.`;
  const of =
    unit === 'share'
      ? `${seen ?? 0} in ${observations}; with 90 % no more than ${written(upper ?? 0)}`
      : `${formatter.count(observations, 'run')}${spread === null ? '' : `, spread ${written(spread)}`}`;
  return `${written(measured)} measured, ${written(standard)} assumed (${of}).`;
}
