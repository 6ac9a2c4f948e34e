import { describe, expect, it } from 'vitest';
import { bottleOf } from '@/lib/stock/bottleOf';
import { foldStock } from '@/lib/stock/foldStock';
import { inkChannels } from '@/lib/stock/inkChannels';
import { stockroom } from '@/lib/stock/stockroom';
import { supplierSchema } from '@/shared/schemas/making/supply';
import { club } from '@/tests/fixtures/clubJob';
import { home, shirts, van, writer } from './stockEntries';

const { workshop, blanks, job } = club();
const room = (entries: Parameters<typeof foldStock>[0] = [], archivedOn: string | null = null) =>
  stockroom({
    ...{ piles: foldStock(entries), blanks, workshop, consumables: {} },
    jobs: [{ id: 'club', job: { ...job, archivedOn } }],
  });

describe('the stockroom', () => {
  it('lists all that can lie there before anything was noted: blanks, paper, ink, finished pieces', () => {
    expect(room().map(({ kind, name, things, isNoted }) => [kind, name, things.length, isNoted])).toEqual([
      ['blank', 'White coated mug, 11 oz', 1, false],
      ['blank', 'White shirt, 100 % polyester', 6, false],
      ['paper', null, 1, false],
      ['ink', 'Desk printer', 4, false],
      ['finished', 'Club shirt', 6, false],
    ]);
  });

  it('keeps what lies there of what is listed nowhere any more, and forgets of what none is left', () => {
    const pen = writer();
    const gone = shirts('XS');
    expect(room([pen.move(3, { item: gone })]).find(({ id }) => id === 'shirt')).toMatchObject({
      ...{ kind: 'blank', name: null, isNoted: true },
      things: [{ name: 'XS' }],
    });
    const left = [pen.move(3, { item: gone }), pen.move(-3, { item: gone })];
    expect(room(left).find(({ id }) => id === 'shirt')).toBeUndefined();
  });

  it('has pieces of a job that was put away only where some lie somewhere', () => {
    const item = { kind: 'finished', jobId: 'club', lineId: 'shirts', size: 'M' } as const;
    const finished = (entries: Parameters<typeof foldStock>[0]) =>
      room(entries, '2026-01-01').filter(({ kind }) => kind === 'finished');
    expect(finished([])).toEqual([]);
    const pen = writer();
    const some = [pen.move(2, { item, place: van }), pen.move(1, { item, place: home })];
    expect(finished(some)).toMatchObject([{ name: 'Club shirt', things: [{ name: 'M' }], isNoted: true }]);
  });
});

it('inkChannels leaves black out of a printer that prints no grey with it, and adds light inks', () => {
  const [printer] = workshop.printers;
  if (printer?.blackShare == null) throw new Error('no printer with black');
  expect(inkChannels(printer)).toEqual(['Cyan', 'Magenta', 'Yellow', 'Black']);
  const without = { blackShare: { ...printer.blackShare, value: 0 }, lightInks: true };
  expect(inkChannels(without)).toEqual(['Cyan', 'Magenta', 'Yellow', 'Light cyan', 'Light magenta']);
});

it('bottleOf is the smallest bottle that a supplier sells that ink in', () => {
  const ink = (name: string) => ({ kind: 'ink', printerId: 'desk-printer', name }) as const;
  const offer = (id: string, name: string, packSize: number) => ({
    ...{ id, item: ink(name), packSize, tiers: [{ from: 1, each: 0.16 }] },
  });
  const supplier = supplierSchema.parse({
    name: 'Inks by post',
    offers: [offer('a', 'Yellow', 500), offer('b', 'Yellow', 127), offer('c', 'Cyan', 70)],
  });
  expect(bottleOf(ink('Yellow'), [supplier])).toBe(127);
  expect(bottleOf(ink('Black'), [supplier])).toBeNull();
  expect(bottleOf(shirts(), [supplier])).toBeNull();
});
