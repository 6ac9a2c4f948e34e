import { unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { aContent, aFile, anEntry, archiveOf, badge, crest, read, readWhole } from './copyTools';

const text = (value: string) => new TextEncoder().encode(value);
const whole = { endsEarly: false, records: { found: 5, of: 5 }, files: [], refused: [] };

describe('a copy', () => {
  it('comes out as it went in', async () => {
    const content = aContent();
    const { copy, fileOf } = await readWhole(await archiveOf(content));
    expect(copy).toMatchObject({
      formatVersion: 2,
      of: 'everything',
      madeAt: content.madeAt,
      device: { id: 'devicea1', letter: 'K' },
      drafts: content.drafts,
      entries: content.entries,
      lacks: whole,
    });
    expect(copy.files).toEqual([crest.file, badge.file]);
    expect(await fileOf(badge.file.sha256)).toEqual(badge.content);
  });

  it('is read by an archive program that knows nothing of it, and its text is JSON', async () => {
    const entries = unzipSync(await archiveOf());
    expect(Object.keys(entries)).toEqual([
      'documents.json',
      `files/${crest.file.sha256}`,
      `files/${badge.file.sha256}`,
    ]);
    const documents: unknown = JSON.parse(new TextDecoder().decode(entries['documents.json']));
    expect(documents).toMatchObject({
      format: 'pressminute-copy',
      formatVersion: 2,
      drafts: [{ draft: { id: 'job-1' } }, { draft: { id: 'job-2' } }, { draft: { id: 'job-3' } }],
    });
  });

  it('can be unpacked and packed again, in a folder, by a program that packs tighter', async () => {
    const entries = Object.entries(unzipSync(await archiveOf())).map(([name, bytes]) => [
      `copy/${name}`,
      bytes,
    ]);
    const again = zipSync({ ...Object.fromEntries(entries), '__MACOSX/copy/._documents.json': text('x') });
    const { copy } = await readWhole(again);
    expect(copy.drafts).toHaveLength(3);
    expect(copy.lacks).toEqual(whole);
  });

  it('can be laid out anew by an editor', async () => {
    const { 'documents.json': json, ...files } = unzipSync(await archiveOf());
    const value: unknown = JSON.parse(new TextDecoder().decode(json));
    for (const indent of [2, 0]) {
      const again = zipSync({ ...files, 'documents.json': text(JSON.stringify(value, null, indent)) });
      expect((await readWhole(again)).copy).toMatchObject({ drafts: [{}, {}, {}], lacks: whole });
    }
  });

  it('can be read from its text alone, and then lacks its pictures by name', async () => {
    const { 'documents.json': json } = unzipSync(await archiveOf());
    const { copy } = await readWhole(json ?? text(''));
    expect(copy.drafts).toHaveLength(3);
    expect(copy.lacks.files).toEqual([
      { sha256: crest.file.sha256, name: 'crest.png', why: 'missing' },
      { sha256: badge.file.sha256, name: 'badge.png', why: 'missing' },
    ]);
  });

  it('is read from its text though an editor put the mark of its encoding before it', async () => {
    const saved = unzipSync(await archiveOf())['documents.json'] ?? new Uint8Array();
    const lines = `\uFEFF${new TextDecoder().decode(saved).replaceAll('\n', '\r\n')}`;
    expect((await readWhole(text(lines))).copy).toMatchObject({
      madeAt: aContent().madeAt,
      lacks: { endsEarly: false, records: whole.records },
    });
  });

  it('keeps records of a newer shape as they are, and says so', async () => {
    const newer = { ...anEntry(3), version: 2, body: { much: 'more' } };
    const { copy } = await readWhole(await archiveOf(aContent({ entries: [anEntry(1), newer] })));
    expect(copy.entries).toHaveLength(1);
    expect(copy.unreadable).toMatchObject([
      { id: 'devicea1-3', raw: newer, findings: [{ code: 'newerVersion', version: 2, known: 1 }] },
    ]);
  });

  it('keeps the first of two records with one id and sets the other aside', async () => {
    const [job] = aContent().drafts;
    if (job === undefined) throw new Error('no job');
    const other = { ...job, body: { name: 'Other', lines: [] } };
    const { copy } = await readWhole(await archiveOf(aContent({ drafts: [job, other] })));
    expect(copy.drafts).toEqual([job]);
    expect(copy.unreadable).toMatchObject([{ id: 'job-1', raw: other }]);
  });
});

describe('a file that is no copy', () => {
  const cases: readonly (readonly [string, Uint8Array, string])[] = [
    ['nothing', new Uint8Array(0), 'empty'],
    ['an archive of something else', zipSync({ 'word/document.xml': text('<w/>') }), 'otherZip'],
    [
      'an archive whose documents are another program’s',
      zipSync({ 'documents.json': text('{"a":1}') }),
      'otherZip',
    ],
    ['other JSON', text('{"name":"package"}'), 'otherJson'],
    ['a list in JSON', text('[1,2]'), 'otherJson'],
    // PNG signature, ISO/IEC 15948.
    ['a picture', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0), 'picture'],
    ['a drawing', text('<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg"/>'), 'picture'],
    ['a PDF', text('%PDF-1.7\n'), 'pdf'],
    ['plain text', text('Dear maker'), 'other'],
  ];
  it.each(cases)('is told apart: %s', async (_, bytes, looksLike) => {
    expect(await read(bytes)).toEqual({ state: 'notACopy', why: { code: 'notOurs', looksLike } });
  });

  it('is told apart where it is locked with a password', async () => {
    const bytes = zipSync({ 'documents.json': text('{}') }, { level: 0 });
    const view = new DataView(bytes.buffer, bytes.byteOffset);
    // Bit 0 of the flags, in the local and the central header: APPNOTE 4.4.4.
    view.setUint16(6, view.getUint16(6, true) | 1, true);
    const central = bytes.length - 22 - (46 + 'documents.json'.length);
    view.setUint16(central + 8, view.getUint16(central + 8, true) | 1, true);
    expect(await read(bytes)).toMatchObject({ why: { code: 'notOurs', looksLike: 'encryptedZip' } });
  });

  it('is told apart where a newer build wrote it in a way of its own', async () => {
    const bytes = zipSync({ 'documents.json': text('{"format":"pressminute-copy","formatVersion":3}') });
    expect(await read(bytes)).toEqual({
      state: 'notACopy',
      why: { code: 'newerFormat', formatVersion: 3, known: 2 },
    });
  });
});

