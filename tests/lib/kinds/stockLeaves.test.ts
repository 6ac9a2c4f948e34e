import { describe, expect, it } from 'vitest';
import { approvedVersions } from '@/lib/artwork/approvedVersions';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';
import { foldStock } from '@/lib/stock/foldStock';
import { onHand } from '@/lib/stock/onHand';
import type { Leaving } from '@/lib/stored/leaving';
import { readDocument } from '@/lib/stored/readDocument';
import type { StockCount } from '@/shared/schemas/stock';
import artwork3 from '@/tests/fixtures/stored/artwork3.json' with { type: 'json' };
import blank3 from '@/tests/fixtures/stored/blank3.json' with { type: 'json' };
import { writer } from '@/tests/lib/stock/stockEntries';

/* What a blank and an artwork held inside until version 3: it becomes entries that fold to the same figures. */

function leaving(
  kind: 'blank' | 'artwork',
  { id, body }: { readonly id: string; readonly body: unknown },
): Leaving {
  const parting = kinds[kind].partings?.[3];
  if (parting === undefined) throw new Error(`nothing leaves a ${kind} of version 3`);
  return parting(body, { id, at: 5000 });
}

const { sizes } = blank3.body;

describe('the stock of a blank of version 3', () => {
  const { entries, papers } = leaving('blank', blank3);

  it('leaves as counts of the sizes that had some, when the blank was last written', () => {
    expect(papers).toEqual([]);
    expect(entries.map(({ kind, version, at }) => [kind, version, at])).toEqual([
      ['stockCount', 1, 5000],
      ['stockCount', 1, 5000],
      ['stockCount', 1, 5000],
    ]);
    for (const { body } of entries) expect(entryKinds.stockCount.schema.parse(body)).toEqual(body);
  });

  it('folds to the same figures, and to nothing where a 0 stood, which nobody had counted', () => {
    const noted = entries.map(({ at, body }, index) => ({
      ...({
        id: `a-${index}`,
        kind: 'stockCount',
        version: 1,
        device: 'aaaaaaaa',
        count: index + 1,
        at,
      } as const),
      body: body as StockCount,
    }));
    const had = sizes.flatMap(({ name, onHand: count }) => (count > 0 ? [[name, count]] : []));
    expect(onHand(foldStock(noted))).toEqual({ 'white-shirt': Object.fromEntries(had) });
    expect(had).toEqual([
      ['M', 12],
      ['L', 100_000],
      ['2XL', 3],
    ]);
  });

  it('that cannot be read leaves the blank as it was found', () => {
    for (const figure of ['12', 1.5, -1, null]) {
      const broken = { ...blank3.body, sizes: [{ ...sizes[0], onHand: figure }, ...sizes.slice(1)] };
      expect(readDocument({ ...blank3, body: broken }, kinds)).toMatchObject({
        state: 'unreadable',
        raw: { body: broken },
      });
      expect(leaving('blank', { ...blank3, body: broken }).entries).toHaveLength(3);
    }
    expect(leaving('blank', { id: 'a', body: null }).entries).toEqual([]);
  });
});

describe('the approval of an artwork of version 3', () => {
  it('leaves as an entry that folds to the same version', () => {
    const { entries, papers } = leaving('artwork', artwork3);
    expect(papers).toEqual([]);
    expect(entries).toMatchObject([{ kind: 'approval', version: 1, at: 5000 }]);
    const bodies = entries.map(({ body }) => ({ body: entryKinds.approval.schema.parse(body) }));
    expect(approvedVersions(bodies)).toEqual({ 'club-crest': 1 });
  });

  it('leaves nothing where the customer had not said yes', () => {
    const { approvedVersion: _, ...unsaid } = artwork3.body;
    expect(
      leaving('artwork', { ...artwork3, body: { ...artwork3.body, approvedVersion: null } }).entries,
    ).toEqual([]);
    expect(leaving('artwork', { ...artwork3, body: unsaid }).entries).toEqual([]);
  });

  it('that cannot be read leaves the artwork as it was found', () => {
    const broken = { ...artwork3.body, approvedVersion: 'all' };
    expect(readDocument({ ...artwork3, body: broken }, kinds).state).toBe('unreadable');
    expect(leaving('artwork', { ...artwork3, body: broken }).entries).toEqual([]);
  });
});

describe('what is noted of stock', () => {
  it('belongs to its blank at both ends, so that whoever carries the blank carries its counts', () => {
    const pen = writer();
    const { stockMove, stockTransfer, stockCount } = entryKinds;
    const move = pen.move(1);
    const transfer = pen.transfer(1, { grade: 'second' });
    const count = pen.count(1);
    if (move.kind === 'stockMove') expect(stockMove.linksOf(move.body)).toEqual([shirtAt('item')]);
    if (count.kind === 'stockCount') expect(stockCount.linksOf(count.body)).toEqual([shirtAt('item')]);
    if (transfer.kind === 'stockTransfer') {
      expect(stockTransfer.linksOf(transfer.body)).toEqual([shirtAt('from', 'item'), shirtAt('to', 'item')]);
    }
    expect.assertions(3);
  });
});

const shirtAt = (...path: readonly string[]) => ({ to: 'blank', id: 'shirt', path: [...path, 'blankId'] });
