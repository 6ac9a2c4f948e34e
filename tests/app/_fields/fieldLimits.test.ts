import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ZodArray,
  ZodDefault,
  ZodNullable,
  ZodNumber,
  ZodObject,
  ZodOptional,
  ZodTuple,
  ZodUnion,
} from 'zod';
import { judgeNumber } from '@/app/_numbers/judgeNumber';
import { type EdgeKind, unitEdge } from '@/app/_numbers/unitEdge';
import { formatNumber } from '@/shared/formatNumber';
import { numberLimits } from '@/shared/limits';
import { artworkSchema } from '@/shared/schemas/artwork';
import { blankSchema } from '@/shared/schemas/blank';
import { jobSchema } from '@/shared/schemas/job';
import { listItemSchema, priceListSchema } from '@/shared/schemas/priceList';
import { workshopSchema } from '@/shared/schemas/workshop';
import { cases } from '@/tests/tools/cases';

const inches = {
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'floz', distance: 'mi' },
} as const;
const metric = {
  currency: 'EUR',
  units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' },
} as const;

/** Every number of the documents that somebody types, once for each place in the schema. */
const numbers = [
  ...numbersOf(workshopSchema, 'workshop'),
  ...numbersOf(blankSchema, 'blank'),
  ...numbersOf(artworkSchema.omit({ picture: true }), 'artwork'),
  ...numbersOf(jobSchema, 'job'),
  ...numbersOf(priceListSchema.omit({ items: true }), 'list'),
  ...numbersOf(listItemSchema, 'item'),
];

/** Those that are kept in one unit and typed in another. */
const measures = numbers.flatMap((number) => {
  const kind = kindOf(number.place);
  return kind === null
    ? []
    : [inches, metric].map((measures) => ({ ...number, edge: unitEdge(kind, measures) }));
});

describe('a field takes what its document takes, and nothing else', () => {
  it('finds the numbers of every document', () => {
    expect(numbers.length).toBeGreaterThan(100);
    expect(measures.length).toBeGreaterThan(60);
  });

  it.each(numbers)('$place, at its ends and one step to either side', ({ schema }) => {
    const limits = numberLimits(schema, []);
    const ends = [limits.min, limits.above, limits.max].filter((end) => end !== undefined);
    expect(ends.length).toBeGreaterThan(1);
    for (const end of ends)
      for (const step of [0, 1, -1, 0.5, -0.5, 0.001, -0.001]) {
        const typed = Number((end + step).toFixed(3));
        expect(isTaken(typed, limits), `${typed}`).toBe(schema.safeParse(typed).success);
      }
  });

  it.each(measures)('$place typed in $edge.unit, whatever is typed', ({ schema, edge }) => {
    const limits = numberLimits(schema, []);
    const most = edge.shown(limits.max ?? 0);
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: Math.ceil(most * 10_000) + 20_000 }), (count) => {
        const typed = Number(`${count}e-4`);
        expect(isTaken(typed, { ...limits, edge })).toBe(schema.safeParse(edge.kept(typed)).success);
      }),
      cases(50),
    );
  });

  it.each(measures)('$place tells its limits in $edge.unit so that they can be typed', ({ schema, edge }) => {
    const rules = { ...numberLimits(schema, []), edge };
    const { greatest, least } = toldLimits(rules);
    for (const [told, beyond] of [
      [greatest, 0.0001],
      [least, -0.0001],
    ] as const) {
      if (told === null) continue;
      expect(isTaken(told, rules), `${told}`).toBe(true);
      expect(schema.safeParse(edge.kept(told)).success).toBe(true);
      const next = Number((told + beyond).toFixed(4));
      expect(isTaken(next, rules), `${next}`).toBe(false);
      expect(schema.safeParse(edge.kept(next)).success).toBe(false);
    }
  });

  it('names 78.7401 in as the most of a sheet of 2,000 mm, whose 78.7402 in would be too long', () => {
    const { edge, schema } = measures.find(
      ({ place, edge: { unit } }) => place === 'workshop.sheets.widthMm' && unit === 'in',
    ) ?? { edge: unitEdge('length', metric), schema: new ZodNumber({ type: 'number' }) };
    expect(toldLimits({ ...numberLimits(schema, []), edge })).toEqual({ greatest: 78.7401, least: 0.0004 });
  });
});

// Helpers

type Rules = Parameters<typeof judgeNumber>[2];

const isTaken = (typed: number, rules: Rules): boolean =>
  judgeNumber(formatNumber(typed, 'en'), 'en', rules).kind === 'good';

/** What the sentences name; null for an end that is itself too little. */
function toldLimits(rules: Rules): { readonly greatest: number | null; readonly least: number | null } {
  const over = judgeNumber('99999999999', 'en', rules);
  const under = judgeNumber('-99999999999', 'en', rules);
  return {
    greatest: over.kind === 'problem' && over.problem.kind === 'above' ? over.problem.greatest : null,
    least: under.kind === 'problem' && under.problem.kind === 'below' ? under.problem.least : null,
  };
}

function kindOf(place: string): EdgeKind | null {
  if (place.endsWith('rollLengthMm')) return 'rollLength';
  if (place.endsWith('Mm')) return 'length';
  if (place.endsWith('TemperatureC')) return 'temperature';
  if (place.endsWith('Kpa')) return 'pressure';
  if (place.endsWith('Km')) return 'distance';
  if (place.endsWith('.mL')) return 'volume';
  return /[sS]hares?\.|[sS]hare$|coverage|blankFault|scrap|targetMargin/.test(place) && !/count$/.test(place)
    ? 'share'
    : null;
}

interface NumberOfDocument {
  readonly place: string;
  readonly schema: ZodNumber;
}

function numbersOf(schema: unknown, place: string): readonly NumberOfDocument[] {
  if (schema instanceof ZodNumber) return place.endsWith('.count') ? [] : [{ place, schema }];
  if (schema instanceof ZodNullable || schema instanceof ZodOptional || schema instanceof ZodDefault)
    return numbersOf(schema.unwrap(), place);
  if (schema instanceof ZodObject)
    return Object.entries(schema.shape).flatMap(([key, part]) => numbersOf(part, `${place}.${key}`));
  if (schema instanceof ZodArray) return numbersOf(schema.element, place);
  if (schema instanceof ZodTuple) return numbersOf(schema.def.items[0], place);
  if (schema instanceof ZodUnion) return schema.options.flatMap((option) => numbersOf(option, place));
  return [];
}
