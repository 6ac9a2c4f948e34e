import { describe, expect, it } from 'vitest';
import { ownChangedAt } from '@/app/_copies/ownChanges';

type Facts = Parameters<typeof ownChangedAt>[0];
const aDocument = (id: string, revision: number, updatedAt: number): Facts['documents'][number] => ({
  id,
  kind: 'job',
  version: 4,
  revision,
  updatedAt,
  // Nothing of it is read.
  body: JSON.parse('{}'),
});
const noPapers: Facts['papers'] = {
  priceListVersion: [],
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
};
const none: Facts = {
  documents: [],
  removed: [],
  entries: {
    stockMove: [],
    stockCount: [],
    stockTransfer: [],
    inkRefill: [],
    inkPrints: [],
    approval: [],
    orderEvent: [],
    payment: [],
    payout: [],
    expense: [],
    stallTap: [],
    shopPrice: [],
    shopStatement: [],
    shopPayment: [],
    pressing: [],
    blankFault: [],
    sheetsPrinted: [],
    runActual: [],
    runStep: [],
    hours: [],
    pressTest: [],
    washCheck: [],
    goodsIn: [],
    faultClaim: [],
    rateTaken: [],
    issuing: [],
    takeBack: [],
  },
  papers: noPapers,
  device: { id: 'deviceofm', letter: 'M' },
};
const anApproval = (artworkId: string, device: string, at: number) => ({
  ...({ id: `${device}-1`, kind: 'approval', version: 1, device, count: 1, at } as const),
  body: { artworkId, version: 1, on: '2026-11-26' },
});

describe('ownChangedAt', () => {
  it('is null while the example is as it came, with the approvals it brings', () => {
    const documents = [aDocument('club-order', 1, 5), aDocument('workshop', 1, 5)];
    const approval = [anApproval('club-crest', 'deviceofm', 9)];
    expect(ownChangedAt({ ...none, documents, entries: { ...none.entries, approval } })).toBeNull();
  });

  it('counts what was changed of the example, made and removed', () => {
    expect(ownChangedAt({ ...none, documents: [aDocument('club-order', 2, 7)] })).toBe(7);
    expect(ownChangedAt({ ...none, documents: [aDocument('own', 1, 8)] })).toBe(8);
    expect(ownChangedAt({ ...none, removed: [aDocument('club-order', 2, 9)] })).toBe(9);
  });

  it('counts what was noted here, and not what another device noted', () => {
    const approval = [anApproval('own-picture', 'deviceofm', 11), anApproval('own-picture', 'deviceofk', 20)];
    expect(ownChangedAt({ ...none, entries: { ...none.entries, approval } })).toBe(11);
  });
});