describe('a copy that somebody meddled with', () => {
  it.each([
    ['../../x', 'climbs'],
    ['/etc/x', 'climbs'],
    ['C:x', 'climbs'],
    ['files\\..\\x', 'climbs'],
    ['files/__proto__', 'climbs'],
    ['notes.txt', 'notOurs'],
  ])('leaves %s where it is and names it', async (name, why) => {
    const bytes = zipSync({ ...unzipSync(await archiveOf()), [name]: text('x') });
    const { copy } = await readWhole(bytes);
    expect(copy.lacks).toEqual({ ...whole, refused: [{ name, why }] });
  });

  it('takes one of two entries of one name and names it', async () => {
    const name = `files/${crest.file.sha256}`;
    // The name has as many letters as that of the crest, which it takes on.
    const bytes = zipSync(
      { ...unzipSync(await archiveOf()), [`files/${'z'.repeat(64)}`]: text('other') },
      { level: 0 },
    );
    const latin = Buffer.from(bytes)
      .toString('latin1')
      .replaceAll(`files/${'z'.repeat(64)}`, name);
    const { copy, fileOf } = await readWhole(Uint8Array.from(Buffer.from(latin, 'latin1')));
    expect(copy.lacks).toEqual({ ...whole, refused: [{ name, why: 'twice' }] });
    expect(await fileOf(crest.file.sha256)).toEqual(crest.content);
  });

  it('takes no picture whose bytes are not those of its hash', async () => {
    const bytes = await archiveOf(aContent(), async () => aFile('forged').content);
    const { copy, fileOf } = await readWhole(bytes);
    expect(copy.files).toEqual([]);
    expect(copy.lacks.files).toMatchObject([
      { name: 'crest.png', why: 'damaged' },
      { name: 'badge.png', why: 'damaged' },
    ]);
    expect(await fileOf(crest.file.sha256)).toBeNull();
  });

  it('does not unpack a picture that swells beyond all pictures', async () => {
    const bomb = new Uint8Array(101_000_000);
    const entries = { ...unzipSync(await archiveOf()), [`files/${crest.file.sha256}`]: bomb };
    const { copy } = await readWhole(zipSync(entries, { level: 1 }));
    expect(copy.lacks.files).toEqual([{ sha256: crest.file.sha256, name: 'crest.png', why: 'tooLarge' }]);
  });
});
