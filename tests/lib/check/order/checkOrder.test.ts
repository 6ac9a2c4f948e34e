import { describe, expect, it } from 'vitest';
import { checkOrder } from '@/lib/check/order/checkOrder';
import { childRows } from '@/lib/check/order/childRows';
import type { OrderScene } from '@/lib/check/order/orderScene';
import type { NameRow } from '@/shared/schemas/order';
import { club, clubWith } from '@/tests/fixtures/clubJob';

const scene: OrderScene = {
  orderId: 'order-1',
  asOf: '2026-12-01',
  stage: 'waiting',
  wantedOn: '2026-12-11',
  // The last day of the worked order: blanks have to be ordered on Monday the 30th.
  approveBy: '2026-11-30',
  ready: '2026-12-17',
  isApproved: false,
  isDepositPaid: false,
  childRows: 0,
  addresses: 0,
};

const verdict = (changes: Partial<OrderScene>) =>
  checkOrder({ ...scene, ...changes })
    .map(({ id, severity, variant }) => `${id} ${severity} ${variant}`)
    .join(', ');

describe('TIM-03 holds approval and deposit against the last day for them', () => {
  it.each<[string, Partial<OrderScene>, string]>([
    ['on the last day', { asOf: '2026-11-30' }, ''],
    ['a day later', {}, 'TIM-03 caution both'],
    ['a day later, approved', { isApproved: true }, 'TIM-03 caution deposit'],
    ['a day later, paid', { isDepositPaid: true }, 'TIM-03 caution approval'],
    ['a day later, both there', { isApproved: true, isDepositPaid: true }, ''],
    ['no day agreed', { wantedOn: null, approveBy: null }, ''],
    ['no day reckoned', { approveBy: null }, ''],
    ['being made already', { stage: 'making' }, ''],
    ['called off', { stage: 'over' }, ''],
  ])('%s', (_, changes, expected) => {
    expect(verdict(changes)).toBe(expected);
  });

  it('tells the day that could be kept now, and none where there is none', () => {
    expect(checkOrder(scene)[0]?.facts).toMatchObject({ approveBy: '2026-11-30', ready: '2026-12-17' });
    expect(checkOrder({ ...scene, ready: null })[0]?.facts).toMatchObject({ ready: '' });
  });
});

describe('LAW-09 notes personal data that is kept', () => {
  const answered = { isApproved: true, isDepositPaid: true };

  it.each<[Partial<OrderScene>, string]>([
    [{}, ''],
    [{ childRows: 1 }, 'LAW-09 note needed'],
    [{ addresses: 1 }, 'LAW-09 note needed'],
    [{ addresses: 1, stage: 'making' }, 'LAW-09 note needed'],
    [{ childRows: 1, stage: 'over' }, 'LAW-09 note over'],
  ])('%o: %s', (changes, expected) => {
    expect(verdict({ ...answered, ...changes })).toBe(expected);
  });

  it('counts rows with a name in a size that is a child’s by its name or its garment', () => {
    const row = (name: string, size: string): NameRow => ({ id: `${name}-${size}`, name, size, number: '' });
    const shirt = club().blanks['white-shirt'];
    const sizes = ['Youth M', 'M'].map((name) => ({ ...shirt?.sizes[0], name }));
    const both = clubWith({ 'blank:white-shirt.sizes': sizes }).blanks['white-shirt'];
    const small = clubWith({ 'blank:white-shirt.forChildren': true }).blanks['white-shirt'];
    if (shirt === undefined || both === undefined || small === undefined) throw new Error('no shirt');
    const rows = [row('Ada', 'Youth M'), row('Ben', 'M'), row(' ', 'Youth M')];
    expect(childRows(rows, both)).toBe(1);
    expect(childRows([row('Ada', 'M')], shirt)).toBe(0);
    // No size of it names a child, and all of it is for children.
    expect(childRows([row('Ada', 'M'), row('Ben', 'L')], small)).toBe(2);
  });
});
