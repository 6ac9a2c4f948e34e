import { describe, expect, it } from 'vitest';
import { isErasedForm } from '@/lib/erasing/erasedEntry';
import { planErasure } from '@/lib/erasing/planErasure';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';
import { blankSchema } from '@/shared/schemas/blank';
import type { Entry } from '@/shared/schemas/happened';
import { jobSchema } from '@/shared/schemas/job';
import { clubDrafts, clubEntries, clubPapers, NAME, PERSONAL } from '@/tests/fixtures/clubDocuments';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const DAY = '2026-11-27';
const from = { drafts: clubDrafts(), papers: clubPapers, entries: clubEntries };
const plan = planErasure('club', from, DAY);
const after = plan?.drafts ?? [];
const bodyOf = (id: string) => after.find((draft) => draft.id === id)?.body;
const blankOf = (jobId: string) =>
  jobSchema.parse(from.drafts.find(({ id }) => id === jobId)?.body).lines[0]?.blankId;
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
    expect(other?.stillNamed).toEqual([
      { where: 'elsewhere', kind: 'order', id: 'last-year', path: 'note', text: `as ${NAME} had it` },
    ]);
    expect(other?.drafts.map(({ id }) => id)).not.toContain('last-year');
  });

  it('erases what was removed too, and is nothing where there is no such customer', () => {
    const drafts = from.drafts.map((draft) => ({ ...draft, deletedAt: 5 }));
    expect(planErasure('club', { ...from, drafts }, DAY)?.drafts).toHaveLength(3);
    expect(planErasure('nobody', from, DAY)).toBeNull();
    expect(planErasure('order-1', from, DAY)).toBeNull();
  });
});

describe('pieces named like sizes, choices and blanks', () => {
  const rows = ['Held', 'SMALL', 'Blocks'].map((name, at) => ({ id: `n${at}`, name, size: 'Small' }));
  const shirt = from.drafts.find(({ kind, id }) => kind === 'blank' && id === blankOf('club-order'));
  const [size] = blankSchema.parse(shirt?.body).sizes;
  const drafts = [
    ...from.drafts.map((draft) => {
      const body = Object(draft.body);
      if (draft.id === 'order-1')
        return { ...draft, body: { ...body, lines: [{ ...body.lines[0], names: rows }] } };
      if (draft.id !== 'club-order') return draft;
      const lines = jobSchema
        .parse(body)
        .lines.map((line) => ({ ...line, blankId: 'own', quantities: [{ size: 'Small', quantity: 3 }] }));
      return { ...draft, body: { ...body, lines } };
    }),
    {
      ...{ kind: 'blank', id: 'own', version: shirt?.version ?? 1, revision: 1, updatedAt: 1 },
      body: {
        ...Object(shirt?.body),
        ...{ name: `Small shirt of ${NAME}`, sizes: [{ ...size, name: 'Small' }] },
      },
    },
  ];
  const other = planErasure('club', { ...from, drafts }, DAY);
  const bodyIn = (id: string) => other?.drafts.find((draft) => draft.id === id)?.body;

  it('leave what was chosen in entries as it was, so that each can still be read', () => {
    expect(entry(other?.entries ?? [], 27)?.body).toMatchObject({ step: { what: 'held', note: '' } });
    for (const { kind, body } of other?.entries ?? [])
      expect(entryKinds[kind as keyof typeof entryKinds].schema.safeParse(body).success, kind).toBe(true);
  });

  it('leave sizes and blanks their names; of the customer alone a blank loses the name', () => {
    expect(bodyIn('own')).toMatchObject({ name: 'Small shirt of Erased', sizes: [{ name: 'Small' }] });
    expect(bodyIn('club-order')).toMatchObject({ lines: [{ quantities: [{ size: 'Small' }] }] });
    expect(bodyIn('order-1')).toMatchObject({ lines: [{ names: [{ size: 'Small' }, {}, {}] }] });
  });
});

