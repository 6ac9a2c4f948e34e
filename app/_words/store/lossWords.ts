import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { FatedDraft } from '@/lib/copies/arrivalGroups';
import { allCounted, type EntryCounts } from '@/lib/copies/entryCounts';
import { namesWords, thingsWords } from './draftNames';
import { entryWords } from './entryWords';

type Named = Pick<FatedDraft, 'kind' | 'name'>;

/** What would be lost if a copy took the place of everything. */
export interface Loss {
  readonly goes: readonly Named[];
  /** What changed here and would go back to what the copy has. */
  readonly goesBack: readonly Named[];
  /** What counts here and is not in the copy; papers by the entry that issued them. */
  readonly uncounted: EntryCounts;
}

/** Names of one clause; the rest is counted. */
const MOST_NAMED = 20;

/** @returns the loss in short: “It loses four jobs. One paper that went out would no longer count.” */
export function lossWords({ goes, goesBack, uncounted }: Loss): string {
  const drafts = [
    ...(goes.length === 0 ? [] : [`loses ${thingsWords(goes)}`]),
    ...(goesBack.length === 0 ? [] : [backWords(goesBack)]),
  ];
  const said = [
    ...(drafts.length === 0 ? [] : [`It ${drafts.join(' and ')}.`]),
    ...(allCounted(uncounted) === 0 ? [] : [`${withCapital(entryWords(uncounted))} would no longer count.`]),
  ];
  return said.length === 0 ? 'It loses nothing.' : said.join(' ');
}

/** @returns the loss a sentence each, with the names of what it is about. */
export function lossSentences({ goes, goesBack, uncounted }: Loss): readonly string[] {
  const happened = allCounted(uncounted);
  const said = [
    ...(goes.length === 0 ? [] : [`It loses ${thingsWords(goes)}: ${namesWords(goes, MOST_NAMED)}.`]),
    ...(goesBack.length === 0 ? [] : [`It ${backWords(goesBack)}: ${namesWords(goesBack, MOST_NAMED)}.`]),
    ...(happened === 0
      ? []
      : [
          `${withCapital(entryWords(uncounted))} that ${happened === 1 ? 'is' : 'are'} not in it would no longer count.`,
        ]),
  ];
  return said.length === 0 ? ['It loses nothing.'] : said;
}

// Helpers

const backWords = (goesBack: readonly Named[]): string =>
  `takes ${spelledNumber(goesBack.length)} ${goesBack.length === 1 ? 'thing' : 'things'} that changed here back to what the copy has`;
