import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { sheetPictures } from '@/app/_docket/sheets/sheetPictures';
import { sheetsFile } from '@/app/_docket/sheets/sheetsFile';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import type { StoredFile } from '@/lib/stored/storedFile';
import { aPicture } from '@/tests/fixtures/aPicture';
import { clubWith } from '@/tests/fixtures/clubJob';
import { laidOut } from '@/tests/fixtures/costed';

const image = sharp({ create: { width: 160, height: 200, channels: 3, background: '#3a6' } });
const input = clubWith({ 'artwork:hill-path.picture': aPicture(), 'artwork:club-crest.mirrored': true });
const { sheets } = plannedSheets(laidOut(input));
const files =
  (content: Uint8Array<ArrayBuffer> | null) =>
  async (id: string): Promise<StoredFile | null> =>
    id === 'file-1' && content !== null ? { id, name: 'hill-path', content } : null;

describe('the pictures of sheets', () => {
  it.each(['png', 'jpeg'] as const)('are embedded as the %s they came as', async (kind) => {
    const bytes = new Uint8Array(await image.clone().toFormat(kind).toBuffer());
    const { pictures, lost } = await sheetPictures(input, sheets, files(bytes));
    expect([...pictures.keys()]).toEqual(['hill-path']);
    expect(pictures.get('hill-path')).toEqual({ kind, bytes });
    expect(lost).toEqual([]);
  });

  it('are named where their file is gone or broken', async () => {
    expect(await sheetPictures(input, sheets, files(null))).toEqual({
      pictures: new Map(),
      lost: ['Hill path picture'],
    });
    const { lost } = await sheetPictures(input, sheets, files(new Uint8Array([1, 2, 3])));
    expect(lost).toEqual(['Hill path picture']);
  });
});

describe('the file of sheets', () => {
  const [paper] = input.workshop.sheets;
  if (paper === undefined) throw new Error('the example has no sheet');
  const bytes = new Uint8Array();
  const pictures = new Map([['hill-path', { kind: 'png', bytes }]] as const);
  const of = (pages: 'every' | 'oneOfEach') => sheetsFile({ input, paper, sheets, pages, pictures });

  it('has a page for every sheet, or one of each kind', () => {
    expect(of('every').sheets).toHaveLength(47);
    expect(of('oneOfEach').sheets.map(({ pieces }) => pieces.length)).toEqual([1, 4, 1]);
  });

  it('flips what the job sends mirrored, and gives a print without a file no picture', () => {
    const [back, badges] = of('oneOfEach').sheets;
    expect(back?.pieces[0]).toMatchObject({ picture: 'hill-path', flipped: true });
    expect(badges?.pieces[0]).toMatchObject({ picture: null, flipped: true });
    expect(of('every').widthMm).toBe(paper.widthMm);
    expect(back?.heightMm).toBe(paper.heightMm);
  });
});
