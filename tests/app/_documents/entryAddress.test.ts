import { expect, it } from 'vitest';
import { entryAddress } from '@/app/_documents/entryAddress';
import type { ShownPaper } from '@/app/_store/happenedState';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const documents = exampleDocuments(TEST_DAY);
const paper: ShownPaper<'priceListVersion', PriceListVersion> = {
  id: 'phone000-1',
  kind: 'priceListVersion',
  version: 1,
  device: 'phone000',
  count: 1,
  at: 0,
  series: 'shirts',
  number: { count: 1, letter: 'B' },
  about: { kind: 'priceList', id: 'shirts' },
  sha256: '',
  file: null,
  body: {} as PriceListVersion,
  withdrawn: true,
};
const workspace = {
  jobs: documents.flatMap(({ id, kind, body }) => (kind === 'job' ? [{ id, job: body, updatedAt: 0 }] : [])),
  blanks: Object.fromEntries(
    documents.flatMap(({ id, kind, body }) => (kind === 'blank' ? [[id, body]] : [])),
  ),
  papers: {
    priceListVersion: [paper],
    quote: [],
    confirmation: [],
    paymentRequest: [],
    invoice: [],
    receipt: [],
    creditNote: [],
    proof: [],
    deliveryNote: [],
    stallPlan: [],
    dayClose: [],
    runStandard: [],
    supplyOrder: [],
  },
};
const blankId = Object.keys(workspace.blanks)[0] ?? '';
const [job] = workspace.jobs;
const artworkId = job?.job.lines[0]?.placements[0]?.artworkId ?? '';
const count = (id: string) => ({
  item: { kind: 'blank', blankId: id, size: 'L', lot: null },
  place: { kind: 'home' },
  grade: 'first',
  quantity: 3,
});

it.each([
  ['inkRefill', { day: '2026-11-03', mL: 70 }, '/workshop#ink-record'],
  ['stockCount', count(blankId), `/blanks#blank-${blankId}`],
  ['stockCount', count('removed'), null],
  ['approval', { artworkId, version: 1 }, `/jobs/${job?.id}`],
  ['approval', { artworkId: 'nobodys', version: 1 }, null],
  ['issuing', { paperId: 'phone000-1' }, '/price-lists/shirts'],
  ['issuing', { paperId: 'phone000-2' }, null],
  ['holiday', {}, null],
])('a note of the kind %s is seen where what it is about is seen', (kind, body, address) => {
  expect(entryAddress({ kind, body }, workspace)).toBe(address);
});
