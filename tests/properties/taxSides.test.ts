import fc from 'fast-check';
import { describe, it } from 'vitest';
import { clubOrder } from '@/lib/examples/clubOrder';
import { type CostSheet, caseValue, wholeJob } from '@/lib/grid/costSheet';
import type { Channel } from '@/shared/schemas/workshop';
import { costed } from '@/tests/fixtures/costed';
import { DAY, fixedRate, typed } from '@/tests/fixtures/numbers';
import { cases, patience } from '@/tests/tools/cases';
import { near } from './near';

const club = clubOrder(DAY, DAY);

interface Selling {
  readonly taxMode: Channel['taxMode'];
  readonly tax: number;
  readonly commission: number;
  readonly commissionBase: Channel['commissionBase'];
  readonly asked: number;
}

/** The club order sold in another way, all sizes at one price. */
function sold({ taxMode, tax, commission, commissionBase, asked }: Selling): CostSheet {
  const channels = club.workshop.channels.map((channel) => ({
    ...channel,
    taxMode,
    tax: fixedRate(tax, 'share'),
    commission: fixedRate(commission, 'share'),
    commissionBase,
  }));
  const lines = club.job.lines.map((line) => ({ ...line, askedPrice: asked, upCharges: [] }));
  return costed({
    ...club,
    workshop: { ...club.workshop, channels },
    job: { ...club.job, lines },
  }).sheet;
}

const selling = fc.record({
  tax: typed(0, 0.3, 3),
  commission: typed(0, 0.3, 3),
  commissionBase: fc.constantFrom('withoutTax' as const, 'withTax' as const),
  asked: typed(1, 200),
});

describe('a price', () => {
  it(
    'with its tax inside is without tax what it was before the tax was added',
    () => {
      fc.assert(
        fc.property(selling, (terms) => {
          const inside = sold({ ...terms, taxMode: 'inside' });
          near(caseValue(inside, 'price', 0) * (1 + terms.tax), terms.asked);
        }),
        cases(400),
      );
    },
    patience(60_000),
  );

  it(
    'earns the same typed with tax inside or with tax added later',
    () => {
      fc.assert(
        fc.property(selling, (terms) => {
          const added = sold({ ...terms, taxMode: 'added' });
          const inside = sold({ ...terms, taxMode: 'inside', asked: terms.asked * (1 + terms.tax) });
          for (const id of ['price', 'fees', 'profit', 'payPerHour']) {
            near(wholeJob(inside, id), wholeJob(added, id));
          }
        }),
        cases(400),
      );
    },
    patience(60_000),
  );

  it(
    'bears no tax where the channel has none, whatever its rate',
    () => {
      fc.assert(
        fc.property(selling, (terms) => {
          const none = sold({ ...terms, taxMode: 'none' });
          const free = sold({ ...terms, taxMode: 'added', tax: 0 });
          near(wholeJob(none, 'price'), terms.asked * 37);
          near(wholeJob(none, 'profit'), wholeJob(free, 'profit'));
        }),
        cases(400),
      );
    },
    patience(60_000),
  );
});
