import { describe, expect, it } from 'vitest';
import { placeLabels } from '@/app/_charts/placeLabels';

const within = { left: 0, right: 400, top: 0, bottom: 300 };
const label = (key: string, x: number, y: number) => ({ key, words: 'knee, 24', x, y, away: 10 });
const place = (labels: Parameters<typeof placeLabels>[0], falls = false) =>
  placeLabels(labels, within, [], 14, falls);

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
    expect(placeLabels([label('a', 20, 20)], narrow, [], 14, false)).toEqual([]);
  });
});
