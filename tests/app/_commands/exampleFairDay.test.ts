import { expect, it } from 'vitest';
import { exampleFairDay } from '@/app/_commands/exampleFairDay';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import { dayFigures } from '@/lib/stall/evening/dayFigures';
import { isPaperSound } from '@/lib/stored/isPaperSound';
import { type DayClose, dayCloseSchema } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';

const device = { id: 'exampleexample', letter: 'A' };
const { papers, entries } = exampleFairDay({ plan: fairPlan, device, firstCount: 40 });

const closeOf = (): DayClose => dayCloseSchema.parse(papers[1]?.body);

it('carries plan, taps and close of the worked fair as records that can be read', () => {
  expect(papers.map(({ kind }) => kind)).toEqual(['stallPlan', 'dayClose']);
  for (const paper of papers) {
    expect(isPaperSound(paper)).toBe(true);
    expect(paperKinds[paper.kind].schema.safeParse(paper.body).success).toBe(true);
  }
  for (const { kind, body } of entries) {
    const { schema } = kind === 'stallTap' ? entryKinds.stallTap : entryKinds.issuing;
    expect(schema.safeParse(body).success).toBe(true);
  }
});

it('counts papers and entries of the device on from where it stood, each once', () => {
  const counts = [...papers, ...entries].map(({ count }) => count).sort((one, other) => one - other);
  expect(counts).toEqual(counts.map((_, at) => 40 + at));
  expect(new Set([...papers, ...entries].map(({ id }) => id)).size).toBe(counts.length);
});

it('comes to the figures of the worked day', () => {
  const taps = entries.flatMap((entry) => {
    const read = entryKinds.stallTap.schema.safeParse(entry.body);
    return read.success ? [{ ...entry, body: read.data }] : [];
  });
  const count = foldTaps(fairPlan, taps, () => ({ day: fairPlan.days[0]?.day ?? '', minute: 700 }));
  expect(dayFigures(fairPlan, count, closeOf())).toEqual({
    ...{ gross: 1723, net: 1610.28, tax: 112.72, fees: 37.99, expectedCash: 532, difference: -2 },
  });
  expect(closeOf()).toMatchObject({ stallDayId: SPRING_FAIR_ID, sellingHours: 7, decision: 'again' });
  expect(closeOf().goods.find(({ asked }) => asked === 3)?.lost).toBeCloseTo(4.08, 8);
});
