// @vitest-environment jsdom
import { cleanup, render } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { BatchChart } from '@/app/_charts/BatchChart';
import type { MarkedBatch } from '@/app/_charts/BatchMark';

afterEach(cleanup);

/* A plot of 600 × 200 px from (40, 20) on: 1 to 64 pieces in six doublings of 100 px each, margins of −100 to
   100 % over 200 px. */
const rows = Array.from({ length: 64 }, (_, index) => ({
  n: index + 1,
  value: 1 - 2 / (index + 1),
  price: null,
  band: null,
  other: null,
}));
const looked: MarkedBatch = { kind: 'looked', n: 8, value: 0.75, words: 'this job, 8: 75 %' };

function drawn(marks: readonly MarkedBatch[] = [looked]) {
  const { container } = render(
    <BatchChart
      rows={rows}
      marks={marks}
      fullSheets={[4, 32]}
      scale={{ min: -1, max: 1, ticks: [-1, 0, 1] }}
      margins={{ left: 40, right: 10, top: 20, bottom: 30 }}
      to={64}
      widthPx={650}
      heightPx={250}
      letterPx={16}
      falls={false}
      upTitle="margin"
      lossTitle="loses money"
      acrossTitle="pieces in the batch"
      tick={(value) => `${value * 100}`}
    />,
  );
  const all = (selector: string) => [...container.querySelectorAll(selector)];
  return { all, words: all('text').map((one) => one.textContent) };
}

/** A path to a tenth of a pixel. */
const tenths = (d: string | null | undefined) =>
  (d ?? '').replace(/\d+\.\d+/g, (figure) => `${Math.round(Number(figure) * 10) / 10}`);

describe('the curve over batch sizes', () => {
  it('gives every doubling the same room, and names both axes in words', () => {
    const { all, words } = drawn();
    const line = all('.recharts-line-curve')
      .map((one) => one.getAttribute('d'))
      .find((d) => d !== null);
    // One piece at −100 %, two at 0, the fourth at 50 % on its second doubling.
    expect(tenths(line)).toMatch(/^M40,220L140,120L198.5,86.7L240,70L/);
    for (const word of ['margin', 'pieces in the batch', '1', '2', '6', '12', '24', '64'])
      expect(words).toContain(word);
  });

  it('hatches what loses money up to nothing, and says so', () => {
    const { all, words } = drawn();
    const [loss] = all('.recharts-reference-area-rect');
    expect(loss?.getAttribute('d')).toMatch(/^M 40,120 h 600 v 100 h -600/);
    expect(loss?.getAttribute('fill')).toMatch(/^url\(#/);
    expect(words).toContain('loses money');
  });

  it('marks the first full sheets in words and all of them by a tick', () => {
    const { all, words } = drawn();
    // Two doublings, 200 px, and five, 500 px, at the foot of the plot.
    expect(all('path').map((one) => tenths(one.getAttribute('d')))).toEqual(
      expect.arrayContaining(['M240 220v-8', 'M540 220v-8']),
    );
    expect(words.filter((word) => word === 'full sheets')).toHaveLength(1);
  });

  it('puts the handle on the batch looked at, above a line down to its quantity', () => {
    const { all, words } = drawn();
    const rings = all('circle').map((one) => ['cx', 'cy', 'r'].map((name) => one.getAttribute(name)));
    // A halo of 38 px and a handle of 26 px with its rim.
    expect(rings).toEqual([
      ['340', '45', '19'],
      ['340', '45', '11.5'],
    ]);
    expect(words).toContain('this job, 8: 75 %');
  });

  it('keeps a mark that lies beyond the drawing at its edge', () => {
    const { all } = drawn([{ ...looked, value: -7 }]);
    expect(all('circle')[0]?.getAttribute('cy')).toBe('220');
  });
});
