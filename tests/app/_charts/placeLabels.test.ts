import { describe, expect, it } from 'vitest';
import { placeLabels } from '@/app/_charts/placeLabels';

const within = { left: 0, right: 400, top: 0, bottom: 300 };
const free = { boxes: [], lines: [] };
const label = (key: string, x: number, y: number) => ({ key, words: 'knee, 24', x, y, away: 10 });
const place = (labels: Parameters<typeof placeLabels>[0], falls = false) =>
  placeLabels(labels, within, free, 14, falls);

describe('words beside the points of a drawing', () => {
  it('stand to the left above a line that rises, to the right above one that falls', () => {
    expect(place([label('a', 200, 150)])[0]).toMatchObject({ anchor: 'end', x: 190 });
    expect(place([label('a', 200, 150)], true)[0]).toMatchObject({ anchor: 'start', x: 210 });
  });

  it('do not run over the edge', () => {
    expect(place([label('a', 12, 150)])[0]?.anchor).toBe('start');
  });

  it('do not lie on each other, the first named first', () => {
    const [first, second] = place([label('a', 200, 150), label('b', 205, 152)]);
    expect(first).toMatchObject({ key: 'a', anchor: 'end' });
    expect(second).toMatchObject({ key: 'b', anchor: 'start' });
  });

  it('are left out where there is no room for them', () => {
    const narrow = { left: 0, right: 40, top: 0, bottom: 40 };
    expect(placeLabels([label('a', 20, 20)], narrow, free, 14, false)).toEqual([]);
  });

  it('keep clear of a line, farther away if they must', () => {
    // A step: level at 150 px to the point, then up to 60 px and level again.
    const step = [
      [0, 150],
      [200, 150],
      [201, 60],
      [400, 60],
    ] as const;
    const [placed] = placeLabels([label('a', 200, 150)], within, { boxes: [], lines: [step] }, 14, false);
    // Left above would lie on the level part; to the right beneath nothing runs.
    expect(placed).toMatchObject({ anchor: 'start', x: 210 });
    const level = [150, 165].map((y) => [[0, y] as const, [400, y] as const]);
    const [above] = placeLabels([label('a', 200, 150)], within, { boxes: [], lines: level }, 14, false);
    // 16.8 px high and 10 px away: it ends at 140, clear of 150.
    expect(above?.y).toBeLessThanOrEqual(140);
  });

  it('stand above their point where they are to, unless a line runs there', () => {
    const over = { ...label('a', 200, 150), isOver: true };
    expect(placeLabels([over], within, free, 14, false)[0]).toMatchObject({ anchor: 'middle', x: 200 });
    const upright = [
      [200, 100],
      [200, 150],
    ] as const;
    const [beside] = placeLabels([over], within, { boxes: [], lines: [upright] }, 14, false);
    expect(beside).toMatchObject({ anchor: 'end', x: 190 });
  });

  it('lie on a line rather than not being written', () => {
    const lines = Array.from(
      { length: 60 },
      (_, at) =>
        [
          [0, at * 5],
          [400, at * 5],
        ] as const,
    );
    expect(placeLabels([label('a', 200, 150)], within, { boxes: [], lines }, 14, false)).toHaveLength(1);
  });
});
