// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { CopyDue } from '@/app/_copies/CopyDue';

afterEach(cleanup);

describe('CopyDue', () => {
  it('says how old the copy is, leads to the copies and makes one', async () => {
    const onMake = vi.fn();
    const standing = { state: 'copied', daysOld: 12, hasNew: true, isDue: true } as const;
    render(<CopyDue standing={standing} isKept isBusy={false} onMake={onMake} />);
    const link = screen.getByRole('link', { name: /^Kept here, copy is.* 12 days old$/ });
    expect(link).toHaveAttribute('href', '/workshop#copies');
    await userEvent.tab();
    await userEvent.tab();
    expect(screen.getByRole('button', { name: 'Make a copy' })).toHaveFocus();
    await userEvent.keyboard('{Enter}');
    expect(onMake).toHaveBeenCalledTimes(1);
  });

  it('says that there is none, and waits while one is being made', async () => {
    const onMake = vi.fn();
    render(<CopyDue standing={{ state: 'never', isDue: true }} isKept isBusy onMake={onMake} />);
    expect(screen.getByRole('link', { name: /^Kept here, no copy yet$/ })).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Make a copy' }));
    expect(onMake).not.toHaveBeenCalled();
  });
});
