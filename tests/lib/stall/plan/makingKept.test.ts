import { describe, expect, it } from 'vitest';
import { Grid } from '@/lib/grid/evaluateGrid';
import { MakingKept } from '@/lib/stall/plan/costs/makingKept';
import { planStall } from '@/lib/stall/plan/planStall';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import type { StallDay } from '@/shared/schemas/stallDay';
import { fairAsked, fairWith } from '@/tests/fixtures/fairAsked';
import { largeFair } from '@/tests/fixtures/largeFair';

/** Counts how often the grid is asked. */
class CountedGrid extends Grid {
  asked = 0;
  override evaluate(...given: Parameters<Grid['evaluate']>): ReturnType<Grid['evaluate']> {
    this.asked += 1;
    return super.evaluate(...given);
  }
}

/** The first of the goods held at so many. */
const holdingFirst = (bring: number): StallDay['held'] =>
  fairAsked.stallDay.held.map((one, at) => (at === 0 ? { ...one, bring } : one));

function asker() {
  const grid = new CountedGrid();
  const kept = new MakingKept();
  return (asked: StallAsked) => {
    const before = grid.asked;
    const answer = planStall(asked, grid, kept);
    return { answer, times: grid.asked - before };
  };
}

const unkept = (asked: StallAsked) => planStall(asked, new Grid());

describe('what jobs cost, kept from one question to the next', () => {
  it('puts only the job whose numbers differ through the grid, and once', () => {
    const ask = asker();
    ask(fairAsked);
    expect(ask(fairAsked).times).toBe(0);
    // Shirts held at 17 instead: their batch once for the maker's numbers; the advice and all mugs stand.
    expect(ask(fairWith({ held: holdingFirst(17) })).times).toBe(1);
    expect(ask(fairAsked).times).toBe(0);
  });

  it('gives the plan that is made without it, number by number', () => {
    const ask = asker();
    for (const bring of [4, 17, 0, 4]) {
      const asked = fairWith({ held: holdingFirst(bring) });
      expect(ask(asked).answer).toEqual(unkept(asked));
    }
  });

  it('forgets a job whose documents change', () => {
    const ask = asker();
    ask(fairAsked);
    const { workshop } = fairAsked;
    const { wage } = workshop.rates;
    if (wage === null) throw new RangeError('the worked fair pays its maker nothing');
    const rates = { ...workshop.rates, wage: { ...wage, value: wage.value + 2 } };
    const dearer = { ...fairAsked, workshop: { ...workshop, rates } };
    expect(ask(dearer).answer).toEqual(unkept(dearer));
    expect(ask(fairAsked).answer).toEqual(unkept(fairAsked));
  });
});

describe('a fair of 288 goods', () => {
  it('is planned within room and money', () => {
    const { answer } = asker()(largeFair());
    expect(answer.kind).toBe('planned');
    if (answer.kind !== 'planned') return;
    expect(answer.goods).toHaveLength(288);
    expect(answer.advice.pieces).toBeLessThanOrEqual(500);
    expect(answer.advice.cashBeforeWithPackaging).toBeLessThanOrEqual(4000);
    expect(answer.advice.over).toEqual([]);
  });
});
