// @vitest-environment jsdom
import { cleanup, render } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { BreakEvenBar } from '@/app/_count/BreakEvenBar';
import { type BreakMark, breakMarks } from '@/app/_words/stall/count/breakEvenWords';
import { fairPlan } from '@/tests/fixtures/stallPlan';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

/** Mean advance of bold type of 13 px. */
const LETTER_PX = 7.5;
const marks = breakMarks(fairPlan);

/** What is written beneath the bar, each with where it lies, where its leader ends and where its tick stands, px. */
function labelsAt(widthPx: number, of: readonly BreakMark[], sold: number) {
  vi.stubGlobal(
    'ResizeObserver',
    class {
      observe() {}
      disconnect() {}
    },
  );
  const box = vi
    .spyOn(Element.prototype, 'getBoundingClientRect')
    .mockReturnValue(new DOMRect(0, 0, widthPx, 40));
  const { container } = render(<BreakEvenBar marks={of} sold={sold} />);
  box.mockRestore();
  const inPx = (place: string | null) =>
    place?.endsWith('%') ? (Number.parseFloat(place) / 100) * widthPx : Number(place);
  const labels = [...container.querySelectorAll('g')].map((group) => {
    const leader = group.querySelector('line');
    const lines = [...group.querySelectorAll('text')];
    const middle = inPx(lines[0]?.getAttribute('x') ?? null);
    const half = (Math.max(...lines.map((line) => line.textContent.length)) * LETTER_PX) / 2;
    return {
      words: lines.map((line) => line.textContent),
      ...{ middle, from: middle - half, to: middle + half },
      tick: inPx(leader?.getAttribute('x1') ?? null),
      end: inPx(leader?.getAttribute('x2') ?? null),
    };
  });
  return { labels, inWords: container.querySelector('p')?.textContent ?? null };
}

describe('the marks of the bar', () => {
  it.each([
    [1280, 0],
    [1280, 200],
    [358, 0],
    [358, 44],
    [288, 31],
  ])(
    'stand under their ticks or are led to them, and none touches the next: %i px, %i sold',
    (width, sold) => {
      const { labels } = labelsAt(width, marks, sold);
      expect(labels).toHaveLength(4);
      // The bar ends at 1.12 × 44, or at what is sold.
      const whole = Math.max(1.12 * 44, sold);
      for (const [place, { tick, end, middle, from, to }] of labels.entries()) {
        expect(tick).toBeCloseTo(((marks[place]?.pieces ?? 0) / whole) * width, 0);
        expect(end).toBe(middle);
        expect(from).toBeGreaterThanOrEqual(labels[place - 1]?.to ?? 0);
        expect(to).toBeLessThanOrEqual(width);
      }
    },
  );

  it('stand right under them where there is room', () => {
    const { labels } = labelsAt(1280, marks, 0);
    expect(labels.map(({ words }) => words)).toEqual([
      ['9 cash back'],
      ['22 pay'],
      ['31 all'],
      ['44 unsold too'],
    ]);
    for (const { tick, middle } of labels) expect(Math.abs(tick - middle)).toBeLessThan(1);
  });

  it('take two lines on a phone, with a tick once they are reached', () => {
    expect(labelsAt(358, marks, 22).labels.map(({ words }) => words)).toEqual([
      ['9 ✓', 'cash back'],
      ['22 ✓', 'pay'],
      ['31', 'all'],
      ['44', 'unsold too'],
    ]);
  });

  it('are told beneath it where they have no room', () => {
    const { labels, inWords } = labelsAt(120, marks, 9);
    expect(labels).toEqual([]);
    expect(inWords).toBe('9 cash back ✓22 pay31 all44 unsold too');
  });
});
