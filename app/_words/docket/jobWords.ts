import type { Formatter } from '@/app/_words/formatter';
import { usableLocale } from '@/app/_words/usableLocale';
import type { JobInput } from '@/shared/schemas/request';
import { wantedPieces } from '@/shared/wantedPieces';
import { pieceWords } from './pieceWords';

/** More names than this are counted instead of told. */
const MOST_NAMES = 3;

/** @returns names in one phrase: “Back picture and Chest badge”. */
export function namesInWords(names: readonly string[]): string {
  const told = names.slice(0, names.length > MOST_NAMES ? MOST_NAMES - 1 : MOST_NAMES);
  const rest = names.length - told.length;
  return new Intl.ListFormat('en').format(rest > 0 ? [...told, `${rest} more`] : told);
}

/** @returns a day with its weekday, and with its year where that is not the present one. */
export function wantedDayWords(day: string, asOf: string, locale: string): string {
  const moment = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(moment.getTime())) return day;
  const year = day.slice(0, 4) === asOf.slice(0, 4) ? {} : ({ year: 'numeric' } as const);
  return new Intl.DateTimeFormat(usableLocale(locale), {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
    ...year,
  }).format(moment);
}

/** One line that says what a job is: pieces, blanks, prints and the day it is wanted. */
export function jobInWords({ job, blanks, workshop, asOf }: JobInput, formatter: Formatter): string {
  const words = new Set(job.lines.map(({ blankId }) => pieceWords(blanks[blankId]).many));
  const piece = words.size === 1 ? pieceWords(blanks[job.lines[0]?.blankId ?? '']) : pieceWords(undefined);
  const distinct = (names: readonly (string | undefined)[]) => [
    ...new Set(names.filter((name) => name !== undefined)),
  ];
  return [
    formatter.count(wantedPieces(job.lines), piece.one, piece.many),
    namesInWords(distinct(job.lines.map(({ blankId }) => blanks[blankId]?.name))),
    namesInWords(distinct(job.lines.flatMap(({ placements }) => placements.map(({ name }) => name)))),
    job.wantedOn === null ? '' : `wanted ${wantedDayWords(job.wantedOn, asOf, workshop.locale)}`,
  ]
    .filter((part) => part !== '')
    .join(' · ');
}
