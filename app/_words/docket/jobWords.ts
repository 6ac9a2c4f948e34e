import { dayFormat } from '@/app/_words/dayFormat';
import type { Formatter } from '@/app/_words/formatter';
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
  return dayFormat(locale, { weekday: 'long', day: 'numeric', month: 'long', ...year }).format(moment);
}

/** One line beneath the name of a job: whom it is for and when it is wanted, or what it is while nobody has said. */
export function jobInWords({ job, blanks, workshop, asOf }: JobInput, formatter: Formatter): string {
  const piece = onePiece(job.lines.map(({ blankId }) => pieceWords(blanks[blankId])));
  const customer = job.customer.trim();
  return [
    ...(customer === '' ? [] : [`for ${customer}`]),
    ...(job.wantedOn === null ? [] : [`wanted ${wantedDayWords(job.wantedOn, asOf, workshop.locale)}`]),
    ...(customer === '' && job.wantedOn === null
      ? [
          `${formatter.count(wantedPieces(job.lines), piece.one, piece.many)} made to ${job.madeFor === 'stock' ? 'stock' : 'order'}`,
        ]
      : []),
  ].join(', ');
}

/** The word that all pieces of a job have in common. */
function onePiece(words: readonly ReturnType<typeof pieceWords>[]): ReturnType<typeof pieceWords> {
  const [first] = words;
  return first !== undefined && words.every(({ many }) => many === first.many)
    ? first
    : pieceWords(undefined);
}
