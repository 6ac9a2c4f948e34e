import { notACopyWords } from '@/app/_words/store/copyFileWords';
import { recordReason } from '@/app/_words/store/recordWords';
import { approvedVersions } from '@/lib/artwork/approvedVersions';
import { sourceOf } from '@/lib/copies/archive/byteSource';
import type { Copy } from '@/lib/copies/copy';
import type { ReadCopy } from '@/lib/copies/copyReading';
import { readCopy } from '@/lib/copies/readCopy';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import { foldStock } from '@/lib/stock/foldStock';
import { onHand } from '@/lib/stock/onHand';
import { claimedName } from '@/lib/stored/claimedName';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import type { Entry } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import { bodiesOf, entriesOf } from './bodiesOf';
import { plainContext } from './plainContext';

export type CopyOfFile =
  | {
      readonly kind: 'copy';
      readonly copy: Copy;
      readonly workshop: Stored;
      /** Entries that count, those that only an old draft holds with them. */
      readonly inForce: readonly Entry[];
      /** The bytes of a file that came with it; null where it did not. */
      readonly fileOf: ReadCopy['fileOf'];
      /** Said where not all of it came out. */
      readonly note: string | null;
    }
  | { readonly kind: 'unusable'; readonly why: string };

/** @returns whether a file is meant to be a copy: an archive, or a text that says so at its beginning. */
export const isCopy = (bytes: Uint8Array): boolean =>
  /^PK|"pressminute-(copy|backup)"/.test(new TextDecoder('latin1').decode(bytes.subarray(0, 4096)));

/** What did not come of a file that cannot be used. */
type Nothing = 'Nothing was priced.' | 'Nothing was quoted.' | 'Nothing was planned.';

/** Reads a copy or a carried file for a command. */
export async function copyOfFile(bytes: Uint8Array, file: string, nothing: Nothing): Promise<CopyOfFile> {
  const reading = await readCopy(sourceOf(bytes), {
    kinds: { registry: kinds, paperKinds, entryKinds },
    pause: async () => undefined,
  });
  if (reading.state === 'notACopy') {
    const { why } = reading;
    if (why.code === 'newerFormat') {
      return unusable(`${file} was written by a newer Pressminute. Get that version. ${nothing}`);
    }
    return unusable(`${file} ${notACopyWords(why, { number: String })} ${nothing}`);
  }
  const { copy, fileOf } = reading;
  const workshop = copy.drafts.find(
    ({ id, deletedAt }) => id === kinds.workshop.needed && deletedAt === undefined,
  );
  const damaged = copy.unreadable.find(({ kind }) => kind === 'workshop');
  if (workshop === undefined && damaged !== undefined)
    return unusable(`${file}: its workshop cannot be used. ${recordReason(damaged, plainContext)}`);
  if (workshop === undefined)
    return unusable(`${file} holds no workshop, and nothing can be priced without one.`);
  const { found, of } = copy.lacks.records;
  const isWhole = of !== null && found >= of;
  return {
    kind: 'copy',
    copy,
    workshop,
    fileOf,
    inForce: entriesInForce([...copy.entries, ...[...copy.leftByDrafts.values()].flat()]),
    note: isWhole
      ? null
      : `${file} is damaged: ${found} of ${of ?? 'an unknown number of'} records came out of it.`,
  };
}

/** @returns what a job of a copy is priced from, as a request has it. */
export const requestOf = (
  { copy, workshop, inForce }: Extract<CopyOfFile, { readonly kind: 'copy' }>,
  job: Stored,
  asOf: string,
) => ({
  asOf,
  workshop: workshop.body,
  blanks: bodiesOf('blank', copy),
  artworks: bodiesOf('artwork', copy),
  job: job.body,
  onHand: onHand(
    foldStock([
      ...entriesOf('stockMove', inForce),
      ...entriesOf('stockTransfer', inForce),
      ...entriesOf('stockCount', inForce),
    ]),
  ),
  approvedVersions: approvedVersions(entriesOf('approval', inForce)),
});

/** @returns the live drafts of a kind. */
export const liveOf = (kind: keyof typeof kinds, { drafts }: Copy): readonly Stored[] =>
  drafts.filter((draft) => draft.kind === kind && draft.deletedAt === undefined);

/** The draft that is named, that was carried, or that is the only one of its kind. */
export function chosenDraft(
  kind: keyof typeof kinds,
  { of, ...copy }: Copy,
  named: string | null,
): Stored | null {
  const drafts = liveOf(kind, { of, ...copy });
  const carried = of !== 'everything' && of.kind === kind ? of.id : null;
  const wanted = named ?? carried ?? (drafts.length === 1 ? drafts[0]?.id : null);
  return drafts.find(({ id }) => id === wanted) ?? null;
}

/** @returns why none was chosen, with the names to choose from. */
export function whichDraft(
  kind: keyof typeof chosenBy,
  drafts: readonly Stored[],
  named: string | null,
): string {
  const { what, option, nothing } = chosenBy[kind];
  if (drafts.length === 0) return `holds no ${what}. ${nothing}`;
  const names = drafts.map((draft) => `${option} ${draft.id} (${claimedName(draft) ?? 'no name'})`);
  const why = named === null ? `holds ${drafts.length} ${what}s` : `holds no ${what} ${named}`;
  return `${why}: name one of them.\n${names.join('\n')}`;
}

// Helpers

const chosenBy = {
  job: { what: 'job', option: '--job', nothing: 'Nothing was priced.' },
  order: { what: 'order', option: '--order', nothing: 'Nothing was quoted.' },
  run: { what: 'run', option: '--run', nothing: 'Nothing was planned.' },
  stallDay: { what: 'stall day', option: '--day', nothing: 'Nothing was planned.' },
} as const satisfies Record<string, { what: string; option: string; nothing: Nothing }>;

const unusable = (why: string): CopyOfFile => ({ kind: 'unusable', why });
