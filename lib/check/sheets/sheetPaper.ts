import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { coverageOfPrint } from '@/lib/job/coverageOfPrint';
import { isPriceOfForm } from '@/lib/job/isPriceOfForm';
import { type PlacementPlace, placementPlaces } from '@/lib/job/places';
import type { Finding, Where } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { otherTypicals, typicalMoneyCurrencies } from '@/shared/tables/typicalRates';

/** LAY-09: the maker was asked which side of the paper the printer prints, and is not sure. */
const printedSide: Rule = ({ resolved: { printer, workshop } }) =>
  printer.printedSide === 'unsure'
    ? [
        makeFinding({
          id: 'LAY-09',
          severity: 'caution',
          where: {
            document: 'workshop',
            path: ['printers', workshop.printers.findIndex(({ id }) => id === printer.id), 'printedSide'],
          },
          facts: { printer: printer.name },
        }),
      ]
    : [];

/** LAY-11: the paper is no transfer paper, or too light for so much ink. */
const paper: Rule = ({ resolved }) => {
  const { sheet, workshop } = resolved;
  const path = ['sheets', workshop.sheets.findIndex(({ id }) => id === sheet.id)];
  const where = (field: string): Where => ({ document: 'workshop', path: [...path, field] });
  if (sheet.paper === 'other') {
    return [
      makeFinding({
        id: 'LAY-11',
        severity: 'stop',
        variant: 'other',
        where: where('paper'),
        facts: { sheet: sheet.name },
        fix: {
          label: 'isTransferPaper',
          facts: {},
          changes: [{ document: 'workshop', path: [...path, 'paper'], value: 'transfer' }],
        },
      }),
    ];
  }
  const grams = sheet.gramsPerSquareMetre;
  const { light, read, entered } = thresholds.paper;
  if (grams === null || grams >= light.value) return [];
  return placementPlaces(resolved).flatMap((place): readonly Finding[] => {
    const limit = place.placed.totalCoverage.origin === 'read' ? read.value : entered.value;
    const coverage = mostInk(place);
    if (coverage <= limit + 1e-9) return [];
    return [
      makeFinding({
        id: 'LAY-11',
        severity: 'caution',
        variant: 'light',
        where: place.where('artworkId'),
        found: { value: coverage, unit: 'share' },
        limit: { value: limit, unit: 'share' },
        facts: {
          sheet: sheet.name,
          placement: place.placed.placement.name,
          grams,
          wantedGrams: light.value,
          coverage,
        },
      }),
    ];
  });
};

/** The most ink over the box of any print of a placement. */
const mostInk = ({ placed, prints }: PlacementPlace): number =>
  Math.max(...prints.map(({ print }) => coverageOfPrint(placed, print)));

/** RATE-03: what is typed for a sheet says nothing of a roll, and the other way round. */
const paperPrice: Rule = ({ resolved }) => {
  const { workshop } = resolved;
  const index = workshop.sheets.findIndex(({ id }) => id === resolved.sheet.id);
  const sheet = workshop.sheets[index];
  if (sheet === undefined || isPriceOfForm(sheet)) return [];
  const typical = sheet.form === 'roll' ? otherTypicals.rollPrice : otherTypicals.sheetPrice;
  const isTypicalKnown = typicalMoneyCurrencies.includes(workshop.currency) && typical.typical !== null;
  const path = ['sheets', index, 'price'];
  const { unit } = typical;
  return [
    makeFinding({
      id: 'RATE-03',
      severity: 'stop',
      variant: 'paperForm',
      waivable: false,
      where: { document: 'workshop', path },
      found: { value: sheet.price?.value ?? 0, unit: sheet.price?.unit ?? unit },
      facts: { sheet: sheet.name, form: sheet.form },
      fix: isTypicalKnown
        ? {
            label: 'useTypical',
            facts: { typical: typical.typical ?? 0, unit },
            changes: [
              {
                document: 'workshop',
                path,
                value: { value: typical.typical, unit, date: resolved.asOf, origin: 'typical' },
              },
            ],
          }
        : null,
    }),
  ];
};

export const sheetPaperRules: readonly Rule[] = [printedSide, paper, paperPrice];
