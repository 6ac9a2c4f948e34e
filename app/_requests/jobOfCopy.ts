import { chosenDraft, copyOfFile, liveOf, requestOf, whichDraft } from './copyOfFile';

type CopiedJob =
  | { readonly kind: 'request'; readonly value: unknown; readonly note: string | null }
  | { readonly kind: 'unusable'; readonly why: string };

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
  const read = await copyOfFile(bytes, file, 'Nothing was priced.');
  if (read.kind === 'unusable') return read;
  const job = chosenDraft('job', read.copy, jobId);
  return job === null
    ? { kind: 'unusable', why: `${file} ${whichDraft('job', liveOf('job', read.copy), jobId)}` }
    : { kind: 'request', note: read.note, value: requestOf(read, job, today) };
}
