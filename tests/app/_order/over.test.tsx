// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { clearScreens } from '@/tests/app/_screens/screens';
import { accepted, approve, change, dayIn, enterOrder, pay, quote, rows, said, tell } from './inOrder';

vi.mock('next/navigation', () => ({
  usePathname: () => '/orders/club-enquiry',
  useRouter: () => ({ push: () => undefined }),
}));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});
vi.mock('@/app/_studies/useStudies', () => ({ useStudies: () => new Map() }));

afterEach(() => {
  cleanup();
  clearScreens();
});

/** What may be noted out of turn. */
async function offered(): Promise<readonly string[]> {
  const summary = screen.getByText('Something else happened');
  await userEvent.click(summary);
  const fold = summary.closest('details');
  if (fold === null) throw new Error('nothing is folded there');
  return within(fold)
    .getAllByRole('button')
    .map(({ textContent }) => textContent);
}

describe('an order that is over', () => {
  it.each([
    ['closed', () => tell({ what: 'closed', note: '' }, dayIn(-3))],
    ['cancelled', () => tell({ what: 'cancelled', note: '' }, dayIn(-3))],
    ['lost', () => tell({ what: 'lost', why: 'price', note: '' }, dayIn(-3))],
  ])('as %s waits for nobody since a day, and offers to be opened again alone', async (_, end) => {
    await enterOrder();
    approve(true);
    await accepted();
    change({ openItems: [] });
    pay(76131);
    end();
    const [row] = rows().filter((text) => text.includes('It is over'));
    expect(row).toBe(`It is oversince ${said(dayIn(-3))}Open it again`);
    expect(await offered()).toEqual(['Opened again']);
  });

  it('as put away tells since when', async () => {
    await enterOrder();
    change({ archivedOn: dayIn(-2) });
    expect(rows().filter((text) => text.includes('It is over'))).toEqual([
      `It is oversince ${said(dayIn(-2))}`,
    ]);
  });
});

describe('a quote', () => {
  it('that is accepted is not on offer to be accepted again, and the next one is', async () => {
    await enterOrder();
    await accepted();
    expect(await offered()).not.toContain('Accepted');
    await quote();
    expect(screen.getByRole('button', { name: 'Accepted' })).toBeVisible();
  });
});
