import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { coverOf } from '@/app/_docket/sheets/coverOf';
import { formatterFor } from '@/app/_words/formatter';
import { coverTexts } from '@/lib/exports/cover';
import { writeCover } from '@/lib/exports/coverPage';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import { neededFaces } from '@/lib/lettering/missingLetters';
import type { JobInput } from '@/shared/schemas/request';
import { aPicture } from '@/tests/fixtures/aPicture';
import { clubWith } from '@/tests/fixtures/clubJob';
import { laidOut } from '@/tests/fixtures/costed';
import { faceFiles } from '@/tests/fixtures/faceFiles';

/* Read back by a reader that shares nothing with the writer. */

type Fields = Parameters<typeof clubWith>[0];

async function covered(
  fields: Fields,
  sheetsOf = (input: JobInput) => plannedSheets(laidOut(input)).sheets,
  withLine = false,
) {
  const input = clubWith(fields);
  const paper = input.workshop.sheets.find(({ id }) => id === input.job.sheetId);
  if (paper === undefined) throw new Error('the example has no sheet');
  const formatter = formatterFor(input.workshop);
  const sheets = sheetsOf(input);
  const cover = coverOf({ input, paper, sheets, withLine, today: '2026-11-27', formatter });
  const faces = await faceFiles(neededFaces(coverTexts(cover)));
  return readBack(await writeCover(cover, { faces, foreign: null }));
}

async function readBack(bytes: Uint8Array) {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: string[] = [];
  const across: number[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    pages.push(items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join(''));
    const { fnArray, argsArray } = await page.getOperatorList();
    fnArray.forEach((operator, place) => {
      // A path comes with its bounds: left, lower, right and upper edge.
      if (operator !== OPS.constructPath) return;
      const [left = 0, , right = 0] = Object.values(argsArray[place][2] ?? {}).map(Number);
      across.push(right - left);
    });
  }
  const first = await document.getPage(1);
  return {
    bytes,
    pages,
    text: pages.join('\n').replaceAll(/\s+/g, ' '),
    size: [first.view[2], first.view[3]],
    across,
    preferences: await document.getViewerPreferences(),
  };
}

