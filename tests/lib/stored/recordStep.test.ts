import { describe, expect, it } from 'vitest';
import { MOST_STEPS, type NewStep, recordStep } from '@/lib/stored/recordStep';
import type { Step } from '@/lib/stored/step';

const typing: NewStep = {
  label: 'Name',
  tab: 'here',
  at: 5000,
  coalesceKey: 'name',
  found: { 'job-1': 3 },
  revisions: { 'job-1': 4 },
  overwrote: false,
};
const before: Step = {
  seq: 8,
  turn: 8,
  label: 'Name',
  tab: 'here',
  at: 4500,
  state: 'done',
  coalesceKey: 'name',
  revisions: { 'job-1': 3 },
};

describe('recordStep', () => {
  it('goes on with the step before while the same field is typed', () => {
    expect(recordStep([before], typing, 8)).toEqual({
      step: { ...before, turn: 9, at: 5000, revisions: { 'job-1': 4 } },
      extended: true,
      dropped: [],
    });
  });

  it.each([
    ['another field', { coalesceKey: 'customer' }],
    ['no field is named', { coalesceKey: undefined }],
    ['more than a second passed', { at: 5501 }],
    ['the clock went back', { at: 4000 }],
    ['another tab wrote the document in between', { found: { 'job-1': 4 } }],
    ['another document', { found: { 'job-2': 3 } }],
    ['a value set elsewhere was overwritten', { overwrote: true }],
    ['another tab', { tab: 'there' }],
  ] as const)('starts a step of its own when %s', (_when, change) => {
    const { coalesceKey, ...edit } = { ...typing, ...change };
    const recorded = recordStep([before], coalesceKey === undefined ? edit : { ...edit, coalesceKey }, 8);
    expect(recorded).toMatchObject({ extended: false, step: { seq: 9 } });
  });

  it('drops what this tab had undone, and nothing another tab had', () => {
    const undone: Step = { ...before, seq: 9, turn: 9, state: 'undone' };
    const theirs: Step = { ...undone, seq: 10, turn: 10, tab: 'there' };
    expect(recordStep([before, undone, theirs], typing, 10)).toMatchObject({ extended: false, dropped: [9] });
  });

  it('drops the oldest step when there are too many', () => {
    const steps = Array.from({ length: MOST_STEPS }, (_, index) => ({
      ...before,
      seq: index + 1,
      turn: index + 1,
    }));
    const recorded = recordStep(steps, { ...typing, coalesceKey: 'customer' }, MOST_STEPS);
    expect(recorded).toMatchObject({ step: { seq: MOST_STEPS + 1 }, dropped: [1] });
  });

  it('numbers past rows that could not be read', () => {
    expect(recordStep([], typing, 41).step.seq).toBe(42);
  });
});
