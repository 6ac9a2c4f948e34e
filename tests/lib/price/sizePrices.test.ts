import { describe, expect, it } from 'vitest';
import { priceTable } from '@/lib/price/priceTable';
import { jobInputSchema } from '@/shared/schemas/request';
import { costed, grid } from '@/tests/fixtures/costed';
import { plainJob } from '@/tests/fixtures/plainJob';

/** Three pieces of a size whose target is 10.00, one of a size whose target is 12.20; prices end on 0.50. */
function table(line: Readonly<Record<string, unknown>>, policy: Readonly<Record<string, unknown>> = {}) {
  const plain = plainJob({
    sizes: [
      { quantity: 3, blank: 10 },
      { quantity: 1, blank: 12.2 },
    ],
  });
  const input = jobInputSchema.parse({
    ...plain,
    workshop: {
      ...plain.workshop,
      policy: { ...plain.workshop.policy, breaks: [1, 10], priceStep: 0.5, ...policy },
    },
    job: { ...plain.job, lines: plain.job.lines.map((one) => ({ ...one, ...line })) },
  });
  return priceTable(costed(input), grid).filter(({ from }) => from === 10);
}

const prices = (...given: Parameters<typeof table>) => table(...given).map(({ price }) => price);

const own = { ownPrices: [{ from: 10, each: 9 }] };

describe('prices of sizes', () => {
  it.each([
    ['each at the ending of all prices', {}, {}, [1000, 1250]],
    // 2.20 more, lifted to whole steps.
    ['an up-charge in steps of its own', {}, { upChargeStep: 1 }, [1000, 1300]],
    ['an up-charge in steps of its own', {}, { upChargeStep: 0.25 }, [1000, 1225]],
    // (3 × 10 + 12.20) ÷ 4 = 10.55.
    ['one price over the pieces really ordered', { upCharging: 'averaged' }, {}, [1100, 1100]],
    ['the own price, and what is suggested to be added', own, {}, [900, 1150]],
    [
      'the own price and the typed up-charge',
      { ...own, upCharges: [{ size: 'size 2', amount: 1.2 }] },
      {},
      [900, 1020],
    ],
    ['the own price for all sizes', { ...own, upCharging: 'averaged' }, {}, [900, 900]],
  ])('%s', (_, line, policy, expected) => {
    expect(prices(line, policy)).toEqual(expected);
  });

  it('keep the suggestion beside the price that stands, with the margin of the latter', () => {
    const [first] = table(own);
    expect(first).toMatchObject({ suggested: 1000, price: 900, isOwn: true });
    // One less than it costs, of nine.
    expect(first?.margin).toBeCloseTo(-1 / 9, 12);
    expect(first?.markup).toBeCloseTo(-0.1, 12);
  });

  it('leave the other breaks as suggested', () => {
    const plain = table({ ownPrices: [{ from: 1, each: 9 }] });
    expect(plain.map(({ price, isOwn }) => [price, isOwn])).toEqual([
      [1000, false],
      [1250, false],
    ]);
  });
});
