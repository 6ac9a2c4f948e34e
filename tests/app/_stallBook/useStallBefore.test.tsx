// @vitest-environment jsdom
import '@/tests/app/_screens/stage';
import { act } from '@testing-library/react';
import { expect, it } from 'vitest';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { type StallBefore, useStallBefore } from '@/app/_stallBook/useStallBefore';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { enter, screenStore } from '@/tests/app/_screens/screens';

const fernL = { jobId: 'fair-shirts', lineId: 'fern', size: 'L' } as const;
const item = { kind: 'finished', ...fernL } as const;
const home = { place: { kind: 'home' }, grade: 'first' } as const;

const drawn: StallBefore[] = [];
function Probe({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  drawn.push(useStallBefore(workspace, SPRING_FAIR_ID));
  return <h1>Probe</h1>;
}

it('a key on a stall day reads neither stock nor closed days again, and a count reads the stock', async () => {
  await enter(<WithWorkspace>{(workspace) => <Probe workspace={workspace} />}</WithWorkspace>);
  const count = (quantity: number) =>
    act(() => {
      const body = { item, ...home, quantity };
      screenStore().actions.note('Count', [{ kind: 'stockCount', body }]);
    });
  count(12);
  const before = drawn.at(-1);
  expect(before?.atHome).toEqual([{ ...fernL, pieces: 12 }]);
  const times = drawn.length;
  act(() => {
    screenStore().actions.edit('Note', [
      { do: 'change', kind: 'stallDay', id: SPRING_FAIR_ID, to: (now) => ({ ...now, note: 'Bring tape.' }) },
    ]);
  });
  expect(drawn.length).toBeGreaterThan(times);
  for (const part of ['atHome', 'madeForDay', 'past', 'left'] as const) {
    expect(drawn.at(-1)?.[part]).toBe(before?.[part]);
  }
  count(9);
  expect(drawn.at(-1)?.atHome).toEqual([{ ...fernL, pieces: 9 }]);
});
