import { describe, expect, it } from 'vitest';
import { chargeWords, likelyCharges } from '@/app/_words/docket/chargeWords';
import { formatterFor } from '@/app/_words/formatter';
import { chargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import { clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

const formatter = formatterFor({
  locale: 'en-US',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
});

const of = (fields: Readonly<Record<string, unknown>> = {}) => {
  const answer = chargesAnswer(clubWith(fields), grid);
  if (answer === null) throw new Error('the job cannot be costed');
  return answer;
};
const told = (id: string, answer = of()) => {
  const charge = answer.charges.find((one) => one.id === id);
  if (charge === undefined) throw new Error(`${id} is no charge of this job`);
  return chargeWords(charge, 'USD', formatter);
};

describe('the charges in one line', () => {
  it('are a name and a late change, as they are written', () => {
    // 1.66 and 5.55 over 0.684485, lifted to the next half.
    expect(likelyCharges(of(), formatter, 'en-US')).toEqual([
      { name: 'a name', amount: '2.50' },
      { name: 'a late change', amount: '8.50' },
    ]);
  });

  it('begin with rush where it is to be charged', () => {
    const rushed = of({ 'workshop.policy.charges.normalWorkingDays': 13 });
    expect(likelyCharges(rushed, formatter, 'en-US').map(({ name, amount }) => `${name} ${amount}`)).toEqual([
      'rush + 20 %',
      'a name 2.50',
    ]);
  });
});

describe('a charge in words', () => {
  it.each(['design', 'delivery', 'placement'])(
    '%s says that the price bears it, and what it is without',
    (id) => {
      expect(told(id).says).toMatch(
        /The target price of 16\.27 USD a piece bears it; charged apart, it would be 1[0-9]\.\d\d USD\.$/,
      );
    },
  );

  it('says nothing of the price where that does not bear it', () => {
    for (const id of ['name', 'split', 'change', 'sample'])
      expect(told(id).says).not.toContain('target price');
  });

  it('folding says how many minutes of finishing the price bears', () => {
    expect(told('fold').says).toContain('The price bears 1.2 minutes of finishing already');
  });

  it('the least order has no amount where the list pays it', () => {
    const paid = told('minimumOrder');
    expect(paid.amount).toBeNull();
    expect(paid.says).toBe(
      'Your list pays this already: its first order, 1 piece, comes to 144.50 USD. Nothing to charge beside it.',
    );
    const cheap = told('minimumOrder', of({ 'job.lines.0.ownPrices': [{ from: 1, each: 26 }] }));
    expect(cheap.amount).toBe(10_100);
    expect(cheap.says).toContain('The charge covers 3 pieces at your listed prices.');
  });
});
