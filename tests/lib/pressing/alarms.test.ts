import { describe, expect, it } from 'vitest';
import { alarmRules, falseAlarmChance, scrapAlarms } from '@/lib/pressing/scrapAlarms';
import { faultTwiceRunning } from '@/lib/pressing/stopRule';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import { pieceOf, pressedOn } from '@/tests/fixtures/clubPressing';

/** A row of presses: a dot came good, an x was lost. */
const row = (marks: string) =>
  pressedOn([...marks].map((mark) => pieceOf('M', mark === 'x' ? 'scrap' : 'good')));
const told = (marks: string) =>
  scrapAlarms(row(marks)).map(({ rule, from, at, isOfLastBlock }) => [
    rule.act,
    from,
    at.count,
    isOfLastBlock,
  ]);
const faults = (...named: Pressing['fault'][]) =>
  faultTwiceRunning(
    pressedOn(named.map((fault) => pieceOf('M', fault === null ? 'good' : 'scrap', { fault }))),
  );

describe('scrapAlarms', () => {
  it('speaks up at the second of ten, and not for one in each of two blocks', () => {
    expect(told('.x......x.')).toEqual([['look', 0, 9, true]]);
    expect(told('.........xx.........')).toEqual([]);
  });

  it('judges every rule by its own blocks', () => {
    expect(told('x.........x.........x.........')).toEqual([]);
    expect(told('x.........x........x')).toEqual([
      ['look', 10, 20, true],
      ['stop', 0, 20, true],
    ]);
    expect(told('x.........x.........x........x')).toEqual([
      ['look', 20, 30, true],
      ['unproven', 0, 30, true],
    ]);
  });

  it('says which alarms are of a block that is over', () => {
    expect(told('xx.........')).toEqual([['look', 0, 2, false]]);
  });

  it('counts no second as lost', () => {
    expect(scrapAlarms(pressedOn([pieceOf('M', 'second'), pieceOf('M', 'second')]))).toEqual([]);
  });

  // The chances of one block at 3 %, as the trade tells them.
  it('bears the chance that belongs to the block', () => {
    expect(alarmRules.map((rule) => Math.round(falseAlarmChance(rule) * 1000) / 10)).toEqual([3.5, 2.1, 1.2]);
  });
});

describe('faultTwiceRunning', () => {
  it('names the fault of the last two', () => {
    expect(faults('pale', 'ghost', 'ghost')).toBe('ghost');
  });

  it('is quiet with a good one between, with another fault, with one that nobody named and with two different unnamed ones', () => {
    expect(faults('ghost', null, 'ghost')).toBeNull();
    expect(faults('ghost', 'pale')).toBeNull();
    expect(faults('ghost')).toBeNull();
    expect(faults('other', 'other')).toBeNull();
    expect(faultTwiceRunning(pressedOn([pieceOf('M', 'scrap'), pieceOf('M', 'scrap')]))).toBeNull();
  });

  it('takes a second with a fault for a fault', () => {
    expect(
      faultTwiceRunning(
        pressedOn([pieceOf('M', 'second', { fault: 'pale' }), pieceOf('M', 'scrap', { fault: 'pale' })]),
      ),
    ).toBe('pale');
  });
});
