import type { Formatter } from '@/app/_words/formatter';
import type { Position } from '@/shared/schemas/blank';
import type { JobInput } from '@/shared/schemas/request';
import { wantedPieces } from '@/shared/wantedPieces';
import { pieceWords } from './pieceWords';

/** A sentence whose first part is the key figure. */
export interface AnswerWords {
  readonly strong: string;
  readonly rest: string;
}

/** @returns what the pieces of a job are called: by their kind where all are of one, else pieces. */
export function pieceOfJob({ job, blanks }: JobInput): ReturnType<typeof pieceWords> {
  const words = job.lines.map(({ blankId }) => pieceWords(blanks[blankId]));
  const [first] = words;
  return first !== undefined && words.every(({ one }) => one === first.one) ? first : pieceWords(undefined);
}

/** What a job is: “37 white shirts, printed on back and chest”. */
export function jobAnswerWords(input: JobInput, formatter: Formatter): AnswerWords {
  const { job, blanks } = input;
  const piece = pieceOfJob(input);
  const pieces = wantedPieces(job.lines);
  const places = placesInWords(job.lines.flatMap(({ placements }) => placements.map((one) => one.position)));
  if (pieces === 0) return { strong: 'No pieces yet', rest: `: type how many ${piece.many} of each size` };
  const colours = new Set(job.lines.map(({ blankId }) => blanks[blankId]?.colour.name));
  const [colour] = colours;
  // Colours are chosen by name from a list, where they begin in capitals as every choice does.
  const coloured = colours.size === 1 && colour !== undefined ? `${lowered(colour)} ` : '';
  const counted = formatter.count(pieces, `${coloured}${piece.one}`, `${coloured}${piece.many}`);
  const lines = job.lines.length > 1 ? ` in ${job.lines.length} products` : '';
  return { strong: `${counted}${lines}`, rest: `, printed ${places}` };
}

// Helpers

const placeWords: Readonly<Record<Position, string>> = {
  front: 'front',
  back: 'back',
  leftChest: 'chest',
  rightChest: 'chest',
  leftSleeve: 'sleeve',
  rightSleeve: 'sleeve',
  wrap: 'all round',
  face: 'face',
};

function placesInWords(positions: readonly Position[]): string {
  const flat = [...new Set(positions.filter((one) => one !== 'wrap').map((one) => placeWords[one]))];
  const round = positions.includes('wrap') ? [placeWords.wrap] : [];
  const on = flat.length === 0 ? [] : [`on ${new Intl.ListFormat('en').format(flat)}`];
  return [...round, ...on].join(' and ');
}

/** “White” amid a sentence is white; “NAVY” or a name of two capitals stays as typed. */
const lowered = (name: string): string =>
  /^\p{Lu}\p{Ll}+( \p{Ll}+)*$/u.test(name) ? name.toLowerCase() : name;
