import { type FindingWords, findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import type { Finding } from '@/shared/finding';
import type { Job } from '@/shared/schemas/job';

/** Findings that say the same, told once. */
export interface CheckGroup {
  /** The first of them, by whose place the group leads to a field. */
  readonly finding: Finding;
  readonly words: FindingWords;
  readonly all: readonly Finding[];
  /** Names of the lines they speak of, where there are several. */
  readonly lines: readonly string[];
}

/**
 * Groups findings by what they say, in the order of their first.
 *
 * @param job names the lines
 */
export function checkGroups(
  findings: readonly Finding[],
  job: Pick<Job, 'lines'>,
  context: TextContext,
): readonly CheckGroup[] {
  const groups = new Map<string, { readonly words: FindingWords; readonly all: Finding[] }>();
  for (const finding of findings) {
    const words = findingWords(finding, context);
    const key = JSON.stringify([finding.id, finding.severity, finding.waivedBecause ?? null, words]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { words, all: [finding] });
    else group.all.push(finding);
  }
  return [...groups.values()].flatMap(({ words, all }) => {
    const [finding] = all;
    const ids = new Set(all.map(({ where }) => where.lineId));
    const lines = job.lines.filter(({ id }) => ids.has(id)).map(({ name }) => name);
    return finding === undefined ? [] : [{ finding, words, all, lines: lines.length > 1 ? lines : [] }];
  });
}

/** @returns how many risks of the job wait for the maker, besides stops. */
export const toSettle = (groups: readonly CheckGroup[]): number =>
  groups.filter(({ finding }) => finding.severity === 'caution').length;
