// @vitest-environment jsdom
import { cleanup, render } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { StairChart } from '@/app/_charts/StairChart';
import type { StairsToDraw } from '@/app/_charts/stairsToDraw';

afterEach(cleanup);

/* With a letter of 10 px: 24 px beside figures of three letters, 6 px at the end; 20 px above, 29 beneath.
   So a plot of 1,000 × 400 px for eleven orders: 100 px a piece, and 1 px a unit of money up to 400. */
const LEFT = 24;
const TOP = 20;
const stairs: StairsToDraw = {
  points: Array.from({ length: 11 }, (_, index) => ({
    n: index + 1,
    pays: (index + 1) * 30,
    need: 100 + index * 20,
    fullCost: 50 + index * 10,
  })),
  held: [],
  falls: [],
  job: null,
};

function drawn(more: Partial<StairsToDraw> = {}) {
  const { container } = render(
    <StairChart
      stairs={{ ...stairs, ...more }}
      widthPx={1000 + LEFT + 6}
      heightPx={400 + TOP + 29}
      letterPx={10}
      upTitle="order total, USD"
      acrossTitle="shirts in the order"
      tick={(value) => `${value}`}
    />,
  );
  const all = (selector: string) => [...container.querySelectorAll(selector)];
  const words = all('text').map((one) => one.textContent);
  return { all, words };
}

const placeOf = (line: Element | undefined) =>
  ['x1', 'y1', 'x2', 'y2'].map((name) => Math.round(Number(line?.getAttribute(name))));

describe('the staircase of order totals', () => {
  it('lies on two linear axes with nothing at the bottom, and names them in words', () => {
    const { all, words } = drawn();
    const paths = all('.recharts-line-curve').map((path) => path.getAttribute('d'));
    // What must be brought, then the list: 100 and 30 for one piece of 400 at most.
    expect(paths[0]).toMatch(/^M24,320L124,300/);
    expect(paths[1]).toMatch(/^M24,390L124,360L224,330/);
    expect(words).toEqual(expect.arrayContaining(['order total, USD', 'shirts in the order', '400', '11']));
  });

  it('draws what is held level to the first order that pays as much', () => {
    const { all } = drawn({ held: [{ from: 3, to: 5, pays: 180, words: '180' }] });
    const held = all('.recharts-reference-line-line').find((one) => one.getAttribute('stroke-width') === '6');
    expect(placeOf(held)).toEqual([224, 240, 524, 240]);
  });

  it('hatches a fall from its first order to the larger one that pays less', () => {
    const { all, words } = drawn({ falls: [{ from: 4, cheaperAt: 6, words: '−13' }] });
    const [fall] = all('.recharts-reference-area-rect');
    expect(fall?.getAttribute('fill')).toMatch(/^url\(#/);
    expect(fall?.getAttribute('d')).toMatch(/^M 324,20 h 200 v 400 h -200/);
    expect(words).toContain('−13');
  });

  it('sets the flag of this job where it stands, and leaves room for it above', () => {
    const { all, words } = drawn({ job: { n: 8, total: 500, words: 'this job' } });
    expect(words).toContain('500');
    const [flag] = all('circle');
    expect([flag?.getAttribute('cx'), flag?.getAttribute('cy')]).toEqual(['724', '20']);
  });
});