describe('a first name or surname alone', () => {
  const drafts = from.drafts.map((draft) =>
    draft.id === 'order-1'
      ? {
          ...draft,
          body: {
            ...Object(draft.body),
            name: 'Shirts for Wilhelmina',
            openItems: [{ id: 'o1', what: 'Letter of wilhelmina', ofWhom: 'customer' }],
            charges: [{ id: 'c1', kind: 'own', what: 'Drive to Testperson', amount: 20 }],
          },
        }
      : draft,
  );
  const entries = clubEntries.map((one) =>
    one.count === 29 ? { ...one, body: { ...Object(one.body), what: 'Cap for Zebulon' } } : one,
  );
  const other = planErasure('club', { ...from, drafts, entries }, DAY);

  it('stays in what is the customer’s own, and is told with its place', () => {
    expect(other?.stillNamed).toEqual([
      { where: 'ownDraft', kind: 'order', id: 'order-1', path: 'name', text: 'Shirts for Wilhelmina' },
      {
        where: 'ownDraft',
        kind: 'order',
        id: 'order-1',
        path: 'openItems.what',
        text: 'Letter of wilhelmina',
      },
      { where: 'ownDraft', kind: 'order', id: 'order-1', path: 'charges.what', text: 'Drive to Testperson' },
      { where: 'ownEntry', kind: 'expense', id: 'devicea1-29', path: 'what', text: 'Cap for Zebulon' },
    ]);
    expect(other?.drafts.find(({ id }) => id === 'order-1')?.body).toMatchObject({
      name: 'Shirts for Wilhelmina',
    });
  });

  it('is looked for in nothing of others, where it is anybody’s', () => {
    const elsewhere = from.drafts.map((draft) =>
      draft.id === 'last-year' ? { ...draft, body: { ...Object(draft.body), note: 'Wilhelmina' } } : draft,
    );
    expect(planErasure('club', { ...from, drafts: elsewhere }, DAY)?.stillNamed).toEqual([]);
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

  const stepOf = (step: object): Entry => ({ ...before, body: { orderId: 'order-1', day: DAY, step } });
  const expenseOf = (what: string): Entry => ({
    ...before,
    kind: 'expense',
    body: { ...Object(entry(clubEntries, 29)?.body), what },
  });

  it('does not hold between two steps of different sorts, though neither names anybody', () => {
    const printed = stepOf({ what: 'printed', note: '' });
    expect(isErasedForm(printed, stepOf({ what: 'cancelled', note: '' }))).toBe(false);
    expect(isErasedForm(printed, stepOf({ what: 'printed', note: '', versions: [] }))).toBe(false);
    expect(isErasedForm(printed, stepOf({ what: 'printed', note: 'by Ana' }))).toBe(true);
  });

  it('does not hold where a reason that was chosen differs', () => {
    const lost = (why: string, note = '') => stepOf({ what: 'lost', why, note });
    expect(isErasedForm(lost('price'), lost('date'))).toBe(false);
    expect(isErasedForm(lost('price'), lost('price', 'too dear for Ana'))).toBe(true);
  });

  it('does not hold where both still say something typed', () => {
    expect(isErasedForm(stepOf({ what: 'held', note: 'one' }), stepOf({ what: 'held', note: 'other' }))).toBe(
      false,
    );
  });

  it('holds between what was bought and the same without the names, and no other thing', () => {
    expect(isErasedForm(expenseOf('Blanks for Erased'), expenseOf('Blanks for Ana Silva'))).toBe(true);
    expect(isErasedForm(expenseOf('Ink for Ana'), expenseOf('Ink for Erased'))).toBe(true);
    expect(isErasedForm(expenseOf('Blanks'), expenseOf('Ink'))).toBe(false);
    expect(isErasedForm(expenseOf('Blanks for Erased'), expenseOf('Ink for Ana'))).toBe(false);
    expect(isErasedForm(expenseOf('Erased and Erased, mugs'), expenseOf('Ana and Bo, mugs'))).toBe(true);
    expect(isErasedForm(expenseOf('Erased and Erased, mugs'), expenseOf('Ana, mugs'))).toBe(false);
  });
});
