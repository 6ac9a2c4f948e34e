import { strFromU8 } from 'fflate';
import { isPlainObject } from '@/lib/merging/sameValue';
import { fromBase64 } from '@/lib/stored/fromBase64';
import type { StoreKinds } from '@/lib/stored/registry';
import { sha256InSlices } from '@/lib/stored/sha256InSlices';
import { withFileIds } from '@/lib/stored/withFileIds';
import { BACKUP_FORMAT, instantSchema } from '@/shared/schemas/stored';
import { z } from '@/shared/schemas/z';
import type { ByteSource } from './archive/byteSource';
import type { CopyFile, LackingFile } from './copy';
import type { CopyReading } from './copyReading';
import type { CopyRecord } from './copyRecords';
import { parsedJson } from './parsedJson';
import { readRecords } from './readRecords';

const FORMER_VERSION = 1;
/** Browsers hold text of some 500 million characters. */
const MOST_FORMER_BYTES = 500_000_000;

/** A copy as it was before: one text with its pictures in it. Its records are judged one by one. */
const formerSchema = z.strictObject({
  format: z.literal(BACKUP_FORMAT),
  formatVersion: z.literal(FORMER_VERSION),
  exportedAt: instantSchema,
  documents: z.array(z.unknown()),
  unreadable: z.array(z.unknown()).default([]),
  files: z
    .array(z.strictObject({ id: z.string(), name: z.string().min(1).max(200), base64: z.string() }))
    .default([]),
});

/**
 * @param start the first bytes of the source, as text
 * @returns null where it is none of these
 */
export async function readFormerCopy(
  source: ByteSource,
  start: string,
  { kinds, pause }: { readonly kinds: StoreKinds; readonly pause: () => Promise<void> },
): Promise<CopyReading | null> {
  if (!start.includes(`"${BACKUP_FORMAT}"`)) return null;
  if (source.size > MOST_FORMER_BYTES) {
    return { state: 'notACopy', why: { code: 'tooLarge', bytes: source.size, most: MOST_FORMER_BYTES } };
  }
  const value = parsedJson(strFromU8(await source.read(0, source.size)));
  if (
    isPlainObject(value) &&
    typeof value.formatVersion === 'number' &&
    value.formatVersion > FORMER_VERSION
  ) {
    const { formatVersion } = value;
    return { state: 'notACopy', why: { code: 'newerFormat', formatVersion, known: FORMER_VERSION } };
  }
  const parsed = formerSchema.safeParse(value);
  // Cut short it is no JSON, and nothing tells its records apart.
  if (!parsed.success) return { state: 'notACopy', why: { code: 'nothingWhole' } };
  const { documents, unreadable, exportedAt } = parsed.data;
  const { contents, files, lacking, hashOf } = await unpackedFiles(parsed.data.files, pause);
  const records = [
    ...documents.map((raw): CopyRecord => ({ nature: 'draft', raw: withFileIds(raw, hashOf), ...bare })),
    ...unreadable.map(
      (raw): CopyRecord => ({ nature: 'unreadable', raw: withFileIds(raw, hashOf), ...bare }),
    ),
  ];
  return {
    state: 'copy',
    copy: {
      formatVersion: FORMER_VERSION,
      of: 'everything',
      madeAt: exportedAt,
      device: null,
      madeOn: null,
      ...(await readRecords(records, kinds, pause)),
      files,
      lacks: {
        endsEarly: false,
        records: { found: records.length, of: records.length },
        files: lacking,
        refused: [],
      },
    },
    fileOf: async (sha256) => contents.get(sha256) ?? null,
  };
}

const bare = { hashes: [], isChecked: true } as const;

async function unpackedFiles(
  packed: readonly { readonly id: string; readonly name: string; readonly base64: string }[],
  pause: () => Promise<void>,
) {
  const contents = new Map<string, Uint8Array<ArrayBuffer>>();
  const files = new Map<string, CopyFile>();
  const lacking: LackingFile[] = [];
  const hashOf = new Map<string, string>();
  for (const { id, name, base64 } of packed) {
    const content = await fromBase64(base64, pause);
    if (content === null) lacking.push({ sha256: '', name, why: 'damaged' });
    else {
      const sha256 = await sha256InSlices(content, pause);
      contents.set(sha256, content);
      files.set(sha256, { sha256, name, bytes: content.length });
      hashOf.set(id, sha256);
    }
    await pause();
  }
  return { contents, files: [...files.values()], lacking, hashOf };
}
