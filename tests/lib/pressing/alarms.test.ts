import { describe, expect, it } from 'vitest';
import { foldPressings } from '@/lib/pressing/foldPressings';
import { alarmRules, falseAlarmChance, scrapAlarms } from '@/lib/pressing/scrapAlarms';
import { faultTwiceRunning } from '@/lib/pressing/stopRule';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import { clubStandard, pieceOf, pressedOn } from '@/tests/fixtures/clubPressing';

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

  it('goes by when pieces were lifted, whichever of two devices noted them and whatever came first here', () => {
    const ghost = pieceOf('M', 'scrap', { fault: 'ghost' });
    const on = (device: string, minute: number, body: Pressing) =>
      pressedOn([body], device, minute).map((one) => ({ ...one, count: 1 }));
    const fold = (...pieces: ReturnType<typeof on>[]) =>
      faultTwiceRunning(foldPressings(clubStandard, pieces.flat(), []).turns[0]?.pressed ?? []);
    const mine = [on('pressphone1', 1, ghost), on('pressphone1', 3, ghost)] as const;
    const between = on('pressphone2', 2, pieceOf('M'));
    // The other device's good one was lifted between both, though it comes last.
    expect(fold(...mine, between)).toBeNull();
    expect(fold(between, mine[1], mine[0])).toBeNull();
    expect(fold(on('pressphone2', 2, ghost), mine[0])).toBe('ghost');
    // Noted last, for nobody had said why; lifted before a good one.
    const late = on('pressphone2', 9, pieceOf('M', 'scrap', { fault: 'ghost', pressedAt: 90_000 }));
    expect(fold(mine[0], late)).toBe('ghost');
    expect(fold(mine[0], late, on('pressphone1', 2, pieceOf('M')))).toBeNull();
  });

  it('takes a second with a fault for a fault', () => {
    expect(
      faultTwiceRunning(
        pressedOn([pieceOf('M', 'second', { fault: 'pale' }), pieceOf('M', 'scrap', { fault: 'pale' })]),
      ),
    ).toBe('pale');
  });
});
