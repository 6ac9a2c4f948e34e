import { spelledNumber } from '@/app/_words/spelledNumber';
import type { FatedDraft } from '@/lib/copies/arrivalGroups';
import { kindWords } from './storedWords';

type Named = Pick<FatedDraft, 'kind' | 'name'>;

/** Kinds whose name says what it is. */
const plainKinds: ReadonlySet<string> = new Set([
  'job',
  'priceList',
  'order',
  'customer',
  'stallDay',
  'shop',
  'run',
  'supplier',
]);

/** @returns what a draft is called where it stands alone: jobs and lists by their name alone. */
export function draftName({ kind, name }: Named): string {
  if (kind === 'workshop') return 'your rates';
  const own = name ?? 'without a name';
  return plainKinds.has(kind) && name !== null ? own : `${kindWords(kind)} ${own}`;
}

/**
 * Names in one list: each kind once before its own, or no kind at all where all are jobs.
 *
 * @example namesWords(drafts, 3) // => 'artwork Club crest, jobs Club shirts, Fair mugs and 12 more'
 */
export function namesWords(drafts: readonly Named[], most: number): string {
  const told = drafts.slice(0, drafts.length === most + 1 ? most + 1 : most);
  const more = drafts.length - told.length;
  const kinds = [...new Set(told.map(({ kind }) => kind))];
  const isPlain = kinds.every((kind) => kind === 'job');
  const names = kinds.map((kind) => {
    if (kind === 'workshop') return 'your rates';
    const own = told.filter((draft) => draft.kind === kind).map(({ name }) => name ?? 'one without a name');
    return isPlain ? own.join(', ') : `${kindWords(kind)}${own.length === 1 ? '' : 's'} ${own.join(', ')}`;
  });
  return more === 0 ? names.join(', ') : `${names.join(', ')} and ${spelledNumber(more)} more`;
}

/** @returns drafts counted by what they are: “two jobs”, “one job and two blanks”, “seven things”. */
export function thingsWords(drafts: readonly Pick<FatedDraft, 'kind'>[]): string {
  const counts = new Map<string, number>();
  for (const { kind } of drafts) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const words = [...counts].map(([kind, count]) => {
    if (kind === 'workshop') return 'your rates';
    return `${spelledNumber(count)} ${kindWords(kind)}${count === 1 ? '' : 's'}`;
  });
  if (words.length <= 2) return words.join(' and ');
  return `${spelledNumber(drafts.length)} things`;
}
