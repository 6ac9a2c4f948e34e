import { describe, expect, it } from 'vitest';
import { jobFacts } from '@/lib/drafts/jobFacts';
import { clubOrder } from '@/lib/examples/clubOrder';

const { job } = clubOrder('2026-11-25', '2026-12-11');

describe('jobFacts', () => {
  it('counts the pieces and spans the asked prices with their up-charges', () => {
    expect(jobFacts(job)).toEqual({ pieces: 37, asked: { from: 19, to: 21.5 } });
  });

  it('leaves out up-charges of sizes nobody ordered', () => {
    const lines = job.lines.map((line) => ({ ...line, quantities: [{ size: 'L', quantity: 2 }] }));
    expect(jobFacts({ lines })).toEqual({ pieces: 2, asked: { from: 19, to: 19 } });
  });

  it('has no price where none is decided', () => {
    const lines = job.lines.map((line) => ({ ...line, askedPrice: null }));
    expect(jobFacts({ lines }).asked).toBeNull();
  });
});
