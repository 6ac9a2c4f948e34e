import { expect, it } from 'vitest';
import { mirrorDoubts } from '@/lib/pressing/mirrorDoubts';

const pressed = (id: string, fault: 'reversed' | 'ghost' = 'reversed', jobId = 'club') => ({
  id,
  body: { jobId, fault },
});
const checked = (...pressingIds: string[]) => ({
  body: { step: { what: 'mirrorChecked' as const, jobId: 'club', pressingIds } },
});

it('asks for the mirror of a job after a reversed print, and after no other fault', () => {
  expect(mirrorDoubts([{ pressings: [pressed('p-1', 'ghost')], steps: [] }])).toEqual([]);
  const pressings = [
    pressed('p-1'),
    pressed('p-2', 'ghost'),
    pressed('p-3'),
    pressed('p-4', 'reversed', 'mugs'),
  ];
  expect(mirrorDoubts([{ pressings, steps: [] }])).toEqual([
    { jobId: 'club', pressingIds: ['p-1', 'p-3'] },
    { jobId: 'mugs', pressingIds: ['p-4'] },
  ]);
});

it('is quiet once the mirror was looked at in whichever run, until one is reversed again', () => {
  const first = { pressings: [pressed('p-1')], steps: [] };
  const check = { pressings: [], steps: [checked('p-1')] };
  expect(mirrorDoubts([first, check])).toEqual([]);
  expect(mirrorDoubts([first, check, { pressings: [pressed('p-7')], steps: [] }])).toEqual([
    { jobId: 'club', pressingIds: ['p-7'] },
  ]);
});

it('asks for a later one although one that was checked is undone or named otherwise since', () => {
  // p-1 was undone, p-2 is a ghost under another id now; what was said of them answers nothing of p-9.
  const run = {
    pressings: [pressed('p-3', 'ghost'), pressed('p-9')],
    steps: [checked('p-1'), checked('p-2')],
  };
  expect(mirrorDoubts([run])).toEqual([{ jobId: 'club', pressingIds: ['p-9'] }]);
});

it('is quiet where two devices each noted one and each checked it, and counts what both hold once', () => {
  const one = { pressings: [pressed('a-1'), pressed('b-1')], steps: [checked('a-1')] };
  expect(mirrorDoubts([one, one])).toEqual([{ jobId: 'club', pressingIds: ['b-1'] }]);
  expect(mirrorDoubts([one, { pressings: [], steps: [checked('b-1')] }])).toEqual([]);
});
