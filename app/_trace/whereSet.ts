import type { CostSheet } from '@/lib/grid/costSheet';
import type { FigureRef } from '@/lib/grid/traceFigure';
import type { Job } from '@/shared/schemas/job';
import { type RateName, rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';

/** The place where the maker sets a value. */
export interface SettingPlace {
  readonly href: string;
  /** Ends the sentence “It is set …”. */
  readonly words: string;
}

/** @returns where a value that goes into the sums is set; null for one that nobody sets. */
export function whereSet(sheet: CostSheet, job: Job, ref: FigureRef): SettingPlace | null {
  const id = ref.rowId.replace(/_\d+$/, '');
  if (isRateName(ref.rowId)) {
    const { label } = rateDefinition(ref.rowId);
    return job.rates[ref.rowId] === undefined
      ? { href: `/workshop#rate-${ref.rowId}`, words: `in the workshop, under “${label}”` }
      : { href: `#job-rates-${ref.rowId}`, words: 'for this job, under “Rates for this job”' };
  }
  if (ref.rowId.startsWith('amount_')) {
    return job.ownRows.some((row) => `amount_${row.id}` === ref.rowId)
      ? { href: '#own-rows', words: 'in this job, under “Your own rows”' }
      : { href: '/workshop#own-rows', words: 'in the workshop, under “Own rows”' };
  }
  const shelf = shelves.find(({ ids }) => ids.includes(id));
  if (shelf !== undefined) return { href: shelf.href, words: shelf.words };
  if (ofBlank.includes(id)) {
    const line = job.lines.find((one) => one.id === lineIdOf(sheet, ref));
    return line === undefined ? null : { href: `/blanks?id=${line.blankId}`, words: 'with the blank' };
  }
  if (ofJob.includes(id)) return { href: '#the-job', words: 'in this job, under “The job”' };
  if (ofLayout.includes(id)) return { href: '#sheets', words: 'by the layout, under “Sheets”' };
  return null;
}

// Helpers

const shelves = [
  {
    href: '/workshop#printers',
    words: 'in the workshop, under “Printers”',
    ids: [
      'printerPowerKw',
      'printerMinutesPerSheet',
      'printerPrice',
      'printerResale',
      'printerLifeSheets',
      'printerLifeYears',
      'printerSheetsPerYear',
    ],
  },
  {
    href: '/workshop#presses',
    words: 'in the workshop, under “Presses”',
    ids: [
      'warmPowerKw',
      'warmMinutes',
      'pressPowerKw',
      'holdingShare',
      'pressPrice',
      'pressResale',
      'pressLife',
      'pressLifeYears',
      'pressesPerYear',
      'partsPrice',
      'partsInterval',
      'protectivePaper',
      'tape',
    ],
  },
  { href: '/workshop#sheets', words: 'in the workshop, under “Sheets”', ids: ['sheetPrice'] },
  { href: '/workshop#packaging', words: 'in the workshop, under “Packaging”', ids: ['packagingPerPiece'] },
  {
    href: '/workshop#channels',
    words: 'in the workshop, under “Sales channels”',
    ids: [
      'tax',
      'taxInside',
      'commission',
      'commissionOnTax',
      'cardFee',
      'cardFixedFee',
      'cardShare',
      'isStall',
      'piecesPerTicket',
    ],
  },
];

const ofBlank: readonly string[] = ['blankPrice', 'blankFault', 'finishMinutes'];

const ofJob: readonly string[] = [
  'quantity',
  'pieces',
  'jobPieces',
  'askedPrice',
  'freightIn',
  'deliveryKm',
  'cardPayments',
  'piecesPerSession',
  'used',
  'scrap',
  'replaceAlone',
  'tests',
  'coverage',
  'handMinutes',
  'aloneMinutes',
  'hotMinutes',
  'prepMinutes',
  'newDesign',
  'areaM2',
  'group',
  'designPieces',
];

const ofLayout: readonly string[] = ['ups'];

const isRateName = (id: string): id is RateName => rateNames.some((name) => name === id);

function lineIdOf(sheet: CostSheet, ref: FigureRef): string | undefined {
  return ref.line === undefined ? sheet.cases[ref.case ?? 0]?.lineId : sheet.lineIds[ref.line];
}
