import { elementName } from '@/app/_words/elementNames';
import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import { faultNames } from '@/app/_words/press/faultWords';
import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { Lesson } from '@/lib/learning/lesson';
import type { SortedLessons } from '@/lib/learning/sortedLessons';
import type { LearnedSubject } from '@/shared/schemas/making/learnedEvents';

/** Names of what a lesson is about, as the documents have them. */
export interface LessonNames {
  readonly blank: (id: string) => string;
  readonly press: (id: string) => string;
  readonly sheet: (id: string) => string;
  readonly place: (position: string) => string;
}

/** @returns what a lesson is called; sizes of one blank that are told together go by the blank */
export function lessonName(subject: LearnedSubject, names: LessonNames): string {
  switch (subject.of) {
    case 'scrap':
      return `Scrap, ${names.place(subject.position)} of ${names.blank(subject.blankId)}, ${names.press(subject.pressId)}`;
    case 'blankFault':
      return `Faulty ${names.blank(subject.blankId)}`;
    case 'sheetReject':
      return 'Sheets not pressed';
    case 'blankPrice':
      return `Price of ${names.blank(subject.blankId)}`;
    case 'sheetPrice':
      return `Price of ${names.sheet(subject.sheetId)}`;
    case 'consumablePrice':
      return 'Price of what is used up';
    case 'minutes':
      return minutesName(subject, names);
    case 'inkPrice':
      return 'Price of ink';
    case 'ink':
      return 'Ink of the last run';
    case 'sizeMix':
      return `Mix of sizes of ${names.blank(subject.blankId)}`;
    default:
      return subject satisfies never;
  }
}

function minutesName(
  { element, blankId, position }: Extract<LearnedSubject, { of: 'minutes' }>,
  names: LessonNames,
): string {
  const name = elementName(element);
  if (position !== null) return `${name}, ${names.place(position)}, minutes a piece`;
  if (blankId !== null) return `${name}, ${names.blank(blankId)}, minutes a piece`;
  return element === 'sheets' ? `${name}, minutes a sheet` : name;
}

/** “S, M, L and XL 4.60 is now 4.72 USD; 2XL 6.10 is now 6.22 USD”, sizes that moved alike together. */
export function paidWords(lessons: readonly Lesson[], formatter: Formatter): string {
  const alike = new Map<string, string[]>();
  for (const { subject, standard, measured } of lessons) {
    const moved = `${formatter.money(standard)} is now ${formatter.money(measured)}`;
    const size = subject.of === 'blankPrice' ? [subject.size] : [];
    alike.set(moved, [...(alike.get(moved) ?? []), ...size]);
  }
  return [...alike]
    .map(([moved, sizes]) => (sizes.length === 0 ? moved : `${listed(sizes)}: ${moved}`))
    .join('; ');
}

/** “S 11.5 % (12), M 25.3 % (26); what was assumed in brackets; 37 pieces, spread up to 4.9 %.” */
function sizesWords(sizes: NonNullable<Lesson['sizes']>, pieces: number, formatter: Formatter): string {
  const written = (share: number) => formatter.number(share * 100, 1);
  const each = sizes.map(
    ({ size, standard, measured }) => `${size} ${written(measured)} % (${written(standard)})`,
  );
  const spread = written(Math.max(...sizes.map((one) => one.spread)));
  return `${each.join(', ')}; what was assumed in brackets; ${formatter.count(pieces, 'piece')}, spread up to ${spread} %.`;
}

/** “4.12 %, 3.5 % was assumed; 2 in 41, with 90 % no more than 6.91 %.” */
export function movedWords(lesson: Lesson, formatter: Formatter): string {
  if (lesson.sizes !== undefined) return sizesWords(lesson.sizes, lesson.observations, formatter);
  const { unit, standard, measured, observations, spread, upper, seen } = lesson;
  const written = (value: number): string =>
    unit === 'share' ? `${formatter.number(value * 100, 2)} %` : `${formatter.number(value, 2)} ${unit}`;
  const spreads = spread === null ? '' : `, spread ${written(spread)}`;
  const of =
    unit === 'share'
      ? `${seen ?? 0} in ${observations}, with 90 % no more than ${written(upper ?? 0)}${spreads}`
      : `${formatter.count(observations, 'run')}${spreads}`;
  const parts = (lesson.faults ?? []).map(
    ({ fault, share }) =>
      `${written(share)} ${fault === null ? 'without a cause' : faultNames[fault].toLowerCase()}`,
  );
  const made = parts.length === 0 ? '' : ` Of it ${listed(parts)}.`;
  return `${written(measured)}, ${written(standard)} was assumed; ${of}.${made}`;
}

/** “Two prices change; five figures are watched”. */
export function lessonsAnswer({ paid, moved, same }: SortedLessons): {
  readonly key: string;
  readonly after: string;
} {
  const many = (count: number, one: string, more: string) =>
    count === 1 ? `one ${one}` : `${spelledNumber(count)} ${more}`;
  const changes = many(paid.length, 'price changes', 'prices change');
  const watched = many(moved.length, 'figure is watched', 'figures are watched');
  if (paid.length > 0) return { key: withCapital(changes), after: moved.length > 0 ? `; ${watched}` : '' };
  if (moved.length > 0) return { key: withCapital(watched), after: '; no price changes' };
  return { key: same.length > 0 ? 'Nothing changes' : 'Nothing yet', after: '' };
}

/** What the section of lessons says that hangs on no figure. */
export const lessonTable = {
  heading: 'What runs teach',
  nothing: 'Note pieces, times and what things cost.',
  take: 'Take it over',
  back: 'Take back',
  onlyWatched: 'Watched only: no open job or rate holds it.',
  noStall: 'Watched only: stall days to come have it, or none brings it in a range of its own.',
  same: (figures: string) => `${figures} as assumed`,
  inkFrom: 'How much ink a print takes is learned from the',
  inkRecord: 'record of refills',
  older: (count: number) => `Taken over before (${count})`,
} as const;
