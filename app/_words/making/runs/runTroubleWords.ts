import { clockWords } from '@/app/_words/clockWords';
import type { Formatter } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { spelledNumber } from '@/app/_words/spelledNumber';
import type { BlocksOverlap, MoreHeatings, RunPlanNote, RunTrouble } from '@/lib/making/runPlan';
import { weekdayWords } from './runAnswerWords';

interface TroubleWords {
  /** What is wrong, and what it would cause. */
  readonly sentence: string;
  /** How it is mended. */
  readonly mend: string;
}

/** @returns how often the press is heated up: “two heatings-up”. */
export const heatingsWords = (heatings: number): string =>
  heatings === 1 ? 'one heating-up' : `${spelledNumber(heatings)} heatings-up`;

/** What keeps a run from the clock, each with the way out. */
export function runTroubleWords(
  trouble: RunTrouble,
  formatter: Formatter,
  locale: string,
  whyOf: (trouble: Extract<RunTrouble, { kind: 'jobStopped' }>) => string,
): TroubleWords {
  const minutes = (many: number) => minutesWords(many, locale);
  switch (trouble.kind) {
    case 'noWorks':
      return { sentence: 'Nothing is made yet.', mend: 'Add a job under What is made.' };
    case 'jobMissing':
      return {
        sentence: 'A job of this run is not on this device, so nobody knows what it takes.',
        mend: 'Bring it here with a copy, or take it out.',
      };
    case 'jobTwice':
      return { sentence: 'A job stands in this run twice: it would be made twice.', mend: 'Take one out.' };
    case 'jobStopped':
      return {
        sentence: `${trouble.name} cannot be made yet. ${whyOf(trouble)}`,
        mend: 'Mend it in the job.',
      };
    case 'noPieces':
      return {
        sentence: `${trouble.name} has no pieces: there is nothing to press.`,
        mend: 'Type its sizes in the job, or take it out.',
      };
    case 'noBlocks':
      return {
        sentence: 'Nobody has said when the bench is free, so no day can be told.',
        mend: 'Say it in the workshop, or give this run blocks of its own.',
      };
    case 'noBlock':
      return {
        sentence: `Even one piece takes ${minutes(trouble.neededMinutes)} with warm-up and clean-down, and your longest block is ${minutes(trouble.longestMinutes)}.`,
        mend: 'Give it a longer block.',
      };
    case 'moreHeatings':
      return {
        sentence: `Planned with ${heatingsWords(trouble.needed)}: all of it in one takes ${minutes(trouble.neededMinutes)}${trouble.accepted === 1 ? '' : `, the longest of ${spelledNumber(trouble.accepted)} ${minutes(trouble.acceptedMinutes)}`}, and your longest block is ${minutes(trouble.longestMinutes)}. ${moreWords(trouble.more, formatter, locale)}`,
        mend: 'Accept it, or give it a longer block.',
      };
    case 'blockEmpty': {
      const at = clockWords(trouble.fromMinute, locale);
      return {
        sentence: `The block of ${weekdayWords(trouble.day, locale)} ends when it begins, at ${at}: nobody can know whether it holds nothing or a whole day.`,
        mend: 'Say when it ends, or remove it.',
      };
    }
    case 'blocksOverlap':
      return { sentence: overlapWords(trouble, locale), mend: 'Change the day or the times of one.' };
    case 'blocksEnd':
      return trouble.isOwn
        ? {
            sentence: 'The blocks of this run end before the work does.',
            mend: 'Add a block, or follow the week again.',
          }
        : {
            sentence: 'Two years of your free hours do not hold it.',
            mend: 'Free more hours in the workshop.',
          };
    default:
      return trouble satisfies never;
  }
}

/** @returns what further heatings-up take, which no price of the jobs holds. */
export function moreWords(more: MoreHeatings, formatter: Formatter, locale: string): string {
  const takes = `${minutesWords(more.minutes, locale)} and ${formatter.number(more.inkMl, 1)} mL of ink`;
  return `The ${heatingsWords(more.heatings)} beyond what is priced ${more.heatings === 1 ? 'takes' : 'take'} ${takes}: ${formatter.money(more.cost)}, ${formatter.money(more.inkCost)} of it ink.`;
}

/** @returns what of a clock is not as a reader would think. */
export function runNoteWords(note: RunPlanNote, locale: string): string {
  switch (note.kind) {
    case 'past':
      return `${weekdayWords(note.day, locale)} is past.`;
    case 'printedBefore':
      return note.isPast
        ? `The sheets are taken as printed on ${weekdayWords(note.day, locale)}.`
        : `The sheets are printed on ${weekdayWords(note.day, locale)}, outside the run’s own blocks.`;
    case 'sheetsTaken':
      return 'Too little time is left to print before the run’s own blocks: the sheets are taken as printed.';
    case 'blocksOverlap':
      return overlapWords(note, locale);
    case 'notDelivered':
      return `The way to the customer, ${minutesWords(note.minutes, locale)}, finds no room in the run’s own blocks.`;
    case 'fewerHeatings':
      return `Made together the press is heated up ${note.heatings === 1 ? 'once' : `${spelledNumber(note.heatings)} times`}; the prices hold ${spelledNumber(note.priced)}.`;
    default:
      return note satisfies never;
  }
}

// Helpers

const overlapWords = ({ day, other }: BlocksOverlap, locale: string): string =>
  `The block of ${weekdayWords(day, locale)} overlaps ${day === other ? 'another of that day' : `the block of ${weekdayWords(other, locale)}`}: what they share counts once.`;
