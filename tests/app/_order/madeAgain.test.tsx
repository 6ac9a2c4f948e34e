// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { clearScreens } from '@/tests/app/_screens/screens';
import { accepted, approve, enterOrder, form, pay, steps, tell } from './inOrder';

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

/** The form, and what it asks of so many of the 37 pieces. */
async function askedOf(pieces: string) {
  await userEvent.click(screen.getByText('Something else happened'));
  await userEvent.click(screen.getByRole('button', { name: 'Made again' }));
  const again = form('Made again');
  await userEvent.type(again.getByLabelText('Pieces'), pieces);
  return again;
}

async function enterPressed(): Promise<void> {
  await enterOrder();
  approve(true);
  await accepted();
  pay(76131);
  tell({ what: 'pressed', note: '' });
}

describe('pieces made again', () => {
  it('of all that were ordered are asked about no more than a few', async () => {
    await enterPressed();
    const again = await askedOf('37');
    expect(again.getByLabelText('Pieces')).not.toHaveAccessibleDescription();
    expect(again.getByRole('button', { name: 'Note it' })).toBeVisible();
  });

  it('above what was ordered are asked about, and noted all the same', async () => {
    await enterPressed();
    const again = await askedOf('38');
    expect(again.getByLabelText('Pieces')).toHaveAccessibleDescription(
      'The order has 37 pieces in all. Are 38 made again? More pieces for the customer are a change of the order.',
    );
    await userEvent.click(again.getByRole('button', { name: 'Note it all the same' }));
    expect(steps().at(-1)).toMatchObject({ what: 'reprint', pieces: 38 });
  });

  it('before any was pressed are asked about', async () => {
    await enterOrder();
    await accepted();
    const again = await askedOf('2');
    expect(again.getByLabelText('Pieces')).toHaveAccessibleDescription(
      /^Nothing of this order is noted as pressed yet\./,
    );
    expect(again.getByRole('button', { name: 'Note it all the same' })).toBeVisible();
  });
});
