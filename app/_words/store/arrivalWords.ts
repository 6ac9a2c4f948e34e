import type { Formatter } from '@/app/_words/formatter';
import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { ArrivalFate, ArrivalGroup, FatedDraft } from '@/lib/copies/arrivalGroups';
import { notesHere, type Recounted, recountedDoneWords } from './recountedWords';
import { kindWords } from './storedWords';

type Forms = readonly [one: string, many: string];

/** What becomes of drafts, after their number; of one and of several. */
const fateWords: Readonly<Record<ArrivalFate, Forms>> = {
  comesBack: ['comes back', 'come back'],
  new: ['is new here and comes in', 'are new here and come in'],
  updated: ['is newer in the copy and is taken', 'are newer in the copy and are taken'],
  merged: [
    'changed in both, in different places: both changes are kept',
    'changed in both, in different places: both changes are kept',
  ],
  beside: [
    'changed in both: the one of the copy comes beside yours',
    'changed in both: those of the copy come beside yours',
  ],
  replaced: ['makes way for the one of the copy', 'make way for those of the copy'],
  setBack: ['goes back to what the copy has', 'go back to what the copy has'],
  removed: ['goes, as it did where the copy was made', 'go, as they did where the copy was made'],
  newerHere: ['is newer here and stays', 'are newer here and stay'],
  onlyHere: ['is only here and stays', 'are only here and stay'],
  keptMine: ['stays as it is here', 'stay as they are here'],
  removedThere: [
    'was removed where the copy was made, and stays here',
    'were removed where the copy was made, and stay here',
  ],
  doubled: ['came in beside yours before, and both stay', 'came in beside yours before, and all stay'],
  leftOut: ['stays out', 'stay out'],
  same: ['is the same', 'are the same'],
};

/** The same as a promise, in the headline. */
const wouldWords: Readonly<Partial<Record<ArrivalFate, string>>> = {
  comesBack: 'would come back',
  new: 'would come in',
  updated: 'would be brought up to date',
  merged: 'would be put together from both',
  beside: 'would come in beside yours',
  replaced: 'would make way here',
  setBack: 'would go back to what the copy has',
  removed: 'would go here',
};

const pick = ([one, many]: Forms, count: number): string => (count === 1 ? one : many);

/** @returns what becomes of the drafts of a group, to be read after their number. */
export const groupWords = ({ fate, drafts }: ArrivalGroup): string => pick(fateWords[fate], drafts.length);

/** Drafts named one by one; the rest is counted. */
const MOST_NAMED = 3;

/** @returns the names of the drafts of a group, and when they were removed where that was one day. */
export function groupNames({ fate, drafts }: ArrivalGroup, dayOf: (at: number) => string): string {
  const named = drafts.slice(0, drafts.length === MOST_NAMED + 1 ? MOST_NAMED + 1 : MOST_NAMED);
  const more = drafts.length - named.length;
  const names = named.map(draftName).join(', ');
  const all = more === 0 ? names : `${names} and ${spelledNumber(more)} more`;
  const [removedOn, ...others] = new Set(
    drafts.flatMap(({ removedAt }) => (removedAt === null ? [] : [dayOf(removedAt)])),
  );
  return fate === 'comesBack' && removedOn !== undefined && others.length === 0
    ? `${all}: removed here on ${removedOn}`
    : all;
}

/** @returns what a draft is called in a list of names: jobs and lists by their name alone. */
export function draftName({ kind, name }: Pick<FatedDraft, 'kind' | 'name'>): string {
  if (kind === 'workshop') return 'your rates';
  const own = name ?? 'without a name';
  return (kind === 'job' || kind === 'priceList') && name !== null ? own : `${kindWords(kind)} ${own}`;
}

/** @returns drafts counted by what they are: “two jobs”, “one job and two blanks”, “seven things”. */
function thingsWords(drafts: readonly Pick<FatedDraft, 'kind'>[]): string {
  const counts = new Map<string, number>();
  for (const { kind } of drafts) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const words = [...counts].map(([kind, count]) => {
    if (kind === 'workshop') return 'your rates';
    return `${spelledNumber(count)} ${kindWords(kind)}${count === 1 ? '' : 's'}`;
  });
  if (words.length <= 2) return words.join(' and ');
  return `${spelledNumber(drafts.length)} things`;
}

/** The headline of a preview: the part in bold, and the rest of the sentence. */
export interface ArrivalHeadline {
  readonly bold: string;
  readonly rest: string;
}

interface Headlined extends Recounted {
  readonly groups: readonly ArrivalGroup[];
  readonly newPapers: number;
  readonly newEntries: number;
}

