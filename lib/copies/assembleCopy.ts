import type { Copy, CopyLacks, NotACopy } from './copy';
import { COPY_FORMAT, COPY_FORMAT_VERSION, type CopyHead, copyHeadSchema } from './copySchemas';
import type { CopyText } from './readCopyText';

/** @returns what a text says of the copy; null where its first line is not whole, a reason where it is not ours to read. */
export function headOf({ head }: CopyText): CopyHead | NotACopy | null {
  if (head === null) return null;
  const { format, formatVersion } = head;
  if (format === COPY_FORMAT && typeof formatVersion === 'number' && formatVersion > COPY_FORMAT_VERSION) {
    return { code: 'newerFormat', formatVersion, known: COPY_FORMAT_VERSION };
  }
  const { what, madeAt, device, counts } = head;
  const parsed = copyHeadSchema.safeParse({ format, formatVersion, what, madeAt, device, counts });
  return parsed.success ? parsed.data : null;
}

/** Without its head a copy is taken for one of everything, from no known time and device. */
export const headFacts = (
  head: CopyHead | null,
): Pick<Copy, 'formatVersion' | 'of' | 'madeAt' | 'device'> => ({
  formatVersion: COPY_FORMAT_VERSION,
  of: head?.what ?? 'everything',
  madeAt: head?.madeAt ?? null,
  device: head?.device ?? null,
});

/** Lines that name files are not records of their own. */
export function recordsFound({ records }: CopyText, head: CopyHead | null): CopyLacks['records'] {
  const found = records.filter(({ nature }) => nature !== 'file').length;
  if (head === null) return { found, of: null };
  const { drafts, papers, entries, unreadable } = head.counts;
  return { found, of: drafts + papers + entries + unreadable };
}
