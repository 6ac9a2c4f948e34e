import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { FatedDraft } from '@/lib/copies/arrivalGroups';
import { happenedWords } from './arrivalWords';
import { namesWords, thingsWords } from './draftNames';

type Named = Pick<FatedDraft, 'kind' | 'name'>;

/** What would be lost if a copy took the place of everything. */
export interface Loss {
  readonly goes: readonly Named[];
  /** What changed here and would go back to what the copy has. */
  readonly goesBack: readonly Named[];
  /** Papers and notes that count here and are not in the copy. */
  readonly papers: number;
  readonly notes: number;
}

/** Names of one clause; the rest is counted. */
const MOST_NAMED = 20;

/** @returns the loss in one clause, after “it”: “loses four jobs”. */
export function lossWords({ goes, goesBack, papers, notes }: Loss): string {
  const said = [
    ...(goes.length === 0 ? [] : [`loses ${thingsWords(goes)}`]),
    ...(goesBack.length === 0 ? [] : [backWords(goesBack)]),
    ...(papers + notes === 0 ? [] : [`leaves ${uncounted(papers, notes)} uncounted`]),
  ];
  return said.length === 0 ? 'loses nothing' : said.join(' and ');
}

/** @returns the loss a sentence each, with the names of what it is about. */
export function lossSentences({ goes, goesBack, papers, notes }: Loss): readonly string[] {
  const happened = uncounted(papers, notes);
  const said = [
    ...(goes.length === 0 ? [] : [`It loses ${thingsWords(goes)}: ${namesWords(goes, MOST_NAMED)}.`]),
    ...(goesBack.length === 0 ? [] : [`It ${backWords(goesBack)}: ${namesWords(goesBack, MOST_NAMED)}.`]),
    ...(happened === ''
      ? []
      : [
          `${withCapital(happened)} that ${papers + notes === 1 ? 'is' : 'are'} not in it would no longer count.`,
        ]),
  ];
  return said.length === 0 ? ['It loses nothing.'] : said;
}

// Helpers

const backWords = (goesBack: readonly Named[]): string =>
  `takes ${spelledNumber(goesBack.length)} ${goesBack.length === 1 ? 'thing' : 'things'} that changed here back to what the copy has`;

const uncounted = (newPapers: number, newEntries: number): string => happenedWords({ newPapers, newEntries });
