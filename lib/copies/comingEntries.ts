import type { Entry } from '@/shared/schemas/happened';
import type { ArrivalChoice, Choice, DraftMeeting } from './arrival';
import type { Copy } from './copy';

/**
 * The entries that come in. Those that only an old draft holds come with that draft: where the one here stays, it has
 * let go of its own already, and what was counted or corrected since would be counted by both. Of a clash neither comes
 * from the other, so they stay out there as well.
 */
export const comingEntries = (
  { entries, leftByDrafts }: Pick<Copy, 'entries' | 'leftByDrafts'>,
  chosen: readonly { readonly meeting: DraftMeeting; readonly choice: Choice }[],
  mode: ArrivalChoice['mode'],
): readonly Entry[] => [
  ...entries,
  ...(mode === 'replace'
    ? [...leftByDrafts.values()].flat()
    : chosen.flatMap(({ meeting: { id, state }, choice }) =>
        choice === 'theirs' && comesWhole.has(state) ? (leftByDrafts.get(id) ?? []) : [],
      )),
];

const comesWhole: ReadonlySet<DraftMeeting['state']> = new Set(['new', 'comesBack', 'newerThere']);
