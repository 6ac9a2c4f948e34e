import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

/** The flat press takes 1,400 W and the printer 15 W; `others` make up the rest. */
const circuit = (volts: number, amps: number, watts: number) =>
  clubWith({ 'workshop.circuit': { volts, amps, otherWatts: Math.max(0, watts - 1415) } });

// NFPA 70, continuous load: 80 % of 15 A × 120 V is 1,440 W, of 20 A × 120 V is 1,920 W.
// BS 1362: 13 A at 230 V carry 2,990 W, of which 80 % are 2,392 W.
describe('ELE-01 holds the circuit to four fifths of its breaker', () => {
  it.each([
    [120, 15, 1440, 'pass'],
    [120, 15, 1441, 'caution near'],
    [120, 15, 1800, 'caution near'],
    [120, 15, 1801, 'stop over'],
    [120, 20, 1920, 'pass'],
    [120, 20, 1921, 'caution near'],
    [120, 20, 2400, 'caution near'],
    [120, 20, 2401, 'stop over'],
    [230, 13, 2392, 'pass'],
    [230, 13, 2393, 'caution near'],
    [230, 13, 2990, 'caution near'],
    [230, 13, 2991, 'stop over'],
  ])('%d V × %d A under %d W: %s', (volts, amps, watts, expected) => {
    const input = circuit(volts, amps, watts);
    expect(verdict(input, 'ELE-01')).toBe(expected);
    expect(checkJob(input).checked === null).toBe(expected.startsWith('stop'));
  });

  it('is never waived over the breaker', () => {
    expect(told(circuit(120, 15, 3000), 'ELE-01')[0]?.waivable).toBe(false);
  });

  it('moves the others to another circuit where that is enough', () => {
    const input = circuit(120, 20, 3000);
    expect(verdict(mended(input, told(input, 'ELE-01')[0]), 'ELE-01')).toBe('pass');
    expect(
      told(clubWith({ 'workshop.circuit': { volts: 100, amps: 10, otherWatts: 500 } }), 'ELE-01')[0]?.fix,
    ).toBeNull();
  });

  it.each([
    [null, 'pass'],
    [true, 'pass'],
    [false, 'caution shared'],
  ])('without its figures the maker’s answer counts: %s is %s', (ownCircuit, expected) => {
    const input = clubWith({ 'workshop.circuit': null, 'workshop.habits.ownCircuit': ownCircuit });
    expect(verdict(input, 'ELE-01')).toBe(expected);
  });
});

describe('SAF-01 asks for air', () => {
  it.each([
    [true, 'pass'],
    [null, 'pass'],
    [false, 'caution closed'],
  ])('ventilated %s: %s', (ventilated, expected) => {
    const input = clubWith({ 'workshop.room.ventilated': ventilated });
    expect(verdict(input, 'SAF-01')).toBe(expected);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'SAF-01')[0]), 'SAF-01')).toBe('pass');
  });

  it('stops an oven that cooks food, whatever the reason', () => {
    const waiver = { finding: 'SAF-01', placementId: null, lineId: null, reason: 'Only this once.' };
    const input = clubWith({ 'workshop.room.foodOvenUsed': true, 'job.waivers': [waiver] });
    expect(verdict(input, 'SAF-01')).toBe('stop foodOven');
    expect(checkJob(input).checked).toBeNull();
    expect(verdict(mended(input, told(input, 'SAF-01')[0]), 'SAF-01')).toBe('pass');
  });
});

describe('LAW-01 keeps the sewn label', () => {
  it.each([
    ['kept', 'pass'],
    ['covered', 'stop covered'],
    ['removed', 'stop removed'],
  ])('%s: %s', (sewnLabel, expected) => {
    expect(verdict(clubWith({ 'job.sewnLabel': sewnLabel }), 'LAW-01')).toBe(expected);
  });

  it.each([
    [null, 'pass'],
    ['kept', 'pass'],
    ['covered', 'stop covered'],
    ['removed', 'stop removed'],
  ])('goes by the workshop where the job does not say: %s is %s', (habit, expected) => {
    const input = clubWith({ 'job.sewnLabel': 'unknown', 'workshop.habits.sewnLabel': habit });
    expect(verdict(input, 'LAW-01')).toBe(expected);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'LAW-01')[0]), 'LAW-01')).toBe('pass');
  });

  it('does not look for one on a mug', () => {
    expect(verdict(mugsWith({ 'job.sewnLabel': 'removed' }), 'LAW-01')).toBe('pass');
  });
});

// CPSIA 2008: goods meant primarily for children of 12 or younger.
it.each([
  [true, 'caution meant'],
  [false, 'pass'],
  [null, 'pass'],
])('LAW-02 warns about goods for children: %s is %s', (forChildren, expected) => {
  expect(verdict(clubWith({ 'blank:white-shirt.forChildren': forChildren }), 'LAW-02')).toBe(expected);
});

it.each([
  ['added', 'pass'],
  ['inside', 'pass'],
  ['none', 'pass'],
  [null, 'caution'],
])('LAW-05 asks how tax is handled: %s is %s', (taxMode, expected) => {
  expect(verdict(clubWith({ 'workshop.channels.0.taxMode': taxMode }), 'LAW-05')).toBe(expected);
});
