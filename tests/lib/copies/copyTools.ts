import { sourceOf } from '@/lib/copies/archive/byteSource';
import type { CopyReading } from '@/lib/copies/copyReading';
import type { CopyContent } from '@/lib/copies/copyText';
import { readCopy } from '@/lib/copies/readCopy';
import { writeCopy } from '@/lib/copies/writeCopy';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import type { StoreKinds } from '@/lib/stored/registry';
import { sha256OfBytes } from '@/lib/stored/sha256';
import type { Entry } from '@/shared/schemas/happened';
import { aStoredJob, smallRegistry } from '@/tests/lib/stored/smallRegistry';

export const smallKinds: StoreKinds = { registry: smallRegistry, paperKinds, entryKinds };
export const appKinds: StoreKinds = { registry: kinds, paperKinds, entryKinds };

export const noPause = async (): Promise<void> => undefined;

export const joined = async (pieces: AsyncIterable<Uint8Array>): Promise<Uint8Array<ArrayBuffer>> => {
  const all: number[] = [];
  for await (const piece of pieces) all.push(...piece);
  return Uint8Array.from(all);
};

/** A picture as far as a copy is concerned: bytes with a hash. */
export const aFile = (text: string) => {
  const content = new TextEncoder().encode(text);
  return { content, file: { sha256: sha256OfBytes(content), name: `${text}.png`, bytes: content.length } };
};

export const crest = aFile('crest');
export const badge = aFile('badge');

export const anEntry = (count: number, device = 'devicea1'): Entry => ({
  id: `${device}-${count}`,
  kind: 'inkRefill',
  version: 1,
  device,
  count,
  at: 1000 + count,
  body: { day: '2026-11-20', mL: 70 },
});

/** Three jobs, two entries, two pictures. */
export const aContent = (change: Partial<CopyContent> = {}): CopyContent => ({
  what: 'everything',
  madeAt: Date.UTC(2026, 10, 26, 9, 30),
  device: { id: 'devicea1', letter: 'K' },
  drafts: ['job-1', 'job-2', 'job-3'].map((id, at) =>
    aStoredJob({
      id,
      body: {
        name: `Order ${at + 1} — café`,
        lines: [{ id: 'shirts', quantity: at + 1 }],
        ...(at < 2 ? { fileId: (at === 0 ? crest : badge).file.sha256 } : {}),
      },
    }),
  ),
  hashes: new Map(),
  papers: [],
  entries: [anEntry(1), anEntry(2)],
  unreadable: [],
  files: [crest.file, badge.file],
  ...change,
});

const contents = new Map([crest, badge].map(({ content, file }) => [file.sha256, content]));

export const archiveOf = (
  content: CopyContent = aContent(),
  readFile: (sha256: string) => Promise<Uint8Array | null> = async (sha256) => contents.get(sha256) ?? null,
): Promise<Uint8Array<ArrayBuffer>> =>
  joined(writeCopy(content, { readFile, leftOut: () => undefined, pause: noPause }));

export const read = (bytes: Uint8Array, storeKinds: StoreKinds = smallKinds): Promise<CopyReading> =>
  readCopy(sourceOf(bytes), { kinds: storeKinds, pause: noPause });

export const readWhole = async (bytes: Uint8Array, storeKinds: StoreKinds = smallKinds) => {
  const reading = await read(bytes, storeKinds);
  if (reading.state !== 'copy') throw new Error(`no copy: ${JSON.stringify(reading.why)}`);
  return reading;
};
