// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { benchStore, clearBench } from '@/tests/app/_docket/bench';
import { layOut } from '@/tests/app/_docket/layOut';
import { openDialogs } from '@/tests/tools/openDialogs';

vi.mock('@/app/_store/appDocuments', async () => {
  const { benchStore: appDocuments } = await import('@/tests/app/_docket/bench');
  return { appDocuments };
});
vi.mock('@/app/_pricing/priceService', async () => {
  const { benchPrices: prices } = await import('@/tests/app/_docket/bench');
  return { startPriceService: prices.start };
});

beforeEach(() => {
  // The tests' browser scrolls nothing; the browser tests look at that.
  Element.prototype.scrollIntoView = vi.fn();
  openDialogs();
});

afterEach(() => {
  cleanup();
  clearBench();
  vi.unstubAllGlobals();
});

const index = () => within(screen.getByRole('navigation', { name: 'Sections of this job' }));
const sheet = () => within(screen.getByRole('dialog', { name: 'Sections of this job' }));
const words = (links: readonly HTMLElement[]) => links.map(({ textContent }) => textContent);

function orderSays(pieces: number): void {
  act(() => {
    benchStore().actions.edit('Pieces in all', [
      {
        do: 'change',
        kind: 'job',
        id: 'club-order',
        to: (body) => ({ ...body, lines: body.lines.map((line) => ({ ...line, orderedQuantity: pieces })) }),
      },
    ]);
  });
}

describe('the index of a docket', () => {
  it('names the nine sections with their figures', async () => {
    await layOut();
    expect(words(index().getAllByRole('link'))).toEqual([
      '1The job 37 shirts',
      '2Checks 2 to settle2',
      '3Sheets 53',
      '4Cost 11.13 a shirt',
      expect.stringMatching(/^5Prices \d/),
      '6Batch 40.5 % margin',
      '7Raise it 56.26 an hour',
      expect.stringMatching(/^8Extras/),
      '9Ways of selling 2 ways',
      'Job sheet',
    ]);
  });

  it('leads to a section and takes the focus to its heading', async () => {
    await layOut();
    fireEvent.click(index().getByRole('link', { name: /Checks/ }));
    expect(screen.getByRole('heading', { name: 'Checks' })).toHaveFocus();
    expect(Element.prototype.scrollIntoView).toHaveBeenCalled();
  });

  it('marks the section that is being read', async () => {
    const watchers: { readonly tell: (entries: readonly unknown[]) => void; readonly of: Element[] }[] = [];
    vi.stubGlobal(
      'IntersectionObserver',
      class {
        readonly of: Element[] = [];
        constructor(tell: (entries: readonly unknown[]) => void) {
          watchers.push({ tell, of: this.of });
        }
        observe(element: Element) {
          this.of.push(element);
        }
        disconnect() {}
      },
    );
    await layOut();
    const marked = () => words(index().getAllByRole('link', { current: 'location' }));
    expect(marked()).toEqual(['1The job 37 shirts']);
    const target = screen.getByRole('region', { name: 'Checks' });
    const watching = watchers.filter(({ of }) => of.includes(target));
    expect(watching.length).toBeGreaterThan(0);
    act(() => {
      for (const { tell } of watching) tell([{ isIntersecting: true, target }]);
    });
    expect(marked()).toEqual(['2Checks 2 to settle2']);
    // A jump to the top: the head of the job fills the upper third, and no section crosses the line.
    const first = screen.getByRole('region', { name: 'The job' });
    vi.spyOn(first, 'getBoundingClientRect').mockReturnValue(new DOMRect(0, 900, 800, 600));
    act(() => {
      for (const { tell } of watching) tell([{ isIntersecting: false, target }]);
    });
    expect(marked()).toEqual(['1The job 37 shirts']);
  });

  it('says behind a stop what waits, and the sections keep their headings with one line', async () => {
    await layOut();
    await screen.findByRole('heading', { name: 'Prices' });
    orderSays(38);
    await waitFor(() =>
      expect(index().getByRole('link', { name: /^2\s*Checks/ })).toHaveTextContent('1 stop'),
    );
    expect(index().getByRole('link', { name: /Cost/ })).toHaveTextContent('waits');
    expect(screen.getAllByText('Waits for the stop under “Checks”.')).toHaveLength(7);
    expect(screen.getAllByRole('heading', { level: 2 }).map(({ textContent }) => textContent)).toHaveLength(
      9,
    );
    fireEvent.click(index().getByRole('link', { name: /Sheets/ }));
    expect(screen.getByRole('heading', { name: 'Sheets' })).toHaveFocus();
    fireEvent.click(screen.getByText('Show the figures from before it'));
    expect(screen.getAllByText('Last good figures.').length).toBeGreaterThan(0);
    orderSays(37);
    await waitFor(() => expect(screen.queryByText('Last good figures.')).toBeNull());
    orderSays(38);
    expect(await screen.findAllByText('Waits for the stop under “Checks”.')).toHaveLength(7);
  });
});

describe('the sheet of the index', () => {
  const open = () => fireEvent.click(index().getByRole('button', { name: 'All sections' }));

  it('says the same as the rail', async () => {
    await layOut();
    expect(screen.queryByRole('dialog')).toBeNull();
    open();
    const rail = within(index().getByRole('list')).getAllByRole('link');
    expect(words(sheet().getAllByRole('link')).map((text) => text?.trim())).toEqual(
      words(rail).map((text) => text?.replace(/to settle2$/, 'to settle').trim()),
    );
  });

  it('closes by its button and by a press beside it', async () => {
    await layOut();
    open();
    await userEvent.click(sheet().getByRole('button', { name: 'Close' }));
    expect(screen.queryByRole('dialog')).toBeNull();
    open();
    fireEvent.click(screen.getByRole('dialog'));
    expect(screen.queryByRole('dialog')).toBeNull();
  });

  it('goes to a section: closed first, then the focus at the heading', async () => {
    await layOut();
    open();
    fireEvent.click(sheet().getByRole('link', { name: /The job/ }));
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(screen.getByRole('heading', { name: 'The job' })).toHaveFocus();
  });
});
