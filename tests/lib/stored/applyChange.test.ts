import { describe, expect, it } from 'vitest';
import { applyChange } from '@/lib/stored/applyChange';

const rules = { fits: () => true, revives: true };
const live = (body: unknown) => ({ version: 1, deleted: false, body });
const dead = (body: unknown) => ({ version: 1, deleted: true, body });

describe('applyChange', () => {
  it('applies only what changed to a document that moved on', () => {
    const change = { before: live({ a: 1, b: 1 }), after: live({ a: 2, b: 1 }) };
    expect(applyChange(change, live({ a: 1, b: 9 }), rules)).toEqual({
      after: live({ a: 2, b: 9 }),
      conflicts: [],
    });
  });

  it('deletes what is there now, not what was there', () => {
    const change = { before: live({ a: 1 }), after: dead({ a: 1 }) };
    expect(applyChange(change, live({ a: 5 }), rules).after).toEqual(dead({ a: 5 }));
  });

  it('brings a document back that was deleted while a field of it was typed, and tells', () => {
    const change = { before: live({ a: 1 }), after: live({ a: 2 }) };
    expect(applyChange(change, dead({ a: 1 }), rules)).toEqual({ after: live({ a: 2 }), conflicts: [[]] });
  });

  it('leaves a deleted document deleted when an older edit of it is undone', () => {
    const change = { before: live({ a: 1 }), after: live({ a: 2 }) };
    expect(applyChange(change, dead({ a: 1 }), { ...rules, revives: false }).after).toEqual(dead({ a: 2 }));
  });

  it('takes its own body whole where the two together could not be read', () => {
    const change = { before: live({ a: 1, b: 1 }), after: live({ a: 2, b: 1 }) };
    const applied = applyChange(change, live({ a: 1, b: 9 }), { ...rules, fits: () => false });
    expect(applied).toEqual({ after: live({ a: 2, b: 1 }), conflicts: [[]] });
  });

  it('tells when a new document meets another under its id', () => {
    const applied = applyChange({ before: null, after: live({ a: 1 }) }, live({ a: 2 }), rules);
    expect(applied).toEqual({ after: live({ a: 1 }), conflicts: [[]] });
  });
});
