import type { Choice, MeetingState } from '@/lib/copies/arrival';
import type { Arriving } from './fateWords';

/** @returns how a draft that arrives stands to the one here. */
export const meetingWords = (it: Arriving): Readonly<Record<MeetingState, string>> => ({
  same: 'The same on both sides.',
  new: `Only in ${it}.`,
  comesBack: 'It was removed here.',
  removedThere: `It was removed where ${it} was made.`,
  newerThere: `It was changed where ${it} was made; what is here is what that started from.`,
  newerHere: `It was changed here; what ${it} has is what that started from.`,
  merged: 'It was changed on both sides, in different places.',
  clash: 'It was changed on both sides, or nobody can tell which is the newer.',
  doubled: `It was changed on both sides; the one of ${it} came in beside yours before.`,
});

const usual = (it: Arriving): Readonly<Record<Choice, string>> => ({
  mine: 'Keep mine',
  theirs: `Take ${it}’s`,
  both: 'Keep both',
});

/** Where a choice does something else than it says elsewhere. */
const special: Readonly<Partial<Record<MeetingState, Partial<Record<Choice, string>>>>> = {
  new: { mine: 'Leave it out', theirs: 'Bring it in' },
  comesBack: { mine: 'Leave it removed', theirs: 'Bring it back' },
  removedThere: { mine: 'Keep it', theirs: 'Remove it here too' },
  merged: { theirs: 'Put both changes together' },
};

/** @returns what a choice is called for a draft that stands so. */
export const choiceWords = (state: MeetingState, choice: Choice, it: Arriving): string =>
  special[state]?.[choice] ?? usual(it)[choice];
