import { describe, expect, it } from 'vitest';
import { cutMarks, wasteStrip } from '@/lib/exports/wasteStrip';

/* A4 with a border of 3 mm. A line needs 6 mm of distance and 4.5 mm of height, 110 mm long. */
const page = { widthMm: 210, heightMm: 297, marginMm: 3 };
const box = (xMm: number, yMm: number, widthMm: number, heightMm: number) => ({
  xMm,
  yMm,
  widthMm,
  heightMm,
});

describe('the strip for a line in the waste', () => {
  it('lies at the end of the page that has more room, as far from the art as the printer reaches', () => {
    expect(wasteStrip({ ...page, pieces: [box(3, 20, 204, 230)] })).toEqual({
      ...box(3, 289.5, 200, 4.5),
      isUpright: false,
    });
    expect(wasteStrip({ ...page, pieces: [box(3, 60, 204, 234)] })).toMatchObject({ yMm: 3 });
  });

  it('is there with 10.5 mm between the art and the border, and not with less', () => {
    expect(wasteStrip({ ...page, pieces: [box(3, 13.5, 204, 280.5)] })).toMatchObject({ yMm: 3 });
    expect(wasteStrip({ ...page, pieces: [box(3, 13.4, 204, 280.6)] })).toBeNull();
  });

  it('lies along a side where neither end has room, running up', () => {
    expect(wasteStrip({ ...page, pieces: [box(3, 3, 190, 291)] })).toEqual({
      ...box(202.5, 3, 4.5, 200),
      isUpright: true,
    });
    expect(wasteStrip({ ...page, pieces: [box(20, 3, 187, 291)] })).toMatchObject({ xMm: 3 });
  });

  it('is not there where the page is too short for the words either way, or holds nothing', () => {
    expect(
      wasteStrip({ widthMm: 100, heightMm: 100, marginMm: 3, pieces: [box(40, 40, 10, 10)] }),
    ).toBeNull();
    expect(wasteStrip({ ...page, pieces: [] })).toBeNull();
    // Narrow, yet long enough beside the art.
    expect(
      wasteStrip({ widthMm: 100, heightMm: 200, marginMm: 3, pieces: [box(40, 40, 10, 10)] }),
    ).toMatchObject({ isUpright: true, heightMm: 194 });
  });
});

describe('marks of cuts on a roll', () => {
  // A cut in the middle of a gap of 6 mm.
  const roll = { widthMm: 610, heightMm: 400, marginMm: 5 };

  it('are short strokes at both edges', () => {
    const pieces = [box(100, 5, 400, 150), box(100, 161, 400, 150)];
    expect(cutMarks({ ...roll, pieces }, [158], null)).toEqual([
      box(5, 157.875, 4, 0.25),
      box(601, 157.875, 4, 0.25),
    ]);
  });

  it('are left out beside a piece, on the side where it lies', () => {
    // The stroke at the left ends 9 mm from the edge; the piece begins 14 mm from it, 3 mm below the cut.
    const pieces = [box(14, 161, 400, 150)];
    expect(cutMarks({ ...roll, pieces }, [158], null).map(({ xMm }) => xMm)).toEqual([601]);
    expect(cutMarks({ ...roll, pieces: [box(15, 161, 400, 150)] }, [158], null)).toHaveLength(2);
  });

  it('are left out where the line in the waste stands', () => {
    const strip = { ...box(5, 5, 4.5, 200), isUpright: true };
    expect(cutMarks({ ...roll, pieces: [] }, [158, 300], strip)).toEqual([
      box(601, 157.875, 4, 0.25),
      box(5, 299.875, 4, 0.25),
      box(601, 299.875, 4, 0.25),
    ]);
  });
});
