// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen, waitFor } from '@testing-library/react';
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
const asked = vi.hoisted(() => ({ papers: [] as PaperQuestion[] }));
vi.mock('@/app/_papers/writePaper', () => ({
  writePaper: (question: PaperQuestion, onNews: (news: PaperReply) => void) => {
    asked.papers.push(question);
    queueMicrotask(() =>
      act(() => onNews({ kind: 'written', file: new Blob(['%PDF']), lost: [], missing: [] })),
    );
    return () => undefined;
  },
}));
const saved = vi.hoisted(() => vi.fn<(name: string, content: Blob) => void>());
vi.mock('@/app/_files/saveBlob', () => ({ saveBlob: saved, fileName: (name: string) => name }));

beforeEach(() => {
  vi.stubGlobal('Worker', class {});
  asked.papers = [];
});
afterEach(() => {
  cleanup();
  clearScreens();
  vi.unstubAllGlobals();
});

it('saves a price list as the file that papers are written as, a draft as a draft', async () => {
  await enter(<PriceListScreen listId="club-prices" />);
  const save = await screen.findByRole('button', { name: 'Save as PDF of the price list' });
  await waitFor(() => expect(save).not.toHaveAttribute('aria-disabled'), { timeout: 3000 });
  const [question] = asked.papers;
  expect(question?.kind === 'paper' && question.source).toMatchObject({
    kind: 'priceList',
    body: { standing: 'draft', language: 'en' },
  });
  await userEvent.click(save);
  expect(saved.mock.calls[0]?.[0]).toMatch(/\.pdf$/);
});
