// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { PiecesRuler } from '@/app/_stallDay/head/PiecesRuler';
import type { StallPlan } from '@/app/_stallDay/stallOnScreen';
import { bandsOf, toldTicks } from '@/app/_stallDay/weather/bandsOf';
import { WeatherBands } from '@/app/_stallDay/weather/WeatherBands';
import { likeliestWords } from '@/app/_words/stall/stallPlanWords';
import { fairAnswer } from '@/tests/fixtures/stallAnswer';

afterEach(cleanup);

/** The fair with outcomes of these names, each half as likely as the one before it; profits 900, 800 and so on. */
function fairWith(names: readonly string[]): StallPlan {
  const [like] = fairAnswer.mine.outcomes;
  if (like === undefined) throw new Error('the fair has no outcomes');
  const outcomes = names.map((weather, at) => ({
    ...{ ...like, weather, weatherIds: [`w${at}`], chance: 0.5 ** (at + 1), profit: 900 - 100 * at },
  }));
  const advised = outcomes.map((one) => ({ ...one, profit: one.profit + 10 }));
  return {
    ...fairAnswer,
    mine: { ...fairAnswer.mine, outcomes },
    advice: { ...fairAnswer.advice, outcomes: advised },
  };
}
const NINE = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i'];

/** Of one day: its weathers are called as the sums call them. */
const oneDay = { days: [], weathers: [] };

describe('the bands of the weathers', () => {
  it('are the eight likeliest, and say of how many', () => {
    const { bands, all } = bandsOf(fairWith(NINE), ({ weather }) => weather);
    expect(bands.map(({ weather }) => weather)).toEqual(NINE.slice(0, 8));
    expect(all).toBe(9);
    render(<WeatherBands stallDay={oneDay} plan={fairWith(NINE)} number={String} share={String} />);
    expect(screen.getByText('height: how likely, the 8 likeliest of 9 weathers')).toBeVisible();
  });

  it('say nothing of others where all are drawn', () => {
    render(
      <WeatherBands stallDay={oneDay} plan={fairWith(NINE.slice(0, 8))} number={String} share={String} />,
    );
    expect(screen.getByText('height: how likely')).toBeVisible();
  });

  it('keep two weathers of one name apart', () => {
    const { bands } = bandsOf(fairWith(['rain', 'rain']), ({ weather }) => weather);
    expect(bands.map(({ mine, advice }) => [mine, advice])).toEqual([
      [900, 910],
      [800, 810],
    ]);
  });

  it.each([
    // 240 px are 60 from tick to tick.
    ['all where they have room', [-1000, -500, 0, 500, 1000], 60, 240, [-1000, -500, 0, 500, 1000]],
    ['every second where they do not', [-1000, -500, 0, 500, 1000], 61, 240, [-1000, 0, 1000]],
    ['always zero', [-500, 0, 500, 1000], 100, 180, [0, 1000]],
    ['zero alone', [-500, 0, 500], 300, 100, [0]],
  ])('tell amounts beneath them: %s', (_, ticks, labelPx, rowPx, told) => {
    expect(toldTicks(ticks, labelPx, rowPx)).toEqual(told);
  });
});

describe('the ruler of pieces', () => {
  it('says which weathers stand above it where those are not all', () => {
    const weathers = [10, 30, 50, 70].map((value) => ({ id: `w${value}`, label: 'dry', value }));
    render(
      <PiecesRuler
        breakEvens={[]}
        weathers={weathers}
        note={(shown) => likeliestWords(shown, 9)}
        format={String}
      />,
    );
    expect(screen.getByText('pieces sold, the 4 likeliest of 9 weathers')).toBeVisible();
  });

  it('is without those whose names have no room, so that none is named beneath and not on the bar', () => {
    const days = ['dry on both days', 'dry and showers', 'dry and wet', 'showers on both days'];
    const weathers = days.map((label, at) => ({ id: label, label, value: 70 - 10 * at }));
    const { container, rerender } = render(
      <PiecesRuler
        breakEvens={[]}
        weathers={weathers}
        note={(shown) => likeliestWords(shown, 6)}
        format={String}
      />,
    );
    // Two names of some 180 px stand in 480, three do not.
    expect(screen.getByText('pieces sold, the 2 likeliest of 6 weathers')).toBeVisible();
    const named = () => [...container.querySelectorAll('svg text')].map(({ textContent }) => textContent);
    expect(named()).toEqual(['dry and showers 60', 'dry on both days 70']);
    // Where these are all there are, none goes.
    rerender(<PiecesRuler breakEvens={[]} weathers={weathers} note={() => null} format={String} />);
    expect(named()).toEqual([]);
    expect(screen.getAllByRole('listitem')).toHaveLength(4);
  });
});
