import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import { changeAt } from '@/lib/job/missingRate';
import { rateCatalogue } from '@/shared/tables/rateCatalogue';

/** RATE-06: fees and margin together leave nothing of the price to pay the cost with. */
const priceShare: Rule = ({ resolved, usedRates }) => {
  const fees = feeShare(resolved);
  const margin = resolved.rates.targetMargin.value;
  if (1 - fees - margin > 1e-9) return [];
  const used = usedRates.find(({ where }) => where.path[0] === 'rates' && where.path[1] === 'targetMargin');
  const typical = rateCatalogue.targetMargin.typical;
  const where = used?.where ?? { document: 'workshop', path: ['rates', 'targetMargin'] };
  return [
    makeFinding({
      id: 'RATE-06',
      severity: 'stop',
      where,
      found: { value: fees + margin, unit: 'share' },
      limit: { value: 1, unit: 'share' },
      facts: { fees, margin, channel: resolved.channel.name },
      fix:
        1 - fees - typical > 1e-9
          ? {
              label: 'useTypical',
              facts: { typical, unit: 'share' },
              changes: changeAt(where, {
                value: typical,
                unit: 'share',
                date: resolved.asOf,
                origin: 'typical',
              }),
            }
          : null,
    }),
  ];
};

/** Commission and card fees as a share of the price without tax. */
function feeShare({ channel }: ResolvedJob): number {
  const tax = channel.taxMode === 'added' || channel.taxMode === 'inside' ? channel.tax.value : 0;
  const onTax = channel.commissionBase === 'withTax' ? tax : 0;
  return channel.commission.value * (1 + onTax) + channel.cardFee.value * channel.cardShare.value * (1 + tax);
}

export const priceRules: readonly Rule[] = [priceShare];
