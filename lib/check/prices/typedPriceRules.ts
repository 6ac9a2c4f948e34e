import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import { lineRule } from '@/lib/job/lineRule';
import { type LinePlace, linePlaces } from '@/lib/job/places';
import type { Finding, Fix } from '@/shared/finding';
import { fromMinor, toMinor } from '@/shared/money';

/** RATE-03: a price or up-charge that the maker typed cannot be paid to the last digit. */
const inCoins: Rule = ({ resolved }) => {
  const { currency } = resolved.workshop;
  return linePlaces(resolved).flatMap((place) => {
    const standing = standingBreaks(resolved, place);
    const { askedPrice, askedStart, ownPrices, upCharges } = place.line.line;
    const asked = askedPrice === null ? null : finer(place, askedPrice, currency, ['askedPrice']);
    const start = askedStart === null ? null : finer(place, askedStart, currency, ['askedStart']);
    return [
      ...(start === null ? [] : [makeFinding({ ...start, variant: 'startFiner' })]),
      ...(asked === null ? [] : [makeFinding({ ...asked, variant: 'askedFiner' })]),
      ...upCharges.flatMap(({ size, amount }, index) => {
        const found = finer(place, amount, currency, ['upCharges', index, 'amount']);
        return found === null
          ? []
          : [makeFinding({ ...found, variant: 'chargeFiner', facts: { ...found.facts, size } })];
      }),
      ...ownPrices.flatMap(({ from, each }, index) => {
        // One that holds for no order is told as that.
        if (standing !== null && !standing.includes(from)) return [];
        const found = finer(place, each, currency, ['ownPrices', index, 'each']);
        return found === null ? [] : [makeFinding({ ...found, variant: 'ownFiner' })];
      }),
    ];
  });
};

/** What is told of an amount that is finer than a coin, with the button that writes the nearest that can be paid. */
function finer(place: LinePlace, each: number, currency: string, path: readonly (string | number)[]) {
  const payable = fromMinor(toMinor(each, currency), currency);
  if (Math.abs(payable - each) <= 1e-9 * Math.abs(each)) return null;
  // A price that rounds to nothing is none, and no field takes it.
  const isPrice = payable !== 0 || path[0] === 'upCharges' || path[0] === 'askedStart';
  const fix: Fix = {
    label: 'setPrice',
    facts: { price: payable },
    changes: [place.change(path, payable)],
  };
  return {
    id: 'RATE-03',
    severity: 'caution',
    where: place.where(...path),
    found: { value: each, unit: 'money/piece' },
    facts: { line: place.line.line.name, each, payable, currency },
    fix: isPrice ? fix : null,
  } as const;
}

/** RATE-03: own prices from quantities at which no break begins, or that no rule of the list asks; they hold for no order. */
const atBreaks: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap((place) => {
    const standing = standingBreaks(resolved, place);
    return standing === null ? [] : strayPrices(place, standing);
  });

/** @returns the quantities an own price of a line can stand at; null where one begins a break wherever it is typed. */
function standingBreaks(
  { job, workshop }: ResolvedJob,
  { line }: Pick<LinePlace, 'line'>,
): readonly number[] | null {
  switch (lineRule({ job, workshop }, line)) {
    case 'setUpApart':
      return [];
    case 'onePrice':
      return [1];
    default:
      return line.line.breaks ?? workshop.policy.breaks;
  }
}

/** Told once a line; the button takes all of them out. */
function strayPrices(place: LinePlace, breaks: readonly number[]): readonly Finding[] {
  const { name, ownPrices } = place.line.line;
  const stray = ownPrices.filter(({ from }) => !breaks.includes(from));
  const [first] = stray;
  if (first === undefined) return [];
  const { from, each } = first;
  const facts = { line: name, from, price: each, others: stray.length - 1 };
  const told = {
    id: 'RATE-03',
    severity: 'caution',
    where: place.where('ownPrices'),
    found: { value: from, unit: 'pieces' },
    limit: breaks.join(', '),
    fix: {
      label: 'dropOwnPrices',
      facts: { count: stray.length },
      changes: [
        place.change(
          ['ownPrices'],
          ownPrices.filter((own) => breaks.includes(own.from)),
        ),
      ],
    },
  } as const;
  return [
    breaks.length > 1
      ? makeFinding({ ...told, variant: 'ownNoBreak', facts: { ...facts, breaks: breaks.join(', ') } })
      : makeFinding({ ...told, variant: 'ownUnused', facts }),
  ];
}

export const typedPriceRules: readonly Rule[] = [inCoins, atBreaks];
