import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findingWords } from '@/app/_words/findings/findingWords';
import { checkJob } from '@/lib/check/checkJob';
import { applyChanges } from '@/lib/findings/applyChanges';
import { resolveJob } from '@/lib/job/resolveJob';
import type { Finding } from '@/shared/finding';
import { isStanding } from '@/shared/finding';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { fromSchema } from '@/tests/fixtures/fromSchema';
import { linked } from '@/tests/fixtures/linked';
import { cases } from '@/tests/tools/cases';

const asDrawn: fc.Arbitrary<JobInput> = fromSchema(jobInputSchema).map((value) =>
  jobInputSchema.parse(value),
);
const anyInput = fc.oneof(
  { weight: 1, arbitrary: asDrawn },
  { weight: 3, arbitrary: asDrawn.map((input) => jobInputSchema.parse(linked(input))) },
);

describe('checkJob, on any documents that their schemas accept', () => {
  it('answers, orders stops before cautions before notes, and gives a licence only where no stop stands', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { findings, checked, resolved } = checkJob(input);
        const order = findings.map(({ severity }) => ['stop', 'caution', 'note'].indexOf(severity));
        expect(order).toEqual([...order].sort());
        expect(checked !== null).toBe(resolved !== null && !findings.some(isStanding));
      }),
      cases(1000),
    );
  }, 60_000);

  it('says the same of the same documents and leaves them as they were', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const before = structuredClone(input);
        expect(checkJob(before)).toEqual(checkJob(input));
        expect(input).toEqual(before);
      }),
      cases(200),
    );
  }, 60_000);

  it('puts every finding into words without a gap', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        for (const finding of checkJob(input).findings) {
          const words = Object.values(findingWords(finding, input.workshop)).join(' ');
          expect(words).not.toMatch(/undefined|NaN|Infinity|\[object/);
        }
      }),
      cases(300),
    );
  }, 60_000);

  it('offers buttons that leave readable documents, and nothing as grave in the same place', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        for (const finding of checkJob(input).findings) {
          if (finding.fix === null) continue;
          const after = jobInputSchema.parse(applyChanges(input, finding.fix.changes));
          const left = checkJob(after).findings.filter((other) => isSamePlace(other, finding));
          expect(left.filter(({ severity }) => severity === 'stop' || severity === finding.severity)).toEqual(
            [],
          );
        }
      }),
      cases(100),
    );
  }, 120_000);

  it('never counts a missing rate as 0: it takes the typical value, dated and marked', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { resolved, usedRates, findings } = resolveJob(input);
        const missing = usedRates.filter(({ rate }) => rate === null);
        for (const { typical, needed, where } of missing) {
          // Rest is not always allowed for, and a machine that cost nothing is not taken to fetch anything.
          const mayBeNothing = ['restAllowance', 'resale'].includes(String(where.path.at(-1)));
          expect(typical.typical === null || typical.typical > 0 || mayBeNothing).toBe(true);
          const told = findings.some(
            (finding) => finding.id === 'RATE-01' && isSameField(finding.where, where),
          );
          expect(told).toBe(needed);
        }
        if (resolved === null) return;
        for (const [name, rate] of Object.entries(resolved.rates)) {
          const wasMissing = missing.some(({ where }) => where.path.at(-1) === name);
          if (wasMissing) expect(rate).toMatchObject({ origin: 'typical', date: input.asOf });
          if (wasMissing && name !== 'restAllowance') expect(rate.value).toBeGreaterThan(0);
        }
      }),
      cases(500),
    );
  }, 60_000);
});

const isSamePlace = (a: Finding, b: Finding): boolean =>
  a.id === b.id && JSON.stringify(a.where) === JSON.stringify(b.where);

const isSameField = (a: Finding['where'], b: Finding['where']): boolean =>
  a.document === b.document && a.id === b.id && a.path.join() === b.path.join();
