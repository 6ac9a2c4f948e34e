import { describe, expect, it } from 'vitest';
import { isErasedForm } from '@/lib/erasing/erasedEntry';
import { planErasure } from '@/lib/erasing/planErasure';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';
import type { Entry } from '@/shared/schemas/happened';
import { clubDrafts, clubEntries, clubPapers, NAME, PERSONAL } from '@/tests/fixtures/clubDocuments';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const DAY = '2026-11-27';
const from = { drafts: clubDrafts(), papers: clubPapers, entries: clubEntries };
const plan = planErasure('club', from, DAY);
const after = plan?.drafts ?? [];
const bodyOf = (id: string) => after.find((draft) => draft.id === id)?.body;
const entry = (list: readonly Entry[], count: number) => list.find((one) => one.count === count);

describe('planErasure', () => {
  it('leaves of the customer that there was one', () => {
    expect(bodyOf('club')).toEqual({
      ...{ name: 'Erased on 2026-11-27', erasedOn: '2026-11-27', people: [], addresses: [], note: '' },
      ...{ language: null, taxNumber: '', exemption: null },
    });
  });

  it('leaves no name in the orders, jobs and entries of the customer', () => {
    const text = JSON.stringify([after, plan?.entries]).toLowerCase();
    for (const personal of PERSONAL) expect(text).not.toContain(personal.toLowerCase());
  });

  it('keeps sizes, places of prices and open items of the order', () => {
    expect(bodyOf('order-1')).toMatchObject({
      name: 'Shirts for Erased',
      customerId: 'club',
      askedPieces: 37,
      openItems: [{ what: 'Sizes from Erased' }],
      lines: [
        {
          price: { from: 'list', paperId: 'devicea1-1' },
          names: [
            { id: 'n1', name: '', size: 'L', number: '' },
            { id: 'n2', name: '', size: 'M', number: '' },
          ],
        },
      ],
      charges: [{ what: 'Design for Erased', amount: 20 }],
      discount: { share: 0.05, why: '' },
      attachments: [],
    });
  });

  it('changes nothing that is of others, and makes only what can be read', () => {
    expect(after.map(({ id }) => id).toSorted()).toEqual(['club', 'club-order', 'order-1']);
    for (const { kind, body } of after)
      expect(kinds[kind as keyof typeof kinds].schema.safeParse(body).success, kind).toBe(true);
    for (const { kind, body } of plan?.entries ?? [])
      expect(entryKinds[kind as keyof typeof entryKinds].schema.safeParse(body).success, kind).toBe(true);
  });

  it('keeps of entries what happened, when and for how much', () => {
    const entries = plan?.entries ?? [];
    expect(entries.map(({ count }) => count)).toEqual([24, 25, 26, 27, 28, 29, 30, 33]);
    expect(entry(entries, 24)?.body).toMatchObject({
      step: { what: 'accepted', paperId: 'devicea1-2', by: 'Erased', how: 'signedPaper', proof: null },
    });
    expect(entry(entries, 28)?.body).toMatchObject({ amountMinor: 38066, note: '' });
    expect(entry(entries, 33)?.body).toMatchObject({
      paymentId: 'devicea1-28',
      day: TEST_DAY,
      reference: '',
    });
    expect(entry(entries, 29)?.body).toMatchObject({ what: 'Blanks for Erased', amountMinor: 17000 });
  });

  it('tells the papers that stay', () => {
    expect(plan?.papersKept.map(({ id }) => id)).toEqual(['devicea1-2']);
  });

  it('tells other drafts in which the name stands, and leaves them as they are', () => {
    const drafts = from.drafts.map((draft) =>
      draft.id === 'last-year'
        ? { ...draft, body: { ...Object(draft.body), note: `as ${NAME} had it` } }
        : draft,
    );
    const other = planErasure('club', { ...from, drafts }, DAY);
    expect(other?.stillNamed.map(({ id }) => id)).toEqual(['last-year']);
    expect(other?.drafts.map(({ id }) => id)).not.toContain('last-year');
  });

  it('erases what was removed too, and is nothing where there is no such customer', () => {
    const drafts = from.drafts.map((draft) => ({ ...draft, deletedAt: 5 }));
    expect(planErasure('club', { ...from, drafts }, DAY)?.drafts).toHaveLength(3);
    expect(planErasure('nobody', from, DAY)).toBeNull();
    expect(planErasure('order-1', from, DAY)).toBeNull();
  });
});

describe('isErasedForm', () => {
  const before = entry(clubEntries, 24);
  const erased = entry(plan?.entries ?? [], 24);
  if (before === undefined || erased === undefined) throw new Error('no such entry');

  it('holds between an entry and the same erased, either way round', () => {
    expect(isErasedForm(before, erased)).toBe(true);
    expect(isErasedForm(erased, before)).toBe(true);
  });

  it('does not hold between two that say different things', () => {
    expect(isErasedForm({ ...before, at: 5 }, erased)).toBe(false);
    const other = { ...before, body: { ...Object(before.body), day: '2026-01-01' } };
    expect(isErasedForm(other, erased)).toBe(false);
    const twin = { ...before, body: JSON.parse(JSON.stringify(before.body).replace('signedPaper', 'phone')) };
    expect(isErasedForm(before, twin)).toBe(false);
  });
});
