import { describe, expect, it } from 'vitest';
import { nextRedo, nextUndo, turnStep } from '@/lib/stored/history';
import type { Step } from '@/lib/stored/step';

const step = (seq: number, change: Partial<Step> = {}): Step => ({
  seq,
  turn: seq,
  label: `edit ${seq}`,
  tab: 'here',
  at: seq,
  state: 'done',
  revisions: {},
  ...change,
});

describe('nextUndo', () => {
  it('is the last step of this tab, even when another tab did one since', () => {
    expect(nextUndo([step(1), step(2), step(3, { tab: 'there' })], 'here')?.seq).toBe(2);
  });

  it('is the last step of all when this tab has done none, as after a restart', () => {
    expect(nextUndo([step(1, { tab: 'gone' }), step(2, { tab: 'gone' })], 'here')?.seq).toBe(2);
  });

  it('passes over steps that are undone or lost', () => {
    expect(nextUndo([step(1), step(2, { state: 'undone' }), step(3, { state: 'lost' })], 'here')?.seq).toBe(
      1,
    );
  });

  it('is nothing in an empty history', () => {
    expect(nextUndo([], 'here')).toBeNull();
  });
});

describe('nextRedo', () => {
  it('is the step that was undone last', () => {
    const undone = [step(4, { state: 'undone', turn: 9 }), step(5, { state: 'undone', turn: 8 })];
    expect(nextRedo([step(1), ...undone], 'here')?.seq).toBe(4);
  });

  it('leaves alone what another tab has undone', () => {
    expect(nextRedo([step(1), step(2, { tab: 'there', state: 'undone' })], 'here')).toBeNull();
  });

  it('goes on after a restart with what was undone before it', () => {
    expect(nextRedo([step(2, { tab: 'gone', state: 'undone' })], 'here')?.seq).toBe(2);
  });
});

describe('turnStep', () => {
  it('makes a step this tab’s own, the latest, and closed to further typing', () => {
    const steps = [step(1, { tab: 'gone', coalesceKey: 'name' }), step(2)];
    const turned = turnStep(steps, step(1, { tab: 'gone', coalesceKey: 'name' }), {
      state: 'undone',
      tab: 'here',
      revisions: { 'job-1': 5 },
    });
    expect(turned).toEqual(step(1, { turn: 3, state: 'undone', revisions: { 'job-1': 5 } }));
  });
});
