// @vitest-environment jsdom

import { expect, it } from 'vitest';
import { handedOut } from '@/app/_order/bench/handedOut';
import { raiseSequences } from '@/lib/exports/raiseSequences';

type EntryNow = Parameters<typeof handedOut.of>[1][number];

const press: EntryNow = {
  id: 'order-1-press',
  when: { kind: 'time', day: '2026-12-01', fromMinute: 1080, minutes: 60 },
  title: 'Press: Shirts for Alex Placeholder, 26-014A',
  details: 'fetched by Alex',
};
const wanted: EntryNow = {
  id: 'order-1-wanted',
  when: { kind: 'days', from: '2026-12-11', to: '2026-12-11' },
  title: 'Due: Shirts for Alex Placeholder, 26-014A',
  details: '',
};
const sent = [press, wanted].map((entry) => ({ ...entry, sequence: 3, isCancelled: false }));

it('remembers of a calendar file no word that names anybody', () => {
  handedOut.remember('order-1', sent);
  const kept = JSON.stringify(Object.entries(localStorage));
  expect(kept).toContain('order-1-press');
  expect(kept).not.toMatch(/alex|placeholder|shirts/i);
});

it('knows by it what is unchanged, moved, called otherwise or called off', () => {
  handedOut.remember('order-1', sent);
  const next = (now: readonly EntryNow[]) =>
    raiseSequences(now, handedOut.of('order-1', now), 0).map(({ id, sequence, isCancelled }) => [
      id,
      sequence,
      isCancelled,
    ]);
  expect(next([press, wanted])).toEqual([
    ['order-1-press', 3, false],
    ['order-1-wanted', 3, false],
  ]);
  const named = { ...press, title: 'Press: Caps' };
  expect(next([named])).toEqual([
    ['order-1-press', 4, false],
    ['order-1-wanted', 4, true],
  ]);
  const moved: EntryNow = { ...wanted, when: { kind: 'days', from: '2026-12-12', to: '2026-12-12' } };
  expect(next([press, moved])[1]).toEqual(['order-1-wanted', 4, false]);
});
