import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { kinds } from '@/lib/kinds/kinds';
import { fileIdsIn } from '@/lib/stored/fileIds';
import { appKinds, read, readWhole } from './copyTools';

const saved = () => readFile('tests/fixtures/stored/backupBeforeEntries.json');
const asBytes = (value: unknown) => new TextEncoder().encode(JSON.stringify(value));

describe('a copy as they were before', () => {
  it('comes out as every copy does: its pictures under their hashes, what left its documents beside them', async () => {
    const { copy, fileOf } = await readWhole(await saved(), appKinds);
    expect(copy).toMatchObject({
      formatVersion: 1,
      of: 'everything',
      device: null,
      unreadable: [{ id: 'torn-mat' }],
    });
    expect(copy.lacks).toEqual({ endsEarly: false, records: { found: 12, of: 12 }, files: [], refused: [] });
    expect(
      copy.drafts.every(({ kind, version }) => version === kinds[kind as keyof typeof kinds].version),
    ).toBe(true);
    // Two pictures of the same bytes are one file.
    expect(copy.files).toHaveLength(1);
    const named = [...fileIdsIn(copy.drafts)];
    expect(named.toSorted()).toEqual(copy.files.map(({ sha256 }) => sha256).toSorted());
    for (const { sha256, bytes } of copy.files) expect((await fileOf(sha256))?.length).toBe(bytes);
    expect(copy.entries.length).toBeGreaterThan(0);
    expect((await readWhole(await saved(), appKinds)).copy.entries).toEqual(copy.entries);
  });

  it('is read though an editor put the mark of its encoding before it', async () => {
    const marked = new TextEncoder().encode(`\uFEFF${new TextDecoder().decode(await saved())}`);
    expect((await readWhole(marked, appKinds)).copy.lacks.records).toEqual({ found: 12, of: 12 });
  });

  it('gives what is whole of it where a picture is damaged or a record is of a newer shape', async () => {
    const before: { documents: { id: string; version: number }[]; files: object[] } = JSON.parse(
      new TextDecoder().decode(await saved()),
    );
    const changed = {
      ...before,
      documents: before.documents.map((document) =>
        document.id === 'club-order' ? { ...document, version: 99 } : document,
      ),
      files: before.files.map((file, at) => (at === 0 ? { ...file, base64: '$$$' } : file)),
    };
    const { copy } = await readWhole(asBytes(changed), appKinds);
    expect(copy.drafts).toHaveLength(10);
    expect(copy.unreadable).toMatchObject([
      { id: 'club-order', findings: [{ code: 'newerVersion' }] },
      { id: 'torn-mat', findings: [{ code: 'bodyInvalid' }] },
    ]);
    expect(copy.lacks.files).toMatchObject([{ name: 'hill.png', why: 'damaged' }]);
  });

  it('is told where it was cut short, or a newer build wrote it', async () => {
    const bytes = await saved();
    expect(await read(bytes.subarray(0, 9000))).toEqual({ state: 'notACopy', why: { code: 'nothingWhole' } });
    expect(await read(asBytes({ format: 'pressminute-backup', formatVersion: 2 }))).toEqual({
      state: 'notACopy',
      why: { code: 'newerFormat', formatVersion: 2, known: 1 },
    });
  });
});
