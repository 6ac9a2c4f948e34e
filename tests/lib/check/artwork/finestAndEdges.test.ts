import { describe, expect, it } from 'vitest';
import { club, clubWith, mended, mugs, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

const ids = ['ART-05', 'ART-15', 'ART-16', 'LAY-12', 'LAY-13'] as const;

describe('what nobody measured', () => {
  it.each(ids)('is not judged: %s', (id) => {
    expect(verdict(club(), id)).toBe('pass');
  });

  it.each(ids)('and the measured example mug passes %s', (id) => {
    expect(verdict(mugs(), id)).toBe('pass');
  });
});

describe('ART-05 warns of letters and lines that fill in', () => {
  // The badge prints 3.5 in wide; common practice asks for 3 mm capitals and 0.5 mm lines on cloth.
  const finest = (part: Readonly<Record<string, unknown>>) =>
    clubWith({
      'artwork:club-crest.finest': {
        atWidthMm: 88.9,
        capHeightMm: null,
        lineMm: null,
        reversed: false,
        ...part,
      },
    });

  it.each([
    [{ capHeightMm: 3 }, 'pass'],
    [{ capHeightMm: 2.99 }, 'caution letters'],
    [{ lineMm: 0.5 }, 'pass'],
    [{ lineMm: 0.49 }, 'caution lines'],
    [{ capHeightMm: 4.4, reversed: true }, 'caution letters'],
    [{ capHeightMm: 4.5, reversed: true }, 'pass'],
    [{ lineMm: 0.74, reversed: true }, 'caution lines'],
    [{ capHeightMm: 2.9, lineMm: 0.2 }, 'caution lines'],
  ])('%o: %s', (part, expected) => {
    expect(verdict(finest(part), 'ART-05')).toBe(expected);
  });

  it('scales what was measured to the size it is printed at, and says how wide would do', () => {
    // 6 mm at a width of 177.8 mm are 3 mm at 88.9; 5 mm are 2.5, which 106.68 mm would make 3.
    expect(verdict(finest({ atWidthMm: 177.8, capHeightMm: 6 }), 'ART-05')).toBe('pass');
    const [finding] = told(finest({ atWidthMm: 177.8, capHeightMm: 5 }), 'ART-05');
    expect(finding?.facts.mm).toBeCloseTo(2.5, 9);
    expect(finding?.facts.neededWidthMm).toBeCloseTo(106.68, 9);
  });

  it('offers the size that would do, where the piece and the sheet hold it', () => {
    // 2.5 mm at 3.5 in want 3.5 × 3 ÷ 2.5 = 4.2 in.
    const small = clubWith({
      'artwork:club-crest.finest': { atWidthMm: 88.9, capHeightMm: 2.5, lineMm: null, reversed: false },
      'blank:white-shirt.sizes': club().blanks['white-shirt']?.sizes.map((size) => ({
        ...size,
        maxPrints: size.maxPrints.map((most) => ({ ...most, widthMm: 300, heightMm: 300 })),
      })),
    });
    const [finding] = told(small, 'ART-05');
    expect(finding?.fix?.facts.widthMm).toBeCloseTo(106.68, 9);
    expect(told(mended(small, finding), 'ART-05')).toEqual([]);
    // Letters of 0.5 mm want 21 in, which no letter sheet holds.
    expect(told(finest({ capHeightMm: 0.5 }), 'ART-05')[0]?.fix).toBeNull();
  });

  it('takes the width of the picture and not of its box, where it is fitted inside', () => {
    // 1,500 × 1,800 px in 8 × 10 in comes out 8 in wide; in 10 × 8 in it is 6.667 in wide.
    const wide = clubWith({
      'artwork:hill-path.finest': {
        atWidthMm: 203.2,
        capHeightMm: 3.2,
        lineMm: null,
        reversed: false,
      },
      'job.lines.0.placements.0.prints': [{ sizes: null, widthMm: 254, heightMm: 203.2 }],
    });
    expect(told(wide, 'ART-05')[0]?.facts.mm).toBeCloseTo((3.2 * 8 * (1500 / 1800)) / 8, 9);
  });

  it.each([
    [2, 'pass'],
    [1.99, 'caution letters'],
  ])('hard goods hold finer letters: %d mm, %s', (capHeightMm, expected) => {
    const input = mugsWith({
      'artwork:fern-strip.finest': { atWidthMm: 203.2, capHeightMm, lineMm: 0.1, reversed: false },
    });
    expect(verdict(input, 'ART-05')).toBe(expected);
  });
});

describe('ART-15 asks for a picture that runs past the edge', () => {
  it.each([
    [0, 'stop none'],
    [1.49, 'stop none'],
    [1.5, 'caution short'],
    [2.99, 'caution short'],
    [3, 'pass'],
    [null, 'pass'],
  ])('%s mm: %s', (bleedMm, expected) => {
    expect(verdict(mugsWith({ 'job.lines.0.placements.0.bleedMm': bleedMm }), 'ART-15')).toBe(expected);
  });

  it('asks how far where a print covers the whole face and nobody measured', () => {
    const whole = [{ sizes: null, widthMm: 8.5 * 25.4, heightMm: 3.6 * 25.4 }];
    expect(verdict(mugsWith({ 'job.lines.0.placements.0.prints': whole }), 'ART-15')).toBe('note unmeasured');
  });
});

describe('ART-16 keeps what must be seen whole away from edges', () => {
  it.each([
    [5.99, 'caution'],
    [6, 'pass'],
    [null, 'pass'],
  ])('%s mm: %s', (safeZoneMm, expected) => {
    expect(verdict(clubWith({ 'job.lines.0.placements.0.safeZoneMm': safeZoneMm }), 'ART-16')).toBe(expected);
  });
});

describe('LAY-12 holds a wrap against the piece it goes around', () => {
  /** The strips are 8.0 in, 203.2 mm long. */
  const around = (circumferenceMm: number, handleGapMm: number) =>
    mugsWith({ 'blank:white-mug.sizes.0.wrap': { circumferenceMm, handleGapMm, taperDegrees: 0 } });

  it.each([
    // With a handle there is no lap at all, and a gap beside it by design.
    [243.2, 40, 'pass'],
    [243, 40, 'stop long'],
    [300, 40, 'pass'],
    // A seamless wrap may lap by 1.5 mm (0.06 in) and gape by as much.
    [201.7, 0, 'pass'],
    [201.6, 0, 'stop long'],
    [204.7, 0, 'pass'],
    [204.8, 0, 'caution short'],
  ])('%d mm around, %d for the handle: %s', (circumferenceMm, handleGapMm, expected) => {
    expect(verdict(around(circumferenceMm, handleGapMm), 'LAY-12')).toBe(expected);
  });

  it('is mended by its button', () => {
    const input = around(240, 40);
    const [first] = told(input, 'LAY-12');
    const left = told(mended(input, first), 'LAY-12');
    expect(left).toHaveLength(told(input, 'LAY-12').length - 1);
    expect(left.map(({ where }) => where.lineId)).not.toContain(first?.where.lineId);
  });
});

describe('LAY-13 warns of a side that leans', () => {
  it.each([
    [1, 'pass'],
    [1.1, 'caution lean'],
    [3, 'caution lean'],
    [3.1, 'stop steep'],
  ])('%d°: %s', (taperDegrees, expected) => {
    const input = mugsWith({
      'blank:white-mug.sizes.0.wrap': { circumferenceMm: 260, handleGapMm: 40, taperDegrees },
    });
    expect(verdict(input, 'LAY-13')).toBe(expected);
  });
});
