import { shortNames } from '@/app/_words/findings/shortNames';
import { isStanding } from '@/shared/finding';
import { type CheckGroup, toSettle } from './checkGroups';
import type { AnswerWords } from './jobAnswerWords';

/**
 * What the checks come to: “Nothing stops it. 3 things to settle”, or the stop by its name.
 *
 * @param questions how many nobody has answered yet
 */
export function checkAnswerWords(groups: readonly CheckGroup[], questions: number): AnswerWords {
  const stops = groups.filter(({ finding }) => isStanding(finding));
  const passed = groups.filter(({ finding }) => finding.waivedBecause !== undefined).length;
  const count = toSettle(groups);
  const open = [
    ...(count === 0 ? [] : [`${counted(count, 'thing')} to settle`]),
    ...(questions === 0 ? [] : [counted(questions, 'question')]),
  ];
  const settle = open.length === 0 ? '' : ` ${open.join(', ')}`;
  if (stops.length > 0)
    return { strong: `${counted(stops.length, 'stop')}:`, rest: ` ${named(stops)}.${settle}` };
  const past = passed === 0 ? '' : ` ${counted(passed, 'stop')} passed with a reason.`;
  return { strong: 'Nothing stops it.', rest: `${past}${settle}` };
}

/** Notes in one line that names them: “6 notes: seam, sharpness, shape, proof”. */
export const notesWords = (notes: readonly CheckGroup[]): string =>
  `${counted(notes.length, 'note')}: ${named(notes)}`;

// Helpers

const named = (groups: readonly CheckGroup[]): string =>
  [...new Set(groups.map(({ finding }) => shortNames[finding.id]))].join(', ');

const counted = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;
