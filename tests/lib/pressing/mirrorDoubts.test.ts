import { expect, it } from 'vitest';
import { mirrorDoubts } from '@/lib/pressing/mirrorDoubts';

const pressed = (...faults: readonly ('reversed' | 'ghost')[]) =>
  faults.map((fault) => ({ body: { jobId: 'club', fault } }));
const checked = (reversed: number, jobId = 'club') => ({
  body: { step: { what: 'mirrorChecked' as const, jobId, reversed } },
});

it('asks for the mirror of a job after a reversed print, and after no other fault', () => {
  expect(mirrorDoubts([{ pressings: pressed('ghost'), steps: [] }])).toEqual([]);
  expect(mirrorDoubts([{ pressings: pressed('reversed', 'ghost', 'reversed'), steps: [] }])).toEqual([
    { jobId: 'club', pieces: 2, reversed: 2 },
  ]);
});

it('is quiet once the mirror was looked at in whichever run, until one is reversed again', () => {
  const first = { pressings: pressed('reversed'), steps: [] };
  expect(mirrorDoubts([first, { pressings: [], steps: [checked(1)] }])).toEqual([]);
  expect(mirrorDoubts([first, { pressings: [], steps: [checked(1, 'other')] }])).toHaveLength(1);
  expect(mirrorDoubts([first, { pressings: pressed('reversed'), steps: [checked(1)] }])).toEqual([
    { jobId: 'club', pieces: 1, reversed: 2 },
  ]);
});

it('asks once more where two devices each noted one and each checked, whatever their clocks said', () => {
  const one = { pressings: pressed('reversed'), steps: [checked(1)] };
  expect(mirrorDoubts([one, one])).toEqual([{ jobId: 'club', pieces: 1, reversed: 2 }]);
  expect(mirrorDoubts([one, { ...one, steps: [checked(2)] }])).toEqual([]);
});
