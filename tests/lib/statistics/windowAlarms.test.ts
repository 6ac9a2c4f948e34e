import { describe, expect, it } from 'vitest';
import { atLeast } from '@/lib/statistics/enoughGood';
import { blockAlarmChance } from '@/lib/statistics/windowAlarms';
import { rollingAlarmChance } from '@/tests/oracle/rollingAlarmChance';

const RULES = [
  { trials: 10, events: 2 },
  { trials: 20, events: 3 },
  { trials: 30, events: 4 },
] as const;

/** Every row of trials there is, one after the other, by its chance. */
function bruteRolling({ trials, events }: (typeof RULES)[number], chance: number, run: number): number {
  let spoken = 0;
  for (let row = 0; row < 2 ** run; row += 1) {
    const lost = Array.from({ length: run }, (_, at) => (row >> at) & 1);
    const speaks = lost.some(
      (_, at) => lost.slice(Math.max(0, at + 1 - trials), at + 1).filter((one) => one === 1).length >= events,
    );
    const many = lost.filter((one) => one === 1).length;
    if (speaks) spoken += chance ** many * (1 - chance) ** (run - many);
  }
  return spoken;
}

describe('chances of an alarm', () => {
  // 1 − 0.97^10 − 10 · 0.03 · 0.97^9 = 1 − 0.737424 − 0.228069 = 0.034507, by hand; the others as the trade tells them.
  it('in one completed block at 3 % are 3.5, 2.1 and 1.2 %', () => {
    const [ten, twenty, thirty] = RULES.map((rule) => blockAlarmChance(rule, 0.03));
    expect(ten).toBeCloseTo(0.034507, 6);
    expect(twenty).toBeCloseTo(0.021, 3);
    expect(thirty).toBeCloseTo(0.012, 3);
  });

  it('of 3 in 20 is 21 % where 8 % are truly spoiled', () => {
    expect(blockAlarmChance(RULES[1], 0.08)).toBeCloseTo(0.21, 2);
  });

  it.each([
    [77, [0.35, 0.15, 0.06]],
    [200, [0.69, 0.36, 0.18]],
  ])('of a window rolling over %d presses are as told', (run, told) => {
    for (const [at, rule] of RULES.entries())
      expect(Math.abs(rollingAlarmChance(rule, 0.03, run) - (told[at] ?? 0))).toBeLessThan(0.005);
  });

  it('of a rolling window are those of all rows of trials tried out', () => {
    for (const rule of [
      { trials: 4, events: 2 },
      { trials: 6, events: 3 },
      { trials: 3, events: 1 },
    ] as const) {
      for (const chance of [0.03, 0.3])
        expect(rollingAlarmChance(rule, chance, 13)).toBeCloseTo(bruteRolling(rule as never, chance, 13), 12);
    }
  });

  it('of a window no longer than the run is that of the block', () => {
    for (const rule of RULES)
      expect(rollingAlarmChance(rule, 0.05, rule.trials)).toBeCloseTo(blockAlarmChance(rule, 0.05), 12);
  });

  it('are certain or none at the ends', () => {
    expect(rollingAlarmChance({ trials: 10, events: 2 }, 0, 50)).toBe(0);
    expect(rollingAlarmChance({ trials: 10, events: 2 }, 1, 2)).toBe(1);
    expect(rollingAlarmChance({ trials: 2, events: 3 }, 0.5, 50)).toBe(0);
    expect(blockAlarmChance({ trials: 5, events: 2 }, 0)).toBe(0);
    expect(blockAlarmChance({ trials: 5, events: 2 }, 1)).toBe(1);
    expect(blockAlarmChance({ trials: 2, events: 3 }, 0.5)).toBe(0);
    expect(atLeast(5, -1, 0.5)).toBe(1);
    expect(atLeast(5, 6, 0.5)).toBe(0);
    // All but none of three, 1 − C(3,0)/8.
    expect(atLeast(3, 1, 0.5)).toBeCloseTo(7 / 8, 12);
  });
});
