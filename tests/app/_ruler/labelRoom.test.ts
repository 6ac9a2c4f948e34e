import { describe, expect, it } from 'vitest';
import { labelRoom } from '@/app/_ruler/labelRoom';

/** The marks of the worked example; the first three crowd. */
const marks = [
  { id: 'outOfPocketFloor', label: 'out of pocket', value: 6.58 },
  { id: 'variableFloor', label: 'your hands', value: 8.85 },
  { id: 'fullCost', label: 'full cost', value: 11.13 },
  { id: 'target', label: 'target 30 %', value: 16.27 },
  { id: 'ceiling', label: 'most they pay', value: 22 },
];
const format = (value: number) => value.toFixed(2);
const bounds = { min: 0, max: 25 };
const at = (widthPx: number, scale = 1) => labelRoom(marks, { bounds, format, widthPx, scale });

describe('labelRoom', () => {
  it('names all marks on a desk, where their figures do not touch', () => {
    const room = at(520);
    if (room.kind !== 'named') throw new Error(room.kind);
    // A figure of five signs at 14 px is about 40 px wide (measured in the text face: 7.9 px a digit).
    const gaps = room.middles.slice(1).map((middle, index) => middle - (room.middles[index] ?? 0));
    expect(Math.min(...gaps)).toBeGreaterThan(40);
  });

  it('shows figures alone on a phone, and rows where not even those fit beside one another', () => {
    expect(at(326).kind).toBe('figures');
    expect(at(210).kind).toBe('list');
  });

  it('takes type at twice its size as half the room', () => {
    for (const widthPx of [320, 420, 520, 640, 900]) {
      expect(at(2 * widthPx, 2).kind).toBe(at(widthPx).kind);
    }
    expect(at(326, 2).kind).toBe('list');
  });
});
