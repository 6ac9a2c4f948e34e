import { makeFinding } from '@/lib/findings/makeFinding';
import type { Finding } from '@/shared/finding';
import type { OwnRow } from '@/shared/schemas/ownRow';
import type { Rate } from '@/shared/schemas/rate';
import type { JobInput } from '@/shared/schemas/request';
import { otherTypicals, TYPICAL_TOTAL_COVERAGE } from '@/shared/tables/typicalRates';
import { needsBlackShare } from './blackShareOf';
import type { ResolvedJob, ResolvedLine } from './checkedJob';
import { missingRate } from './missingRate';
import { missingReferences } from './references';
import { repeatedNames } from './repeatedNames';
import { resolveLine } from './resolveLine';
import { resolveChannel, resolvePrinter, resolveSheet } from './resolveMachines';
import { resolveRates } from './resolveRates';
import { unmadeSizes } from './unmadeSizes';
import type { TakeRate, UsedRate } from './usedRate';

interface Resolution {
  /** Null where the job names something that is not there. */
  readonly resolved: ResolvedJob | null;
  /** DOC-01, DOC-02, QTY-04 and RATE-01. */
  readonly findings: readonly Finding[];
  /** Every rate that was looked up, once each, as the documents have it. */
  readonly usedRates: readonly UsedRate[];
}

/**
 * Follows every reference of a job and fills every missing rate with its typical value, telling of each.
 * A missing rate never counts as 0.
 *
 * @returns the job as far as it can be known, and what is wrong with that
 */
export function resolveJob(input: JobInput): Resolution {
  const ledger = new Map<string, UsedRate>();
  const enter = (used: UsedRate) => {
    const key = JSON.stringify([used.where.document, used.where.id, used.where.path]);
    if (!ledger.has(key)) ledger.set(key, used);
  };
  const take: TakeRate = (used) => {
    enter(used);
    return used.rate ?? standIn(used, input.asOf);
  };
  for (const used of ownRowRates(input)) enter(used);
  const resolved = followReferences(input, take);
  const usedRates = [...ledger.values()];
  return {
    resolved,
    findings: [
      ...repeatedNames(input),
      ...missingReferences(input),
      ...unmadeSizes(input),
      ...usedRates.flatMap((used) => missingRate(used, input.asOf, input.workshop.currency)),
      ...missingCoverage(input),
    ],
    usedRates,
  };
}

function followReferences(input: JobInput, take: TakeRate): ResolvedJob | null {
  const { job, workshop, asOf } = input;
  const rates = resolveRates(input, take);
  const printer = workshop.printers.find(({ id }) => id === job.printerId);
  const sheet = workshop.sheets.find(({ id }) => id === job.sheetId);
  const channel = workshop.channels.find(({ id }) => id === job.channelId);
  const lines: ResolvedLine[] = [];
  for (const [index, line] of job.lines.entries()) {
    const resolved = resolveLine(input, line, index, take);
    if (resolved !== null) lines.push(resolved);
  }
  if (!printer || !sheet || !channel || lines.length < job.lines.length) return null;
  return {
    asOf,
    job,
    workshop,
    rates,
    printer: resolvePrinter(workshop, printer, take, needsBlackShare(input)),
    sheet: resolveSheet(workshop, sheet, take),
    channel: resolveChannel(workshop, job, channel, take),
    freightIn:
      job.freightIn &&
      take({
        rate: job.freightIn,
        typical: otherTypicals.freightIn,
        where: { document: 'job', path: ['freightIn'] },
        of: '',
        needed: true,
        whenMissing: 'caution',
      }),
    lines,
    ownRows: mergedRows(workshop.ownRows, job.ownRows),
    onHand: input.onHand,
    approvedVersions: input.approvedVersions,
    layouts: input.layouts,
  };
}

/** In a currency where nothing is typical the figure still stands in, so that shapes stay whole: a stop keeps it from any sum. */
function standIn({ typical }: UsedRate, asOf: string): Rate {
  return {
    value: typical.typical ?? typical.plausible[1],
    unit: typical.unit,
    date: asOf,
    origin: 'typical',
  };
}

function mergedRows(workshopRows: readonly OwnRow[], jobRows: readonly OwnRow[]): readonly OwnRow[] {
  const kept = workshopRows.filter((row) => !jobRows.some(({ id }) => id === row.id));
  return [...kept, ...jobRows];
}

function ownRowRates({ job, workshop }: JobInput): readonly UsedRate[] {
  const ratesIn = (document: 'workshop' | 'job', rows: readonly OwnRow[]) =>
    rows.flatMap(({ id, label, cost }, index): readonly UsedRate[] => {
      if (cost.kind !== 'driver') return [];
      const replaced = document === 'workshop' && job.ownRows.some((row) => row.id === id);
      return [
        {
          rate: cost.amount,
          typical: otherTypicals.ownRowAmount,
          where: { document, path: ['ownRows', index, 'cost', 'amount'] },
          of: label,
          needed: !replaced,
          whenMissing: 'stop',
        },
      ];
    });
  return [...ratesIn('workshop', workshop.ownRows), ...ratesIn('job', job.ownRows)];
}

function missingCoverage({ job, artworks }: JobInput): readonly Finding[] {
  const used = new Set(job.lines.flatMap(({ placements }) => placements.map(({ artworkId }) => artworkId)));
  return Object.entries(artworks).flatMap(([id, artwork]) => {
    if (artwork.coverage !== null || artwork.picture !== null || !used.has(id)) return [];
    return [
      makeFinding({
        id: 'RATE-01',
        severity: 'caution',
        where: { document: 'artwork', id, path: ['coverage'] },
        variant: 'coverage',
        facts: { rate: 'Ink coverage', of: artwork.name, typical: TYPICAL_TOTAL_COVERAGE, unit: 'share' },
        fix: {
          label: 'useTypical',
          facts: { typical: TYPICAL_TOTAL_COVERAGE, unit: 'share' },
          changes: [
            {
              document: 'artwork',
              id,
              path: ['coverage'],
              value: { kind: 'total', total: TYPICAL_TOTAL_COVERAGE },
            },
          ],
        },
      }),
    ];
  });
}
