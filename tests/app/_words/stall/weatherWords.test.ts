import { describe, expect, it } from 'vitest';
import {
  certainly,
  dayOfWeather,
  unlessSure,
  weatherLabel,
  whenWeather,
} from '@/app/_words/stall/weatherWords';

const weathers = ['dry', 'showers', 'wet'].map((name) => ({ id: `the ${name}`, name }));
const label = (weights: readonly number[], ...ids: readonly string[]) =>
  weatherLabel(
    { weather: ids.join(', '), weatherIds: ids.map((id) => `the ${id}`) },
    { days: weights.map((weight) => ({ weight })), weathers },
  );

describe('a weather of several days', () => {
  it.each([
    [[1], ['wet'], 'wet'],
    [[1, 1], ['wet', 'wet'], 'wet on both days'],
    [[1, 1, 2], ['showers', 'showers', 'showers'], 'showers on all 3 days'],
    // Days of one weight: either may be the first.
    [[1, 1], ['dry', 'wet'], 'dry and wet'],
    [[1, 2], ['wet', 'dry'], 'wet, then dry'],
  ] as const)('of weights %j in %j is %s', (weights, ids, told) => {
    expect(label(weights, ...ids)).toBe(told);
  });

  it('that the day does not have any more is called as the sums called it', () => {
    expect(label([1, 1], 'dry', 'snow')).toBe('dry, snow');
  });
});

describe('a sentence of a weather', () => {
  it('tells how a day is apart from what comes', () => {
    expect(whenWeather('wet')).toBe('when it is wet');
    expect(whenWeather('Rainy')).toBe('when it is Rainy');
    expect(whenWeather('showers on both days')).toBe('with showers on both days');
    expect(unlessSure('wet')).toBe('unless it is sure to be wet');
    expect(unlessSure('showers')).toBe('unless it is sure to bring showers');
  });

  it('is of a day, or of both', () => {
    expect(dayOfWeather({ label: 'wet', days: 1 })).toBe('a day that is wet');
    expect(dayOfWeather({ label: 'showers', days: 1 })).toBe('a day of showers');
    expect(dayOfWeather({ label: 'wet on both days', days: 2 })).toBe('wet on both days');
    expect(certainly({ label: 'wet', days: 1 })).toBe('on a day that is certainly wet');
    expect(certainly({ label: 'showers', days: 1 })).toBe('on a day that is sure to bring showers');
    expect(certainly({ label: 'showers on both days', days: 2 })).toBe('certainly showers on both days');
  });
});
