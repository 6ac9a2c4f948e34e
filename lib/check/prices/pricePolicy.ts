import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { checkBreaks } from '@/lib/job/checkBreaks';
import { checkEnding } from '@/lib/job/checkEnding';
import { linePlaces } from '@/lib/job/places';
import type { Change, Finding } from '@/shared/finding';
import { currencyDigits } from '@/shared/tables/currencies';

/** RATE-03: price breaks that do not rise; the table would have to guess what is meant. */
const breaksInOrder: Rule = ({ resolved }) => {
  const workshop = { document: 'workshop', path: ['policy', 'breaks'] } as const;
  const all = [
    {
      breaks: resolved.workshop.policy.breaks,
      where: workshop,
      change: (value: readonly number[]): Change => ({ ...workshop, value }),
    },
    ...linePlaces(resolved).map(({ line, where, change }) => ({
      breaks: line.line.breaks,
      where: where('breaks'),
      change: (value: readonly number[]) => change(['breaks'], value),
    })),
  ];
  return all.flatMap(({ breaks, where, change }): readonly Finding[] => {
    if (breaks === null) return [];
    const problem = checkBreaks(breaks).find((one) => one.kind === 'doubled' || one.kind === 'outOfOrder');
    if (problem === undefined) return [];
    const rising = [...new Set(breaks)].sort((a, b) => a - b);
    return [
      makeFinding({
        id: 'RATE-03',
        severity: 'caution',
        variant: problem.kind,
        where,
        found: breaks.join(', '),
        facts: { breaks: breaks.join(', ') },
        fix: {
          label: 'sortBreaks',
          facts: { rising: rising.join(', ') },
          changes: [change(rising)],
        },
      }),
    ];
  });
};

/** RATE-03: prices or up-charges that should end on parts of a coin that does not exist. */
const endingInCoins: Rule = ({ resolved }) => {
  const { currency, policy } = resolved.workshop;
  const steps = [
    { field: 'priceStep', step: policy.priceStep },
    { field: 'upChargeStep', step: policy.upChargeStep },
  ] as const;
  return steps.flatMap(({ field, step }): readonly Finding[] => {
    if (step === null || checkEnding(step, currency)?.kind !== 'finerThanCurrency') return [];
    const coin = coinOf(currency);
    const where = { document: 'workshop', path: ['policy', field] } as const;
    return [
      makeFinding({
        id: 'RATE-03',
        severity: 'caution',
        variant: 'ending',
        where,
        found: { value: step, unit: 'money' },
        limit: { value: coin, unit: 'money' },
        facts: { step, coin, currency },
        fix: { label: 'setEnding', facts: { coin }, changes: [{ ...where, value: coin }] },
      }),
    ];
  });
};

/** RATE-03: a machine that will fetch more than it cost would make each job cheaper by being used. */
const resaleBelowPrice: Rule = ({ resolved }) => {
  const { workshop } = resolved;
  const used = new Set(resolved.lines.flatMap(({ placements }) => placements.map(({ press }) => press.id)));
  const machines = [
    ...workshop.presses.flatMap((press, index) =>
      used.has(press.id) ? [{ ...press, path: ['presses', index] as const }] : [],
    ),
    ...workshop.printers.flatMap((printer, index) =>
      printer.id === resolved.printer.id ? [{ ...printer, path: ['printers', index] as const }] : [],
    ),
  ];
  return machines.flatMap(({ name, price, resale, path }): readonly Finding[] => {
    if (price === null || resale === null || resale.value <= price.value) return [];
    const where = { document: 'workshop', path: [...path, 'resale'] } as const;
    return [
      makeFinding({
        id: 'RATE-03',
        severity: 'stop',
        variant: 'resale',
        waivable: false,
        where,
        found: { value: resale.value, unit: 'money' },
        limit: { value: price.value, unit: 'money' },
        facts: { machine: name, price: price.value, resale: resale.value },
      }),
    ];
  });
};

/** RATE-08: a price that its up-charge takes to nothing or below. */
const priceAboveNothing: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap(({ line, where }) =>
    line.sizes.flatMap(({ size, askedPrice }): readonly Finding[] => {
      if (askedPrice === null || askedPrice > 0) return [];
      const index = line.line.upCharges.findIndex((charge) => charge.size === size);
      return [
        makeFinding({
          id: 'RATE-08',
          severity: 'stop',
          variant: 'nothing',
          waivable: false,
          where: { ...where('upCharges', Math.max(0, index), 'amount'), size },
          found: { value: askedPrice, unit: 'money/piece' },
          facts: { line: line.line.name, size, price: askedPrice },
        }),
      ];
    }),
  );

export const pricePolicyRules: readonly Rule[] = [
  breaksInOrder,
  endingInCoins,
  resaleBelowPrice,
  priceAboveNothing,
];

const coinOf = (currency: string): number => Number(`1e${-(currencyDigits(currency) ?? 0)}`);
