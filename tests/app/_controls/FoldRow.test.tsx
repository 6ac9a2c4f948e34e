// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { type FoldOfRow, FoldRow } from '@/app/_controls/FoldRow';
import { RevealContext } from '@/app/_controls/reveal';

afterEach(() => {
  cleanup();
  localStorage.clear();
});

const fold = (id: string, fieldId: string): FoldOfRow => ({
  id,
  fieldId,
  name: `Fold ${id}`,
  holds: [fieldId],
  body: () => <input aria-label={`field of ${id}`} id={`${fieldId}-name`} />,
});
const button = (id: string) => screen.getByRole('button', { name: `Fold ${id}` });
const row = (place: string, ...folds: readonly FoldOfRow[]) => <FoldRow place={place} folds={folds} />;

describe('a row of folds', () => {
  it('builds nothing before it is opened, and keeps half-typed text when it is folded again', () => {
    render(row('job-1', fold('a', 'job-0')));
    expect(screen.queryByLabelText('field of a')).toBeNull();
    fireEvent.click(button('a'));
    fireEvent.change(screen.getByLabelText('field of a'), { target: { value: 'half' } });
    fireEvent.click(button('a'));
    expect(screen.getByLabelText('field of a')).not.toBeVisible();
    expect(screen.getByLabelText('field of a')).toHaveValue('half');
  });

  it('stays as the maker left it at the next visit, each job by itself', () => {
    const { unmount } = render(row('job-1', fold('a', 'job-0'), fold('b', 'job-1')));
    fireEvent.click(button('b'));
    unmount();
    const again = render(row('job-1', fold('a', 'job-0'), fold('b', 'job-1')));
    expect(button('a')).toHaveAttribute('aria-expanded', 'false');
    expect(button('b')).toHaveAttribute('aria-expanded', 'true');
    again.unmount();
    render(row('job-2', fold('b', 'job-1')));
    expect(button('b')).toHaveAttribute('aria-expanded', 'false');
  });

  it('goes by what a fold is about, not by where it stands', () => {
    const { rerender } = render(row('job-1', fold('back', 'job-0'), fold('chest', 'job-1')));
    fireEvent.click(button('chest'));
    rerender(row('job-1', fold('chest', 'job-0'), fold('back', 'job-1')));
    expect(button('chest')).toHaveAttribute('aria-expanded', 'true');
    expect(button('chest')).toHaveAttribute('id', 'job-0');
    expect(button('back')).toHaveAttribute('aria-expanded', 'false');
  });

  it('opens for a field that is to be shown, and does not keep that for the next visit', () => {
    const of = (turn: number) => (
      <RevealContext value={{ id: turn === 0 ? null : 'job-1-name', turn }}>
        {row('job-1', fold('a', 'job-0'), fold('b', 'job-1'))}
      </RevealContext>
    );
    const { rerender, unmount } = render(of(0));
    rerender(of(1));
    expect(button('b')).toHaveAttribute('aria-expanded', 'true');
    expect(screen.getByLabelText('field of b')).toBeVisible();
    unmount();
    render(of(0));
    expect(button('b')).toHaveAttribute('aria-expanded', 'false');
  });

  it('says which is which where several are open, and nothing twice where one is', () => {
    render(row('job-1', fold('a', 'job-0'), fold('b', 'job-1')));
    const named = (id: string) => screen.queryAllByText(`Fold ${id}`).filter((one) => one.tagName === 'P');
    fireEvent.click(button('a'));
    expect(named('a')).toHaveLength(0);
    fireEvent.click(button('b'));
    for (const id of ['a', 'b']) {
      const [name, ...others] = named(id);
      expect(others).toEqual([]);
      expect(name).toBeVisible();
      expect(name?.parentElement).toContainElement(screen.getByLabelText(`field of ${id}`));
    }
    fireEvent.click(button('a'));
    expect(named('b')).toHaveLength(0);
  });
});
