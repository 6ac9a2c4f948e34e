import { expect, it } from 'vitest';
import { sourceOf } from '@/lib/copies/archive/byteSource';
import { planArrival } from '@/lib/copies/planArrival';
import { readCopy } from '@/lib/copies/readCopy';
import { BACKUP_FORMAT } from '@/shared/schemas/stored';
import { aStoredJob, smallRegistry } from '@/tests/lib/stored/smallRegistry';
import { appKinds, archiveOf, readWhole } from './copyTools';
import { emptyDevice, holding } from './modelDevice';

/* A page may be held for 50 ms. What lies between two turns given to it is told by its size, not by a clock. */

it('holds one draft against the one here between two turns of the page', async () => {
  const drafts = ['job-1', 'job-2', 'job-3'].map((id) => aStoredJob({ id }));
  const { copy } = await readWhole(await archiveOf());
  const here = { ...holding(emptyDevice('phone000', 'M'), { drafts }).here, files: new Set<string>() };
  let turns = 0;
  const pause = async () => {
    turns += 1;
  };
  await planArrival(here, copy, { registry: smallRegistry, pause });
  expect(turns).toBe(copy.drafts.length);
});

it('unpacks a picture of an old backup, and works its hash out, in pieces', async () => {
  const content = new Uint8Array(1_500_000).fill(7);
  const files = [{ id: 'p', name: 'p.png', base64: Buffer.from(content).toString('base64') }];
  const text = JSON.stringify({
    ...{ format: BACKUP_FORMAT, formatVersion: 1, exportedAt: 1 },
    ...{ documents: [], unreadable: [], files },
  });
  let turns = 0;
  const pause = async () => {
    turns += 1;
  };
  const read = await readCopy(sourceOf(new TextEncoder().encode(text)), { kinds: appKinds, pause });
  if (read.state !== 'copy') throw new Error(JSON.stringify(read.why));
  // 2,000,000 characters in slices of 262,144, then 1,500,000 bytes in slices of 131,072.
  expect(turns).toBeGreaterThanOrEqual(8 + 12);
  const [file] = read.copy.files;
  expect(await read.fileOf(file?.sha256 ?? '')).toEqual(content);
});
