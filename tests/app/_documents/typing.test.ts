import { describe, expect, it } from 'vitest';
import { typing } from '@/app/_documents/typing';
import { workspaceActions } from '@/app/_documents/workspaceActions';

/** Keys under which edits of one field would become one step of undo. */
function keysOf(acts: readonly (() => void)[]): readonly (string | undefined)[] {
  const keys: (string | undefined)[] = [];
  const actions = workspaceActions({
    edit: (_label, _edits, key) => {
      keys.push(key);
      return { state: 'shown' };
    },
    note: () => ({ state: 'shown' }),
  });
  for (const act of acts) {
    act();
    actions.setField({ kind: 'job', id: 'job' }, 'Price', ['lines', 0, 'askedPrice'], 1);
  }
  return keys;
}

describe('steps of undo in one field', () => {
  it('are one for a number typed letter by letter', () => {
    const keys = keysOf([
      () => typing.goes('1', '16'),
      () => typing.goes('16', '16.'),
      () => typing.goes('16.', '16'),
    ]);
    expect(new Set(keys).size).toBe(1);
  });

  it('are two where a number is typed and then emptied at once', () => {
    expect(new Set(keysOf([() => typing.goes('', '1'), () => typing.goes('16.49', '')])).size).toBe(2);
  });

  it('are two where the field was left in between', () => {
    expect(new Set(keysOf([() => typing.goes('', '1'), () => typing.ends()])).size).toBe(2);
  });
});
