import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import {
  type ArrivalFate,
  type ArrivalGroup,
  arrivalGroups,
  type Choices,
  losing,
} from '@/lib/copies/arrivalGroups';
import { allCounted, type EntryCounts } from '@/lib/copies/entryCounts';
import { namesWords, thingsWords } from './draftNames';
import { entryWords } from './entryWords';
import {
  type Arriving,
  arrivingIn,
  type Forms,
  fateWords,
  onlyHereForms,
  pick,
  wouldWords,
} from './fateWords';
import { lostFiles, type Recounted, recountedDoneWords, unreadRecords } from './recountedWords';

/**
 * @param isReadWhole nothing of the copy is lost or kept unread: what it does not hold it never held
 * @returns what becomes of the drafts of a group, to be read after their number
 */
export const groupWords = (
  { fate, drafts }: Pick<ArrivalGroup, 'fate' | 'drafts'>,
  it: Arriving,
  isReadWhole: boolean,
): string => pick(fate === 'onlyHere' ? onlyHereForms(it, isReadWhole) : fateWords(it)[fate], drafts.length);

/** Drafts named one by one; the rest is counted. */
const MOST_NAMED = 3;

/** @returns the names of the drafts of a group, and when they were removed where that was one day. */
export function groupNames({ fate, drafts }: ArrivalGroup, dayOf: (at: number) => string): string {
  const all = namesWords(drafts, MOST_NAMED);
  const [removedOn, ...others] = new Set(
    drafts.flatMap(({ removedAt }) => (removedAt === null ? [] : [dayOf(removedAt)])),
  );
  return fate === 'comesBack' && removedOn !== undefined && others.length === 0
    ? `${all}: removed here on ${removedOn}`
    : all;
}

/** The headline of a preview: the part in bold, and the rest of the sentence. */
export interface ArrivalHeadline {
  readonly bold: string;
  readonly rest: string;
}

export const nothingChanges = 'nothing would change';

interface Headlined extends Recounted {
  readonly groups: readonly ArrivalGroup[];
  readonly newPapers: number;
  readonly newEntries: EntryCounts;
}

/** @returns what would come of a copy in one sentence: “Two jobs would come back, nothing here would go”. */
export function arrivalHeadline(headlined: Headlined, it: Arriving): ArrivalHeadline {
  const { groups } = headlined;
  const isUncounting = allCounted(headlined.noLongerCounting) > 0;
  const isGoing = groups.some(({ fate }) => losing.includes(fate));
  const [first, ...more] = [...draftsComing(groups, it), ...othersComing(headlined)];
  if (first !== undefined) {
    const others = more.map((part) => `${part}, `).join('');
    return {
      bold: `${withCapital(first)},`,
      rest: `${others}${isGoing || isUncounting ? 'all else here stays' : 'nothing here would go'}`,
    };
  }
  return { bold: 'All of it is here already,', rest: nothingChanges };
}

/** @returns papers and entries that come in, in words; empty where none do. */
export const happenedWords = ({
  newPapers,
  newEntries,
}: Pick<Headlined, 'newPapers' | 'newEntries'>): string => entryWords({ ...newEntries, issuing: newPapers });

/**
 * What the button says that takes it: “Bring the two back”. It counts whatever comes, as the rows above it do.
 *
 * @param happened how many papers and entries come in
 */
export function takeWords(groups: readonly ArrivalGroup[], happened: number): string {
  const changes = groups.filter(({ isChange }) => isChange);
  const drafts = changes.reduce((sum, group) => sum + group.drafts.length, 0);
  if (drafts === 0) return 'Bring them in';
  const count = drafts + happened;
  const which = count === 1 ? 'it' : `the ${spelledNumber(count)}`;
  const isBack = happened === 0 && changes.every(({ fate }) => fate === 'comesBack');
  if (isBack) return `Bring ${which} back`;
  const isLater = changes.some(({ fate }) => fate !== 'comesBack' && fate !== 'new' && fate !== 'beside');
  return isLater ? `Take ${which} over` : `Bring ${which} in`;
}

/** Why a copy does not take the place of what is here unless the maker says so again. */
export const unsavedWords: Readonly<Record<'lacking' | 'failed', string>> = {
  failed:
    'What is here could not be saved as a copy first, so nothing was changed yet. Put in its place all the same, it can be taken back by Undo alone.',
  lacking:
    'The copy of what is here was saved, but lacks files that could not be read. Nothing was changed yet.',
};

interface CarriedDraft {
  readonly name: string;
  /** What hangs on it, counted; empty where nothing does. */
  readonly withIt: string;
  readonly fate: ArrivalFate;
}

