import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { typedTexts } from '@/lib/erasing/typedTexts';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';

/**
 * Texts that no one may rewrite: other parts of the documents go by them, such as by the names of sizes, or they are codes.
 * Of stock nothing is rewritten, since it belongs to no customer.
 */
const goneBy: Readonly<Record<string, readonly string[]>> = {
  workshop: [
    ...['currency', 'locale', 'printers.colourProfile', 'sheets.mediaSetting', 'seller.logo.mediaType'],
    ...['papers.words.key', 'ownRows.cost.formula'],
  ],
  blank: ['traits.lot', 'traits.provenLot', 'sizes.name'],
  artwork: ['picture.liveFonts'],
  job: [
    ...['lines.quantities.size', 'lines.placements.prints.sizes', 'lines.upCharges.size'],
    'ownRows.cost.formula',
  ],
  customer: ['exemption.proof.mediaType'],
  order: ['lines.names.size', 'alternatives.size', 'attachments.mediaType'],
  stockMove: ['item.size', 'item.lot', 'item.name', 'place.name', 'reference.kind', 'unitCost.currency'],
  stockTransfer: ['from', 'to'].flatMap((end) =>
    ['item.size', 'item.lot', 'item.name', 'place.name'].map((path) => `${end}.${path}`),
  ),
  stockCount: ['item.size', 'item.lot', 'item.name', 'place.name', 'unitCost.currency'],
  orderEvent: ['step.proof.mediaType'],
  expense: ['receipt.mediaType'],
  stallDay: [
    ...['attachments.mediaType', 'ranges.sizes.shares.size', 'held.size', 'prices.own.size'],
    ...['prices.sets.sizes', 'prices.lastHour.prices.size', 'ranges.sizes.ordered.size'],
  ],
  // What lies at a shop lies there under its name.
  shop: ['name', 'knownAs.name', 'attachments.mediaType'],
  stallTap: ['currency', 'tap.goods.size', 'tap.back.size', 'tap.out.size'],
  shopPrice: ['currency', 'goods.size'],
  shopStatement: ['currency', 'rows.goods.size'],
  shopPayment: ['currency'],
  supplier: [
    ...['customerNumber', 'offers.articleNumber', 'offers.item.size', 'offers.item.name'],
    ...['offers.standsInFor.size', 'offers.standsInFor.name'],
  ],
  buyingList: ['held.item.size', 'held.item.name', 'chosen.item.size', 'chosen.item.name'],
  run: ['sizesFirst.size'],
  pressing: ['size'],
  blankFault: ['size', 'lot'],
  runActual: ['currency'],
  pressTest: ['lot', 'paperLot', 'inkLot', 'photo.mediaType'],
  goodsIn: ['currency', 'rows.item.size', 'rows.item.name', 'rows.lot', 'receipt.mediaType'],
  faultClaim: ['step.rows.item.size', 'step.rows.item.name', 'step.currency'],
  rateTaken: [
    'subject.size',
    ...['places.before', 'places.after'].flatMap((held) => [`${held}.ordered.size`, `${held}.shares.size`]),
  ],
};

const everyKind = Object.entries({ ...kinds, ...entryKinds });

describe('a field of text', () => {
  it.each(everyKind)('of a %s is either typed freely or gone by, and never both', (kind, { schema }) => {
    const classed = [...(typedTexts[kind] ?? []), ...(goneBy[kind] ?? [])];
    const free = [...new Set(textsOf(schema).flatMap(({ path, isFree }) => (isFree ? [path] : [])))];
    expect(free.filter((path) => !classed.includes(path))).toEqual([]);
    expect(new Set(classed).size).toBe(classed.length);
  });

  it.each(everyKind)(
    'of a %s that is chosen, or is an id, a day or a number, is none to type in',
    (kind, { schema }) => {
      const bound = textsOf(schema).flatMap(({ path, isFree }) => (isFree ? [] : [path]));
      expect((typedTexts[kind] ?? []).filter((path) => bound.includes(path))).toEqual([]);
    },
  );
});

// Helpers

interface Leaf {
  readonly path: string;
  /** Takes any text, as far as its length allows. */
  readonly isFree: boolean;
}

function textsOf(schema: unknown, path: readonly string[] = []): readonly Leaf[] {
  if (schema instanceof z.ZodDefault || schema instanceof z.ZodNullable || schema instanceof z.ZodOptional)
    return textsOf(schema.unwrap(), path);
  if (schema instanceof z.ZodExactOptional) return textsOf(schema.unwrap(), path);
  if (schema instanceof z.ZodObject)
    return Object.entries(schema.shape).flatMap(([key, part]) => textsOf(part, [...path, key]));
  if (schema instanceof z.ZodArray) return textsOf(schema.element, path);
  if (schema instanceof z.ZodRecord) return textsOf(schema.valueType, [...path, '*']);
  if (schema instanceof z.ZodTuple) return schema.def.items.flatMap((item) => textsOf(item, path));
  if (schema instanceof z.ZodUnion) return schema.options.flatMap((option) => textsOf(option, path));
  const isText = schema instanceof z.ZodString;
  const isKnown = ['number', 'int', 'boolean', 'literal', 'enum', 'string'];
  if (!(schema instanceof z.ZodType) || !isKnown.includes(schema.type))
    throw new Error(`${path.join('.')} is of a kind this walk does not know`);
  return [{ path: path.join('.'), isFree: isText && !isPatterned(schema) }];
}

const isPatterned = ({ def }: z.ZodString): boolean =>
  (def.checks ?? []).some((check) => check._zod.def.check === 'string_format');
