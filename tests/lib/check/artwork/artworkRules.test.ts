import { describe, expect, it } from 'vitest';
import { placeInBox } from '@/lib/artwork/placeInBox';
import { checkJob } from '@/lib/check/checkJob';
import { jobInputSchema } from '@/shared/schemas/request';
import { mmFromInches } from '@/shared/units';
import { club, clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

const square = { sizes: null, widthMm: mmFromInches(10), heightMm: mmFromInches(10) };

/** A picture of the shape of its print, 10 in wide, so that pixels ÷ 10 are ppi. */
const backOf = (pixels: number) =>
  clubWith({
    'artwork:hill-path.pixels': { width: pixels, height: pixels },
    'job.lines.0.placements.0.prints': [square],
  });

describe('ART-01 counts pixels per inch on cloth', () => {
  it.each([
    [999, 'stop stop'],
    [1000, 'caution caution'],
    [1499, 'caution caution'],
    [1500, 'note note'],
    [1999, 'note note'],
    [2000, 'pass'],
    [3000, 'pass'],
  ])('%d px over 10 in: %s', (pixels, expected) => {
    expect(verdict(backOf(pixels), 'ART-01')).toBe(expected);
  });

  it.each([
    // 1500 × 1800 px in a box of 8 × 10 in: whole inside it 8 × 9.6 in, cropped to 1440 px across, or pulled to it.
    ['inside', 187.5, 9.6],
    ['fill', 180, 10],
    ['stretch', 180, 10],
  ] as const)('takes the size the picture prints at, %s its box: %d ppi', (fit, ppi, heightIn) => {
    const input = clubWith({ 'job.lines.0.placements.0.fit': fit });
    const [finding] = told(input, 'ART-01');
    expect(finding?.facts.ppi).toBeCloseTo(ppi, 9);
    expect(finding?.facts).toMatchObject({
      widthMm: 203.2,
      heightMm: expect.closeTo(mmFromInches(heightIn), 9),
    });
  });

  it('says what the part about the picture says, far from the shape of its box too', () => {
    // 640 × 370 px in a box of 4 × 4 in lie 4 in wide and 2.3125 in high: 160 ppi both ways, and not 370 ÷ 4 = 92.5.
    const print = { sizes: null, widthMm: mmFromInches(4), heightMm: mmFromInches(4) };
    const pixels = { width: 640, height: 370 };
    const [finding] = told(
      clubWith({ 'artwork:hill-path.pixels': pixels, 'job.lines.0.placements.0.prints': [print] }),
      'ART-01',
    );
    expect(finding?.severity).toBe('note');
    expect(finding?.facts.ppi).toBeCloseTo(160, 9);
    expect(finding?.facts.ppi).toBe(placeInBox(pixels, print, 'inside').ppi);
  });

  it('finds line art clean at any size', () => {
    expect(verdict(clubWith({ 'artwork:hill-path.pixels': null }), 'ART-01')).toBe('pass');
  });

  it('proposes the picture whole at its clean size, which mends its shape too', () => {
    // 1500 × 1800 px at 200 ppi are 7.5 × 9 in.
    const after = mended(club(), told(club(), 'ART-01')[0]);
    expect(after.job.lines[0]?.placements[0]?.prints[0]).toMatchObject({
      widthMm: mmFromInches(7.5),
      heightMm: mmFromInches(9),
    });
    expect(verdict(after, 'ART-01')).toBe('pass');
    expect(verdict(after, 'ART-04')).toBe('pass');
  });

  it('lets deliberate pixel art pass with a reason', () => {
    const waiver = { finding: 'ART-01', placementId: 'back', lineId: null, reason: 'Meant to be blocky.' };
    const stopped = clubWith({
      'artwork:hill-path.pixels': { width: 80, height: 100 },
      'job.waivers': [waiver],
    });
    expect(told(stopped, 'ART-01')[0]?.waivedBecause).toBe('Meant to be blocky.');
    expect(checkJob(stopped).checked).not.toBeNull();
  });
});

describe('ART-02 asks more of hard goods', () => {
  it.each([
    [149, 'stop stop'],
    [150, 'caution caution'],
    [249, 'caution caution'],
    [250, 'pass'],
  ])('%d ppi: %s', (ppi, expected) => {
    const input = mugsWith({
      'artwork:fern-strip.pixels': { width: ppi * 8, height: Math.round(ppi * 3.4) + 1 },
      'job.lines.0.placements.0.prints.0.heightMm': mmFromInches(3.4),
    });
    expect(verdict(input, 'ART-02')).toBe(expected);
    expect(verdict(input, 'ART-01')).toBe('pass');
  });
});

describe('ART-04 compares the picture with its box', () => {
  const shaped = (height: number, fit = 'inside') =>
    clubWith({
      'artwork:hill-path.pixels': { width: 10_000, height },
      'job.lines.0.placements.0.prints': [square],
      'job.lines.0.placements.0.fit': fit,
    });

  it.each([
    [10_199, 'inside', 'pass'],
    [10_200, 'inside', 'note inside'],
    [10_500, 'inside', 'note inside'],
    [10_501, 'inside', 'caution inside'],
    [9_000, 'fill', 'caution fill'],
    [10_199, 'stretch', 'pass'],
    [10_200, 'stretch', 'stop stretch'],
  ])('10000 × %d px in a square, %s: %s', (height, fit, expected) => {
    expect(verdict(shaped(height, fit), 'ART-04')).toBe(expected);
  });

  it('unstretches with its button', () => {
    const input = shaped(12_000, 'stretch');
    const after = mended(input, told(input, 'ART-04')[0]);
    expect(after.job.lines[0]?.placements[0]?.fit).toBe('inside');
    expect(verdict(after, 'ART-04')).toBe('pass');
  });
});

describe('ART-10 judges ink totals that were typed', () => {
  it.each([
    [2.5, 'pass'],
    [2.51, 'caution heavy'],
    [3, 'caution heavy'],
    [3.01, 'stop tooHeavy'],
  ])('%d: %s', (total, expected) => {
    const input = clubWith({ 'artwork:hill-path.coverage': { kind: 'total', total } });
    expect(verdict(input, 'ART-10')).toBe(expected);
    expect(checkJob(input).checked === null).toBe(expected.startsWith('stop'));
  });

  it('adds up channels', () => {
    const coverage = { kind: 'channels', cyan: 0.9, magenta: 0.8, yellow: 0.7, black: 0.2 };
    expect(verdict(clubWith({ 'artwork:hill-path.coverage': coverage }), 'ART-10')).toBe('caution heavy');
  });
});

describe('ART-11 wants the transfer backwards exactly once', () => {
  it.each([
    [true, false, 'pass'],
    [false, false, 'stop not'],
    [true, true, 'stop twice'],
    [false, true, 'pass'],
  ])('printer mirrors %s, picture mirrored %s: %s', (mirror, mirrored, expected) => {
    const input = clubWith({
      'job.lines.0.placements.0.mirror': mirror,
      'artwork:hill-path.mirrored': mirrored,
    });
    expect(verdict(input, 'ART-11')).toBe(expected);
  });

  it('is mended by its button', () => {
    const input = clubWith({ 'job.lines.0.placements.0.mirror': false });
    expect(verdict(mended(input, told(input, 'ART-11')[0]), 'ART-11')).toBe('pass');
  });
});

describe('ART-13 compares the version with the approved one', () => {
  it.each([
    [2, 2, 'pass'],
    [2, 1, 'note other'],
    [2, null, 'note none'],
  ])('version %d, approved %s: %s', (version, approvedVersion, expected) => {
    const input = clubWith({
      'artwork:hill-path.version': version,
      'approval:hill-path': approvedVersion,
    });
    expect(verdict(input, 'ART-13')).toBe(expected);
  });

  it('speaks once for all artworks of the order, and its button marks them all', () => {
    const input = clubWith({ 'approval:club-crest': null });
    const [finding, ...others] = told(input, 'ART-13');
    expect(others).toEqual([]);
    expect(finding?.facts.artworks).toBe('Hill path picture, Club crest');
    expect(verdict(mended(input, finding), 'ART-13')).toBe('pass');
  });

  it('knows no approval of an artwork that is called like a part of the language', () => {
    const input = club();
    const [line, ...others] = input.job.lines;
    if (line === undefined) throw new Error('the club order has a line');
    const placements = line.placements.map((placement) => ({ ...placement, artworkId: 'constructor' }));
    const artworks = { constructor: input.artworks['hill-path'] };
    const job = { ...input.job, lines: [{ ...line, placements }, ...others] };
    expect(verdict(jobInputSchema.parse({ ...input, artworks, job }), 'ART-13')).toBe('note none');
  });

  it('has nobody to ask where goods are made to stock', () => {
    expect(verdict(clubWith({ 'job.madeFor': 'stock' }), 'ART-13')).toBe('pass');
  });
});

describe('ART-14 asks whose picture it is', () => {
  it.each([
    ['own', 'pass'],
    ['permission', 'pass'],
    ['promised', 'caution promised'],
    ['notStated', 'caution notStated'],
    ['none', 'stop none'],
  ])('%s: %s', (state, expected) => {
    const input = clubWith({ 'artwork:club-crest.rights': { state, note: '' } });
    expect(verdict(input, 'ART-14')).toBe(expected);
  });
});