/** @returns what would come of a copy in one sentence: “Two jobs would come back, nothing here would go”. */
export function arrivalHeadline(headlined: Headlined): ArrivalHeadline {
  const { groups, newPapers, newEntries, noLongerCounting, countingAgain } = headlined;
  const parts = groups
    .filter(({ isChange }) => isChange)
    .map(({ fate, drafts }) => `${thingsWords(drafts)} ${wouldWords[fate] ?? ''}`);
  const isGoing = groups.some(({ fate }) => ['replaced', 'setBack', 'removed'].includes(fate));
  if (parts.length === 0 && (newPapers > 0 || newEntries > 0)) {
    parts.push(`${happenedWords({ newPapers, newEntries })} would come in`);
  }
  if (noLongerCounting > 0) parts.push(`${notesHere(noLongerCounting)} would no longer count`);
  if (countingAgain > 0) parts.push(`${notesHere(countingAgain)} would count again`);
  const [first, ...more] = parts;
  if (first !== undefined) {
    const others = more.map((part) => `${part}, `).join('');
    return {
      bold: `${withCapital(first)},`,
      rest: `${others}${isGoing || noLongerCounting > 0 ? 'all else here stays' : 'nothing here would go'}`,
    };
  }
  return { bold: 'All of it is here already,', rest: 'nothing would change' };
}

/** @returns papers and entries that come in, in words; empty where none do. */
export function happenedWords({
  newPapers,
  newEntries,
}: Pick<Headlined, 'newPapers' | 'newEntries'>): string {
  return [
    ...(newPapers > 0
      ? [`${spelledNumber(newPapers)} ${newPapers === 1 ? 'paper' : 'papers'} that went out`]
      : []),
    ...(newEntries > 0
      ? [`${spelledNumber(newEntries)} ${newEntries === 1 ? 'note' : 'notes'} of what happened`]
      : []),
  ].join(' and ');
}

/** @returns what the button says that takes it: “Bring the two back”. */
export function takeWords(groups: readonly ArrivalGroup[]): string {
  const changes = groups.filter(({ isChange }) => isChange);
  const count = changes.reduce((sum, { drafts }) => sum + drafts.length, 0);
  if (count === 0) return 'Bring them in';
  const which = count === 1 ? 'it' : `the ${spelledNumber(count)}`;
  const isBack = changes.every(({ fate }) => fate === 'comesBack');
  if (isBack) return `Bring ${which} back`;
  const isLater = changes.some(({ fate }) => fate !== 'comesBack' && fate !== 'new' && fate !== 'beside');
  return isLater ? `Take ${count === 1 ? 'it' : `the ${spelledNumber(count)}`} over` : `Bring ${which} in`;
}

/** @returns what is lost where the copy takes the place of everything: “loses four jobs”. */
export function lossWords(goes: readonly Pick<FatedDraft, 'kind'>[], older: number): string {
  const lost = goes.length === 0 ? null : `loses ${thingsWords(goes)}`;
  const back =
    older === 0
      ? null
      : `takes ${older === 1 ? 'one thing that is' : `${spelledNumber(older)} things that are`} newer here back to what the copy has`;
  const said = [lost, back].filter((part) => part !== null);
  return said.length === 0 ? 'loses nothing' : said.join(' and ');
}

/** Why a copy does not take the place of what is here unless the maker says so again. */
export const unsavedWords: Readonly<Record<'lacking' | 'failed', string>> = {
  failed:
    'What is here could not be saved as a copy first, so nothing was changed yet. Put in its place all the same, it can be taken back by Undo alone.',
  lacking:
    'The copy of what is here was saved, but lacks files that could not be read. Nothing was changed yet.',
};

/** @returns what becomes of one carried draft: “Ramblers Club shirts, with 2 blanks, is new here”. */
export function carriedHeadline(name: string, withIt: string, state: ArrivalFate): ArrivalHeadline {
  const bold = withIt === '' ? name : `${name}, with ${withIt},`;
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
  return { bold, rest: rest[state] ?? 'stays as it is here' };
}

/** @returns what hangs on a carried draft, counted by kind: “2 blanks and 3 pictures”. */
export function withWords(
  kinds: Readonly<Record<string, number>>,
  formatter: Pick<Formatter, 'count'>,
): string {
  return Object.entries(kinds)
    .filter(([, count]) => count > 0)
    .map(([kind, count]) =>
      kind === 'workshop'
        ? 'your rates'
        : formatter.count(count, kind === 'artwork' ? 'picture' : kindWords(kind)),
    )
    .join(', ')
    .replace(/, ([^,]*)$/, ' and $1');
}

/** @returns what was brought in, once it is here. */
export function takenWords(
  mode: 'beside' | 'replace',
  groups: readonly ArrivalGroup[],
  counts: Omit<Headlined, 'groups'>,
): string {
  if (mode === 'replace') return 'The copy is in place of what was here.';
  const done: Readonly<Partial<Record<ArrivalFate, Forms>>> = {
    comesBack: ['is back', 'are back'],
    new: ['came in', 'came in'],
    updated: ['is brought up to date', 'are brought up to date'],
    merged: ['is put together from both', 'are put together from both'],
    beside: ['came in beside yours', 'came in beside yours'],
    replaced: ['made way for the one of the copy', 'made way for those of the copy'],
    setBack: ['went back to what the copy has', 'went back to what the copy has'],
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
export const partedWords = (letter: string): string =>
  `This browser and the one that made the file are copies of each other and were giving the same numbers: papers numbered here bear the letter ${letter} from now on.`;
