import { describe, expect, it } from 'vitest';
import {
  certainly,
  dayOfWeather,
  unlessSure,
  weatherLabel,
  whenWeather,
} from '@/app/_words/stall/weatherWords';
import { addDays } from '@/shared/days';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const weathers = ['dry', 'showers', 'wet'].map((name) => ({ id: `the ${name}`, name }));
const label = (weights: readonly number[], ...ids: readonly string[]) =>
  weatherLabel(
    { weather: ids.join(', '), weatherIds: ids.map((id) => `the ${id}`) },
    { days: weights.map((weight, at) => ({ day: addDays(TEST_DAY, at), weight })), weathers },
  );

describe('a weather of several days', () => {
  it.each([
    [[1], ['wet'], 'wet'],
    [[1, 1], ['wet', 'wet'], 'wet on both days'],
    [[1, 1, 2], ['showers', 'showers', 'showers'], 'showers on all 3 days'],
    // Days of one weight: either may be the first.
    [[1, 1], ['dry', 'wet'], 'dry and wet'],
    [[1, 2], ['wet', 'dry'], 'wet, then dry'],
    [[1, 2, 3], ['dry', 'wet', 'dry'], 'dry, then wet, then dry'],
    // Either of the first two days may be the dry one; the last is dry in both.
    [[1, 1, 2], ['dry', 'wet', 'dry'], 'dry and wet, then dry'],
    [[2, 1, 1], ['dry', 'showers', 'wet'], 'dry, then showers and wet'],
    [[1, 1, 2], ['wet', 'wet', 'dry'], 'wet, then wet, then dry'],
    // The second day has a weight of its own, and the others may change places.
    [[1, 2, 1], ['dry', 'showers', 'wet'], 'dry and wet on days 1 and 3, showers on day 2'],
    [[1, 2, 1, 2], ['dry', 'wet', 'wet', 'wet'], 'dry and wet on days 1 and 3, wet on days 2 and 4'],
    [[1, 2, 1], ['dry', 'wet', 'dry'], 'dry, then wet, then dry'],
  ] as const)('of weights %j in %j is %s', (weights, ids, told) => {
    expect(label(weights, ...ids)).toBe(told);
  });

  it('is told by its days as they follow one another, in whatever order they were typed', () => {
    // Typed last, the first day weighs 2: its weather is the first.
    const days = [2, 3, 1].map((at) => ({ day: addDays(TEST_DAY, at), weight: at === 1 ? 2 : 1 }));
    const weatherIds = ['the dry', 'the showers', 'the wet'];
    expect(weatherLabel({ weather: '', weatherIds }, { days, weathers })).toBe('dry, then showers and wet');
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
    expect(whenWeather('wet on both days')).toBe('when it is wet on both days');
    expect(whenWeather('dry, then wet')).toBe('when it is dry, then wet');
    expect(whenWeather('partly cloudy')).toBe('when it is partly cloudy');
    expect(whenWeather('rainy all day')).toBe('when it is rainy all day');
    expect(whenWeather('rainy later')).toBe('when it is rainy later');
    // Heavy is the rain, and not the day.
    expect(whenWeather('heavy rain')).toBe('with heavy rain');
    expect(whenWeather('sunny spells and dry')).toBe('with sunny spells and dry');
    expect(dayOfWeather({ label: 'Heavy rain', days: 1 })).toBe('a day of Heavy rain');
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
