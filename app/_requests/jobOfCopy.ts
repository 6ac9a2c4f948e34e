import { notACopyWords } from '@/app/_words/store/copyFileWords';
import { approvedVersions } from '@/lib/artwork/approvedVersions';
import { sourceOf } from '@/lib/copies/archive/byteSource';
import type { Copy } from '@/lib/copies/copy';
import { readCopy } from '@/lib/copies/readCopy';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import { foldStock } from '@/lib/stock/foldStock';
import { onHand } from '@/lib/stock/onHand';
import { claimedName } from '@/lib/stored/claimedName';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import type { Stored } from '@/shared/schemas/stored';
import { bodiesOf, entriesOf } from './bodiesOf';

type CopiedJob =
  | { readonly kind: 'request'; readonly value: unknown; readonly note: string | null }
  | { readonly kind: 'unusable'; readonly why: string };

/** @returns whether a file is meant to be a copy: an archive, or a text that says so at its beginning. */
export const isCopy = (bytes: Uint8Array): boolean =>
  /^PK|"pressminute-(copy|backup)"/.test(new TextDecoder('latin1').decode(bytes.subarray(0, 4096)));

/**
 * What is priced of a copy or of a carried job: the one that was carried, the only one, or the one that is named.
 *
 * @param jobId null where none is named
 * @param today YYYY-MM-DD
 */
export async function jobOfCopy(
  bytes: Uint8Array,
  { file, jobId, today }: { readonly file: string; readonly jobId: string | null; readonly today: string },
): Promise<CopiedJob> {
  const reading = await readCopy(sourceOf(bytes), {
    kinds: { registry: kinds, paperKinds, entryKinds },
    pause: async () => undefined,
  });
  if (reading.state === 'notACopy') {
    const { why } = reading;
    if (why.code === 'newerFormat') {
      return unusable(`${file} was written by a newer Pressminute. Get that version, then price it again.`);
    }
    return unusable(`${file} ${notACopyWords(why, { number: String })} Nothing was priced.`);
  }
  const { copy } = reading;
  const jobs = copy.drafts.filter(({ kind, deletedAt }) => kind === 'job' && deletedAt === undefined);
  const workshop = copy.drafts.find(
    ({ id, deletedAt }) => id === kinds.workshop.needed && deletedAt === undefined,
  );
  const job = chosen(jobs, copy, jobId);
  if (job === null) return unusable(`${file} ${whichJob(jobs, jobId)}`);
  if (workshop === undefined)
    return unusable(`${file} holds no workshop, and nothing can be priced without one.`);
  const inForce = entriesInForce([...copy.entries, ...[...copy.leftByDrafts.values()].flat()]);
  const { found, of } = copy.lacks.records;
  const isWhole = of !== null && found >= of;
  return {
    kind: 'request',
    note: isWhole
      ? null
      : `${file} is damaged: ${found} of ${of ?? 'an unknown number of'} records came out of it.`,
    value: {
      asOf: today,
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
    },
  };
}

function chosen(jobs: readonly Stored[], { of }: Copy, jobId: string | null): Stored | null {
  const carried = of !== 'everything' && of.kind === 'job' ? of.id : null;
  const wanted = jobId ?? carried ?? (jobs.length === 1 ? jobs[0]?.id : null);
  return jobs.find(({ id }) => id === wanted) ?? null;
}

function whichJob(jobs: readonly Stored[], jobId: string | null): string {
  if (jobs.length === 0) return 'holds no job. Nothing was priced.';
  const names = jobs.map((job) => `--job ${job.id} (${claimedName(job) ?? 'no name'})`);
  const why = jobId === null ? `holds ${jobs.length} jobs` : `holds no job ${jobId}`;
  return `${why}: name one of them.\n${names.join('\n')}`;
}

const unusable = (why: string): CopiedJob => ({ kind: 'unusable', why });
