import { repeatedDays } from '@/lib/stall/days/repeatedDays';
import { moneyOf } from '@/lib/stall/plan/costs/dayCosts';
import type { StallAsked } from './stallAsked';
import type { StallTrouble } from './stallPlanned';
import { wrongChanceSum } from './wrongChanceSum';

/** @returns why nothing can be planned yet, but for what only its jobs and goods can show. */
export function planTroubles({ stallDay, workshop, jobs }: StallAsked): readonly StallTrouble[] {
  const { weathers, days, ranges, costs, leftoverShare } = stallDay;
  const troubles: StallTrouble[] = [];
  if (ranges.every(({ designs }) => designs.every(({ isLeftOut }) => isLeftOut)))
    troubles.push({ kind: 'noJobs' });
  if (days.length === 0) troubles.push({ kind: 'noDays' });
  const twice = repeatedDays(stallDay);
  troubles.push(...twice.map((at): StallTrouble => ({ kind: 'sameDay', at })));
  troubles.push(...channelTroubles(stallDay.channelId, workshop));
  const sum = wrongChanceSum(weathers);
  if (weathers.length === 0 || weathers.some(({ chance, factor }) => chance === null || factor === null))
    troubles.push({ kind: 'noWeather' });
  else if (sum !== null) troubles.push({ kind: 'chances', sum });
  if (leftoverShare === null) troubles.push({ kind: 'noLeftoverShare' });
  if (workshop.rates.wage === null) troubles.push({ kind: 'wageUnknown' });
  for (const cost of costs) {
    if (moneyOf(cost, workshop) !== null) continue;
    const { id, what, amount } = cost;
    const isRateMissing = amount.of === 'drive' && amount.km !== null;
    troubles.push(
      isRateMissing ? { kind: 'travelRateUnknown', costId: id } : { kind: 'costUnknown', costId: id, what },
    );
  }
  for (const { jobId, input } of jobs) {
    if (input.workshop.currency !== workshop.currency)
      troubles.push({ kind: 'otherCurrency', jobId, jobName: input.job.name });
  }
  return troubles;
}

// Helpers

function channelTroubles(
  channelId: string | null,
  { channels }: StallAsked['workshop'],
): readonly StallTrouble[] {
  const channel = channels.find(({ id }) => id === channelId);
  if (channel === undefined) return [{ kind: 'noChannel' }];
  const isTaxed = channel.taxMode === 'added' || channel.taxMode === 'inside';
  return channel.taxMode === null || (isTaxed && channel.tax === null)
    ? [{ kind: 'channelLacks', what: 'tax' }]
    : [];
}
