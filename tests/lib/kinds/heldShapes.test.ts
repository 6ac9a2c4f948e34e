import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { heldVersionsSchema } from '@/lib/kinds/priceList/heldVersions';
import { inkRecordLeaves } from '@/lib/kinds/workshop/inkRecordLeaves';
import priceList2 from '@/tests/fixtures/stored/priceList2.json' with { type: 'json' };
import store from '@/tests/fixtures/stored/storeBeforeEntries.json' with { type: 'json' };
import workshop4 from '@/tests/fixtures/stored/workshop4.json' with { type: 'json' };

const reading = [
  'heldShapes.ts',
  'priceList/heldVersions.ts',
  'priceList/versionsLeave.ts',
  'workshop/inkRecordLeaves.ts',
  'artwork/approvalLeaves.ts',
  'blank/stockLeaves.ts',
];

it.each(reading)('what leaves an old record is read by no schema of today: %s', (file) => {
  const text = readFileSync(new URL(`../../../lib/kinds/${file}`, import.meta.url), 'utf8');
  const imports = text.match(/^import (?!type)[^;]*from '@\/shared\/schemas\/[^']*';/gm) ?? [];
  expect(imports.filter((line) => !line.endsWith("'@/shared/schemas/z';"))).toEqual([]);
});

it('lists as they were saved give their versions as they stood, nothing added and nothing dropped', () => {
  const saved = store.tables.documents.flatMap(({ kind, body }) =>
    kind === 'priceList' && 'versions' in body ? [body.versions] : [],
  );
  expect(saved).not.toEqual([]);
  for (const versions of [priceList2.body.versions, ...saved]) {
    expect(heldVersionsSchema.parse(versions)).toEqual(versions);
  }
});

it('a workshop as it was saved gives its refills and prints as they stood', () => {
  const { refills, runs } = workshop4.body.inkRecord;
  const without = ({ id: _, ...rest }: { readonly id: string }) => rest;
  expect(inkRecordLeaves(workshop4.body).entries.map(({ body }) => body)).toEqual([
    ...refills.map(without),
    ...runs.map((run) => ({ ...without(run), jobId: null })),
  ]);
});
