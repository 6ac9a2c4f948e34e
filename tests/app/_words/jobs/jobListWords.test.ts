import { expect, it } from 'vitest';
import { findingWords } from '@/app/_words/findings/findingWords';
import { stoppedWords } from '@/app/_words/jobs/jobListWords';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { makeFinding } from '@/lib/findings/makeFinding';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const workshop = exampleWorkshop(TEST_DAY);
const why = makeFinding({
  id: 'QTY-02',
  severity: 'stop',
  variant: 'none',
  where: { document: 'job', path: ['lines', 0] },
  facts: { line: 'Shirts' },
});

it('a stopped job says why in the words of its finding, and a mark while these are being fetched', () => {
  const stopped = { kind: 'stopped', why } as const;
  expect(stoppedWords(stopped, findingWords, workshop)).toMatch(/Shirts/);
  expect(stoppedWords(stopped, null, workshop)).toBe('…');
});

it('a job whose sums give no number says so without them', () => {
  expect(stoppedWords({ kind: 'stopped', why: null }, null, workshop)).toBe('Its sums give no number.');
});