/**
 * @returns what becomes of one carried draft, and of what came with it where that is not told by the draft itself:
 *   “Ramblers Club shirts, with 2 blanks, is new here”, “Fair prices is the same here already; one paper that went out
 *   would come in”
 */
export function carriedHeadline(
  { name, withIt, fate }: CarriedDraft,
  headlined: Headlined,
  it: Arriving,
): ArrivalHeadline {
  const isComing = headlined.groups.some((group) => group.fate === fate && group.isChange);
  const beside = [...(isComing ? [] : draftsComing(headlined.groups, it)), ...othersComing(headlined)];
  // What hangs on a draft that stays is not the same because the draft is.
  const bold = withIt === '' || (!isComing && beside.length > 0) ? name : `${name}, with ${withIt},`;
  const rest: Readonly<Partial<Record<ArrivalFate, string>>> = {
    comesBack: 'was removed here and would come back',
    new: 'is new here',
    updated: 'is newer in the file and would be brought up to date',
    merged: 'has changed on both devices, in different places: both changes would be kept',
    beside: 'has changed on both devices: both would be kept',
    replaced: 'would make way for the one in the file',
    setBack: 'would go back to what the file has',
    removed: 'was removed on the other device and would go here',
    removedThere: 'was removed on the other device and stays here',
    newerHere: 'is newer here and stays',
    doubled: 'came in beside yours before; both stay',
    same: 'is the same here already',
  };
  return { bold, rest: [rest[fate] ?? 'stays as it is here', beside.join(', ')].filter(Boolean).join('; ') };
}

interface Taken {
  readonly mode: 'beside' | 'replace';
  readonly plan: ArrivalPlan;
  readonly chosen: Choices;
  /** Of this device from now on; null where it keeps its own. */
  readonly newLetter: string | null;
}

/** @returns what was brought in, once it is here. */
export function toldWords({ mode, plan, chosen, newLetter }: Taken): string {
  const { copy, counts } = plan;
  const taken = takenWords(mode, arrivalGroups(plan, chosen), counts, arrivingIn(copy.of));
  return newLetter === null ? taken : `${taken} ${partedWords(newLetter)}`;
}

// Helpers

function takenWords(
  mode: 'beside' | 'replace',
  groups: readonly ArrivalGroup[],
  counts: Omit<Headlined, 'groups'>,
  it: Arriving,
): string {
  if (mode === 'replace') return 'The copy is in place of what was here.';
  const done: Readonly<Partial<Record<ArrivalFate, Forms>>> = {
    comesBack: ['is back', 'are back'],
    new: ['came in', 'came in'],
    updated: ['is brought up to date', 'are brought up to date'],
    merged: ['is put together from both', 'are put together from both'],
    beside: ['came in beside yours', 'came in beside yours'],
    replaced: [`made way for the one of ${it}`, `made way for those of ${it}`],
    setBack: [`went back to what ${it} has`, `went back to what ${it} has`],
    removed: ['is removed', 'are removed'],
  };
  const parts = groups.flatMap(({ fate, drafts }) => {
    const forms = done[fate];
    return forms === undefined ? [] : [`${thingsWords(drafts)} ${pick(forms, drafts.length)}`];
  });
  const happened = happenedWords(counts);
  const said = [...parts, ...(happened === '' ? [] : [`${happened} came in`]), ...recountedDoneWords(counts)];
  return `${withCapital(said.join(', '))}.`;
}

/** @returns what is told where this browser profile and the one the file came from turn out to be copies of each other. */
const partedWords = (letter: string): string =>
  `This browser and the one that made the file are copies of each other and were giving the same numbers: papers numbered here bear the letter ${letter} from now on.`;

const draftsComing = (groups: readonly ArrivalGroup[], it: Arriving): readonly string[] =>
  groups
    .filter(({ isChange }) => isChange)
    .map(({ fate, drafts }) => `${thingsWords(drafts)} ${wouldWords(it)[fate] ?? ''}`);

/** What would come in, or count otherwise, beside drafts. */
function othersComing(headlined: Omit<Headlined, 'groups'>): readonly string[] {
  const { noLongerCounting, countingAgain, filesBack, unread } = headlined;
  const happened = happenedWords(headlined);
  return [
    ...(happened === '' ? [] : [`${happened} would come in`]),
    ...(allCounted(noLongerCounting) > 0
      ? [`${entryWords(noLongerCounting)} would no longer count here`]
      : []),
    ...(allCounted(countingAgain) > 0 ? [`${entryWords(countingAgain)} would count here again`] : []),
    ...(filesBack > 0 ? [`${lostFiles(filesBack)} would be here again`] : []),
    ...(unread > 0 ? [`${unreadRecords(unread)} would be kept unread`] : []),
  ];
}
