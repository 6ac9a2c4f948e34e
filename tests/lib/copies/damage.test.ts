import { deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '@/tests/tools/cases';
import { aContent, archiveOf, badge, crest, read, readWhole } from './copyTools';

/** The local headers of a stored archive, read anew from PKWARE APPNOTE 6.3.10, 4.3.7: where each entry's bytes lie. */
const entriesOf = (bytes: Uint8Array) => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const entries: { name: string; from: number; to: number }[] = [];
  let at = 0;
  while (view.getUint32(at, true) === 0x04034b50) {
    const from = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(bytes.subarray(at + 30, at + 30 + view.getUint16(at + 26, true)));
    const to = from + view.getUint32(at + 18, true);
    entries.push({ name, from, to });
    at = to;
  }
  return entries;
};

/** Where each record's line lies in the archive, and each file. */
const placesIn = (bytes: Uint8Array) => {
  const [documents, ...files] = entriesOf(bytes);
  if (documents === undefined) throw new Error('no documents');
  const text = new TextDecoder().decode(bytes.subarray(documents.from, documents.to));
  let at = documents.from;
  const lines = text.split('\n').map((line) => {
    const from = at;
    const to = at + bytesIn(line);
    at = to + 1;
    return { line, from, to };
  });
  return { lines, files, documents };
};
const bytesIn = (text: string) => new TextEncoder().encode(text).length;
const idsIn = (line: string) => /^\{"check":"[^"]*","(?:draft|entry)":\{"id":"([^"]*)"/.exec(line)?.[1] ?? [];

const idsOf = (copy: { drafts: readonly { id: string }[]; entries: readonly { id: string }[] }) =>
  [...copy.drafts, ...copy.entries].map(({ id }) => id);

describe('a copy cut short at any byte', async () => {
  const bytes = await archiveOf();
  const { lines, files, documents } = placesIn(bytes);

  it('gives every whole record and every whole picture before the cut, and names the others', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: bytes.length - 1 }), async (cut) => {
        const reading = await read(bytes.slice(0, cut));
        const ids = lines
          .filter(({ from, line }) => from + bytesIn(line.replace(/,$/, '')) <= cut)
          .flatMap(({ line }) => idsIn(line));
        const [head] = lines;
        if (head === undefined || cut < head.to - 1) {
          expect(reading).toMatchObject({ state: 'notACopy' });
          return;
        }
        if (reading.state !== 'copy') throw new Error(`cut at ${cut}: ${JSON.stringify(reading.why)}`);
        const { copy } = reading;
        expect(idsOf(copy)).toEqual(ids);
        expect(copy.lacks.endsEarly).toBe(true);
        expect(copy.lacks.records).toEqual({ found: ids.length, of: 5 });
        const whole = files.filter(({ to }) => to <= cut).map(({ name }) => name.slice('files/'.length));
        expect(copy.files.map(({ sha256 }) => sha256).toSorted()).toEqual(whole.toSorted());
        const named = cut < documents.to ? copy.files.length + copy.lacks.files.length : 2;
        expect(copy.files.length + copy.lacks.files.length).toBe(named);
      }),
      cases(400),
    );
  });

  it('is a beginning of which nothing is whole where not even its first line is there', async () => {
    expect(await read(bytes.slice(0, 20))).toEqual({ state: 'notACopy', why: { code: 'nothingWhole' } });
    expect(await read(bytes.slice(0, 60))).toEqual({ state: 'notACopy', why: { code: 'nothingWhole' } });
  });
});

describe('a copy with one bit turned over', async () => {
  const bytes = await archiveOf();
  const { lines, files } = placesIn(bytes);

  it('gives everything but what that bit lies in', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 0, max: bytes.length - 1 }),
        fc.integer({ min: 0, max: 7 }),
        async (at, bit) => {
          const damaged = Uint8Array.from(bytes);
          damaged[at] = (damaged[at] ?? 0) ^ (1 << bit);
          const { copy } = await readWhole(damaged);
          // The line feed behind a line is of that line and of the next.
          const ids = lines
            .filter(({ from, to }) => at < from - 1 || at > to)
            .flatMap(({ line }) => idsIn(line));
          expect(idsOf(copy)).toEqual(expect.arrayContaining(ids));
          const sound = new Map(aContent().drafts.map((draft) => [draft.id, draft]));
          // What came out is what went in: nothing half right.
          expect(copy.drafts.filter((draft) => sound.has(draft.id))).toEqual(
            copy.drafts.map(({ id }) => sound.get(id)),
          );
          const whole = files
            .filter(({ from, to }) => at < from || at >= to)
            .map(({ name }) => name.slice('files/'.length));
          expect(copy.files.map(({ sha256 }) => sha256)).toEqual(expect.arrayContaining(whole));
          for (const { file } of [crest, badge]) {
            const isIn = copy.files.some(({ sha256 }) => sha256 === file.sha256);
            const isTold = copy.lacks.files.some(({ sha256 }) => sha256 === file.sha256);
            const isItsLine = lines.some(
              ({ line, from, to }) => line.includes(file.name) && at >= from - 1 && at <= to,
            );
            expect(isIn || isTold || isItsLine).toBe(true);
          }
        },
      ),
      cases(1_000),
    );
  });
});

describe('a copy that another program packed tighter', async () => {
  const bytes = await archiveOf();
  const [documents] = entriesOf(bytes);
  const text = bytes.subarray(documents?.from, documents?.to);
  const packed = deflateRawSync(text);
  const name = new TextEncoder().encode('documents.json');
  const head = new Uint8Array(30 + name.length);
  const view = new DataView(head.buffer);
  view.setUint32(0, 0x04034b50, true);
  // Sizes behind the bytes: bit 3, APPNOTE 4.4.4.
  view.setUint16(6, 8, true);
  view.setUint16(8, 8, true);
  view.setUint16(26, name.length, true);
  head.set(name, 30);
  const archive = Uint8Array.from([...head, ...packed]);

  it('gives what can be unpacked before a cut', async () => {
    expect(inflateRawSync(packed).equals(text)).toBe(true);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: head.length, max: archive.length }), async (cut) => {
        const reading = await read(archive.slice(0, cut));
        if (reading.state === 'notACopy') {
          expect(reading.why).toEqual({ code: 'nothingWhole' });
          return;
        }
        expect(aContent().drafts).toEqual(expect.arrayContaining([...reading.copy.drafts]));
        if (cut === archive.length) expect(reading.copy.drafts).toHaveLength(3);
      }),
      cases(200),
    );
  });
});
