import type { Where } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { type RateName, rateDefinition } from '@/shared/tables/rateCatalogue';
import { typicalOfDefinition } from '@/shared/tables/typicalRates';
import type { ResolvedJob } from './checkedJob';
import { neededRates } from './neededRates';
import type { TakeRate } from './usedRate';

/**
 * The workshop's rates as this job has them: the job's own figure, else the workshop's, else the typical one.
 *
 * @param take enters each rate in the ledger
 */
export function resolveRates({ job, workshop }: JobInput, take: TakeRate): ResolvedJob['rates'] {
  const needed = neededRates(job);
  const of = (name: RateName) => {
    const own = job.rates[name];
    const where: Where = { document: own ? 'job' : 'workshop', path: ['rates', name] };
    return take({
      rate: own ?? workshop.rates[name],
      typical: typicalOfDefinition(rateDefinition(name)),
      where,
      of: '',
      needed: needed.has(name),
      whenMissing: name === 'wage' ? 'stop' : 'caution',
    });
  };
  return {
    wage: of('wage'),
    restAllowance: of('restAllowance'),
    overheadPerYear: of('overheadPerYear'),
    overheadHours: of('overheadHours'),
    tariff: of('tariff'),
    inkPrice: of('inkPrice'),
    laydown: of('laydown'),
    inkLoss: of('inkLoss'),
    sessionInk: of('sessionInk'),
    sheetReject: of('sheetReject'),
    reprintShare: of('reprintShare'),
    enquiryMinutes: of('enquiryMinutes'),
    proofMinutes: of('proofMinutes'),
    setUpMinutes: of('setUpMinutes'),
    cleanDownMinutes: of('cleanDownMinutes'),
    packMinutes: of('packMinutes'),
    deliverMinutes: of('deliverMinutes'),
    sheetMinutes: of('sheetMinutes'),
    packagingPerOrder: of('packagingPerOrder'),
    travelRate: of('travelRate'),
    targetMargin: of('targetMargin'),
  };
}
