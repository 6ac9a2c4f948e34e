import fc from 'fast-check';
import { expect, it } from 'vitest';
import { approvedVersions } from '@/lib/artwork/approvedVersions';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import type { Approval } from '@/shared/schemas/entries';
import type { Entry } from '@/shared/schemas/happened';
import { cases } from '@/tests/tools/cases';

const approval = (
  count: number,
  body: Approval,
  device = 'aaaaaaaa',
  at = count,
): Entry<'approval', Approval> => ({
  id: `${device}-${count}`,
  kind: 'approval',
  version: 1,
  device,
  count,
  at,
  body,
});

it('approvedVersions is the last word on each artwork', () => {
  const said = [
    approval(1, { artworkId: 'crest', version: 1 }),
    approval(2, { artworkId: 'path', version: 3 }),
    approval(3, { artworkId: 'crest', version: 2 }),
    approval(4, { artworkId: 'path', version: null }),
  ];
  expect(approvedVersions(said)).toEqual({ crest: 2 });
  expect(approvedVersions([])).toEqual({});
});

it('approvedVersions is the same whatever arrives first', () => {
  const drawn = fc
    .array(
      fc.tuple(
        fc.constantFrom('aaaaaaaa', 'bbbbbbbb'),
        fc.constantFrom('crest', 'path'),
        fc.option(fc.integer({ min: 1, max: 5 })),
        fc.nat(9),
      ),
      { maxLength: 10 },
    )
    .map((all) =>
      all.map(([device, artworkId, version, at], index) =>
        approval(index + 1, { artworkId, version }, device, at),
      ),
    )
    .chain((entries) =>
      fc.tuple(fc.constant(entries), fc.shuffledSubarray(entries, { minLength: entries.length })),
    );
  fc.assert(
    fc.property(drawn, ([entries, arrived]) => {
      expect(approvedVersions(entriesInForce(arrived))).toEqual(approvedVersions(entriesInForce(entries)));
    }),
    cases(100),
  );
});
