// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { PaperQuestion, PaperReply } from '@/app/_papers/messages';
import { PriceListScreen } from '@/app/_priceLists/PriceListScreen';
import { studies } from '@/app/_studies/studies';
import type { StudyAsk } from '@/app/_studies/useStudies';
import { grid } from '@/tests/fixtures/costed';
import { clearScreens, enter } from '../_screens/screens';

vi.mock('next/navigation', () => ({ useRouter: () => ({ push: () => undefined }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('../_screens/screens');
  return { appDocuments };
});
vi.mock('@/app/_studies/useStudies', async () => {
  const { useMemo } = await import('react');
  return {
    useStudies: (name: 'freezeItem' | 'compareItem', asks: readonly StudyAsk<'freezeItem'>[]) =>
      useMemo(() => {
        const study = studies[name] as (...asked: readonly unknown[]) => unknown;
        return new Map(
          asks.map((ask) => [ask.key, { ask, answer: study(ask.input, grid, ask.question), failure: null }]),
        );
      }, [name, asks]),
  };
});
const asked = vi.hoisted(() => ({ papers: [] as PaperQuestion[], pages: 1 }));
vi.mock('@/app/_papers/writePaper', () => ({
  writePaper: (question: PaperQuestion, onNews: (news: PaperReply) => void) => {
    asked.papers.push(question);
    const kind = question.kind === 'paper' ? question.source.kind : '';
    const file = new Blob([kind]);
    queueMicrotask(() =>
      act(() => onNews({ kind: 'written', file, pages: asked.pages, lost: [], missing: [] })),
    );
    return () => undefined;
  },
}));
const saved = vi.hoisted(() => vi.fn<(name: string, content: Blob) => void>());
vi.mock('@/app/_files/saveBlob', () => ({ saveBlob: saved, fileName: (name: string) => name }));

beforeEach(() => {
  vi.stubGlobal('Worker', class {});
  asked.papers = [];
  asked.pages = 1;
  saved.mockClear();
});
afterEach(() => {
  cleanup();
  clearScreens();
  vi.unstubAllGlobals();
});

it('saves a price list as the file that papers are written as, a draft as a draft', async () => {
  await enter(<PriceListScreen listId="club-prices" />);
  const save = await screen.findByRole('button', { name: 'Save as PDF of the price list' });
  await waitFor(() => expect(save).not.toHaveAttribute('aria-disabled'));
  const sources = asked.papers.flatMap((question) => (question.kind === 'paper' ? [question.source] : []));
  expect(sources.find(({ kind }) => kind === 'priceList')).toMatchObject({
    body: { standing: 'draft', language: 'en' },
  });
  await userEvent.click(save);
  expect(saved.mock.calls[0]?.[0]).toMatch(/\.pdf$/);
});

it('saves what each price leaves as a file of its own, for the maker alone', async () => {
  await enter(<PriceListScreen listId="club-prices" />);
  const save = await screen.findByRole('button', { name: 'Save as PDF of your own sheet' });
  await waitFor(() => expect(save).not.toHaveAttribute('aria-disabled'));
  await userEvent.click(save);
  const [name, content] = saved.mock.calls[0] ?? [];
  expect(name).toMatch(/^For you alone.*\.pdf$/);
  expect(await content?.text()).toBe('ownSheet');
  const sources = asked.papers.flatMap((question) => (question.kind === 'paper' ? [question.source] : []));
  const own = sources.find(({ kind }) => kind === 'ownSheet');
  const cells = within(screen.getByRole('region', { name: 'Least margins' })).getAllByRole('cell');
  if (own?.kind !== 'ownSheet') throw new Error('no sheet of the maker’s own was asked for');
  const rows = own.body.tables[0]?.rows ?? [];
  expect(rows.flatMap(([, ...rest]) => rest)).toEqual(cells.map(({ textContent }) => textContent));
});

it.each([
  [1, 'It fits on one page.'],
  [2, 'It takes 2 pages.'],
])('tells of %i pages in the words of its file, and how it is printed', async (pages, words) => {
  asked.pages = pages;
  await enter(<PriceListScreen listId="club-prices" />);
  const told = await screen.findByText((text) => text.startsWith(words));
  expect(told).toHaveTextContent('To print it, open the saved file and print it from there.');
});