describe('a cover page', () => {
  it('tells of the line in the waste only where it is chosen and a page has room', async () => {
    const words = 'A strip with words is cut off before pressing.';
    const sheetsOf = (input: JobInput) => plannedSheets(laidOut(input)).sheets;
    const full = (input: JobInput) => {
      const { widthMm, heightMm } = input.workshop.sheets.find(({ id }) => id === input.job.sheetId) ?? {
        widthMm: 0,
        heightMm: 0,
      };
      return sheetsOf(input).map((sheet) => ({
        ...sheet,
        pieces: sheet.pieces.slice(0, 1).map((piece) => ({ ...piece, xMm: 0, yMm: 0, widthMm, heightMm })),
      }));
    };
    expect((await covered({}, sheetsOf, true)).text).toContain(words);
    expect((await covered({}, sheetsOf, false)).text).not.toContain(words);
    expect((await covered({}, full, true)).text).not.toContain(words);
  });

  it('says above everything that it is not to be pressed', async () => {
    const { pages } = await covered({});
    expect(pages[0]).toMatch(/^Cover page – plain paper, do not press/);
  });

  it('names the job, the workshop, the day and how many sheets there are', async () => {
    // 37 backs, one to a sheet, and 37 badges, four to a sheet: 37 + 10 = 47.
    const { text } = await covered({});
    for (const told of ['Ramblers Club shirts', 'Exampleton Prints, made Nov 27, 2026']) {
      expect(text).toContain(told);
    }
    expect(text).toMatch(/47 ?sheets for the good pieces/);
  });

  it('says of each kind of sheet which of all they are and how many alike', async () => {
    const { text } = await covered({});
    expect(text).toContain('Sheets 1–37 of 47 37 copies alike');
    expect(text).toContain('Sheets 38–46 of 47 9 copies alike');
    expect(text).toContain('Sheet 47 of 47 1 copy');
  });

  it('names each print with its picture, size and side', async () => {
    const { text } = await covered({ 'artwork:club-crest.mirrored': true });
    expect(text).toContain(
      'A Back picture 1 to a sheet, 8 × 10 in, mirrored Club shirt picture: Hill path picture',
    );
    // A picture that is mirrored already and sent mirrored lies the right way round.
    expect(text).toContain('B Chest badge 4 to a sheet, 3.5 × 3.5 in, not mirrored');
  });

  it('says where no picture is kept, and only there', async () => {
    const { text } = await covered({ 'artwork:hill-path.picture': aPicture() });
    expect(text.match(/no picture kept: its place stays empty/g)).toHaveLength(2);
    expect(text).toContain('picture: Hill path picture, version 1, hill-path.png Sheets 38');
  });

  it('repeats what is to be chosen in the printer’s window, and says where nobody noted it', async () => {
    const noted = await covered({
      'workshop.printers.0.colourProfile': 'Sublimation v4',
      'workshop.sheets.0.mediaSetting': 'Premium matte',
      'workshop.printers.0.printedSide': 'down',
    });
    expect(noted.text).toContain('Kind of paper Premium matte');
    expect(noted.text).toContain('Colours Sublimation v4');
    expect(noted.text).toContain('coated side down in the tray');
    const open = await covered({ 'workshop.printers.0.printedSide': 'unsure' });
    expect(open.text).toContain('Kind of paper not noted in the workshop');
    expect(open.text).toContain('the coated side must be the printed one');
  });

  it('has a line of 100 mm and asks for no scaling', async () => {
    const { across, preferences, text } = await covered({});
    // 100 mm are 283.46 points.
    expect(across.some((width) => Math.abs(width - 283.46) < 0.01)).toBe(true);
    expect(preferences).toMatchObject({ PrintScaling: 'None' });
    expect(text).toContain('This line must measure 100 mm');
  });

  it.each([
    ['en-US', [612, 792]],
    ['de-DE', [595.28, 841.89]],
  ])('of a maker in %s is as large as the paper there', async (locale, size) => {
    expect((await covered({ 'workshop.locale': locale })).size).toEqual(size);
  });

  it('has names of any script as they are typed', async () => {
    const { text } = await covered({
      'job.name': 'מועדון',
      'job.lines.0.placements.0.name': 'Nguyễn Thị Hồng, Erdőfű',
      'workshop.name': 'Печать Αθήνα',
    });
    for (const name of ['מועדון', 'Nguyễn Thị Hồng, Erdőfű', 'Печать Αθήνα']) expect(text).toContain(name);
  });

  it('tells of a roll where it is cut, from its start', async () => {
    const roll = (input: JobInput): readonly PlannedSheet[] =>
      plannedSheets(laidOut(input))
        .sheets.slice(0, 1)
        .map((sheet) => ({ ...sheet, lengthMm: 1000, cutsMm: [254, 508] }));
    const { text } = await covered(
      { 'workshop.sheets.0.form': 'roll', 'workshop.sheets.0.widthMm': 610 },
      roll,
    );
    // 1000 mm are 39.37 in, 254 mm are 10 in.
    expect(text).toContain('Cut off the roll at 39.37 in.');
    expect(text).toContain('Then cut into 3 strips at 10 in, 20 in from its start.');
    expect(text).toContain('start of the roll');
  });

  it('goes over several pages, each numbered, and loses no kind of sheet', async () => {
    const thirty = (input: JobInput): readonly PlannedSheet[] => {
      const [one] = plannedSheets(laidOut(input)).sheets;
      return one === undefined ? [] : Array.from({ length: 30 }, () => ({ ...one, count: 2 }));
    };
    const { pages, text } = await covered({}, thirty);
    expect(pages.length).toBeGreaterThan(4);
    pages.forEach((page, place) => {
      expect(page.replaceAll(/\s+/g, ' ')).toContain(`page ${place + 1} of ${pages.length}`);
    });
    for (let kind = 0; kind < 30; kind += 1) {
      expect(text).toContain(`Sheets ${2 * kind + 1}–${2 * kind + 2} of 60`);
    }
  });

  it('names more prints than a page holds on the next', async () => {
    const crowded = (input: JobInput): readonly PlannedSheet[] => {
      const [one] = plannedSheets(laidOut(input)).sheets;
      const [piece] = one?.pieces ?? [];
      if (one === undefined || piece === undefined) return [];
      return [{ ...one, pieces: Array.from({ length: 40 }, (_, print) => ({ ...piece, print })) }];
    };
    const { text, pages } = await covered({}, crowded);
    expect(pages.length).toBeGreaterThan(2);
    expect(text).toContain('of 37, continued');
    // A to Z are 26, AA to AN are 14 more.
    expect(text).toContain('AN Back picture');
  });

  it('keeps the day of making out of the file’s own dates: the same cover is the same file', async () => {
    const [one, other] = [await covered({}), await covered({})];
    expect(Buffer.compare(one.bytes, other.bytes)).toBe(0);
  });
});
