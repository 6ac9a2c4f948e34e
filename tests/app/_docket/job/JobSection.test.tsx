// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Blank } from '@/shared/schemas/blank';
import { benchStore, clearBench, kept } from '@/tests/app/_docket/bench';
import { layOut } from '@/tests/app/_docket/layOut';

vi.mock('@/app/_store/appDocuments', async () => {
  const { benchStore: appDocuments } = await import('@/tests/app/_docket/bench');
  return { appDocuments };
});
vi.mock('@/app/_pricing/priceService', async () => {
  const { benchPrices: prices } = await import('@/tests/app/_docket/bench');
  return { startPriceService: prices.start };
});

afterEach(() => {
  cleanup();
  clearBench();
});

const back = 'job-lines-0-placements-0';

/** A field by its id: labels repeat from placement to placement. */
function at(id: string): HTMLInputElement {
  const found = document.getElementById(id);
  if (!(found instanceof HTMLElement)) throw new Error(`nothing has the id ${id}`);
  return found as HTMLInputElement;
}
const type = (id: string, value: string) => fireEvent.change(at(id), { target: { value } });

/** Opens a fold; the tests' browser tells of it only when asked. */
function unfold(id: string): void {
  if (at(id).hasAttribute('aria-expanded')) {
    fireEvent.click(at(id));
    return;
  }
  const fold = at(id).closest('details');
  if (fold === null) throw new Error(`${id} is no fold`);
  fold.open = true;
  fireEvent(fold, new Event('toggle'));
}

describe('one field', () => {
  it('is undone commit by commit: a price typed at once and then emptied are two steps', async () => {
    await layOut();
    const price = 'job-lines-0-askedPrice';
    const before = kept.line().askedPrice;
    type(price, '16.49');
    type(price, '');
    expect(kept.line().askedPrice).toBeNull();
    await act(() => benchStore().actions.undo());
    expect(kept.line().askedPrice).toBe(16.49);
    await act(() => benchStore().actions.undo());
    expect(kept.line().askedPrice).toBe(before);
  });
});

describe('sizes and quantities', () => {
  it('are typed size by size, and undone by the name of the size', async () => {
    await layOut();
    type('job-lines-0-quantities-2-quantity', '12');
    expect(kept.line().quantities[2]).toEqual({ size: 'L', quantity: 12 });
    expect(kept.undoLabel()).toBe('Pieces in L');
    expect(screen.getByText('= 38')).toBeVisible();
  });

  it('lose an emptied size, and take it back where the blank has it', async () => {
    await layOut();
    type('job-lines-0-quantities-1-quantity', '');
    expect(kept.line().quantities.map(({ size }) => size)).toEqual(['S', 'L', 'XL', '2XL', '3XL']);
    type('job-lines-0-quantities-new1-quantity', '7');
    expect(kept.line().quantities.map(({ size }) => size)).toEqual(['S', 'M', 'L', 'XL', '2XL', '3XL']);
  });

  it('still show a size the blank does not have, with what the check says of it', async () => {
    await layOut();
    act(() =>
      benchStore().actions.edit('Sizes', [
        {
          do: 'change',
          kind: 'blank',
          id: 'white-shirt',
          to: (blank: Blank) => ({ ...blank, sizes: blank.sizes.slice(1) }),
        },
      ]),
    );
    expect(screen.getByText('= 37')).toBeVisible();
    expect(await screen.findByText(/^S: /)).toBeVisible();
  });
});

describe('another blank', () => {
  it('brings its press, its place and all pieces in its sizes, as one step to undo', async () => {
    await layOut();
    const before = kept.line();
    fireEvent.change(at('job-lines-0-blankId'), { target: { value: 'white-mug' } });
    expect(kept.line()).toMatchObject({
      blankId: 'white-mug',
      quantities: [{ size: '11 oz', quantity: 37 }],
      placements: [{ position: 'wrap', pressId: 'mug-press' }],
    });
    expect(kept.undoLabel()).toMatch(/^Blank of Club shirt; .*the asked 19.00 USD was for a shirt$/);
    await act(() => benchStore().actions.undo());
    expect(kept.line()).toEqual(before);
  });
});

describe('a placement', () => {
  it('is a fold of its name with what is wrong inside, and unfolds to its fields', async () => {
    await layOut();
    expect(at(back)).toHaveTextContent(/^Back picture1 caution$/);
    expect(document.getElementById(`${back}-prints-0-widthMm`)).toBeNull();
    unfold(back);
    expect(screen.getByText('8 × 10 in, back · Flat press 15 × 15 in · 390 °F, 55 s')).toBeVisible();
    expect(at(`${back}-prints-0-widthMm`)).toHaveValue('8');
    expect(at(`${back}-recipe-provenPresses`)).toHaveAccessibleDescription(
      /This recipe has never been pressed on White shirt/,
    );
  });

  it('keeps a length in millimetres and shows it as typed', async () => {
    await layOut();
    unfold(back);
    type(`${back}-prints-0-widthMm`, '7.5');
    expect(kept.placement().prints[0]?.widthMm).toBeCloseTo(190.5, 9);
    expect(at(`${back}-prints-0-widthMm`)).toHaveValue('7.5');
    expect(kept.undoLabel()).toBe('Width of Back picture');
  });

  it('keeps the number of a temperature when its scale is changed', async () => {
    await layOut();
    unfold(back);
    const scale = screen.getByLabelText('Scale of the temperature of Back picture');
    fireEvent.change(scale, { target: { value: 'C' } });
    expect(kept.placement().recipe.temperature).toEqual({ value: 390, unit: 'C' });
  });

  it('refuses a dwell of nothing and says so, with the old one in force', async () => {
    await layOut();
    unfold(back);
    type(`${back}-recipe-dwellSeconds`, '0');
    expect(screen.getByText('0 is too small: it must be more than 0. 55 s stays in force.')).toBeVisible();
    expect(kept.placement().recipe.dwellSeconds).toBe(55);
  });

  it('makes typed minutes the maker’s own, of today, and emptied ones missing', async () => {
    await layOut();
    unfold(back);
    type(`${back}-scrap`, '5');
    expect(kept.placement().scrap).toMatchObject({ value: 0.05, unit: 'share', origin: 'yours' });
    type(`${back}-scrap`, '');
    expect(kept.placement().scrap).toBeNull();
  });

  it('is pressed later, taken out and added by buttons', async () => {
    await layOut();
    unfold(back);
    fireEvent.click(screen.getByText('Press it later'));
    expect(kept.line().placements.map(({ name }) => name)).toEqual(['Chest badge', 'Back picture']);
    fireEvent.click(screen.getByText('Take Back picture out'));
    expect(kept.line().placements.map(({ name }) => name)).toEqual(['Chest badge']);
    fireEvent.click(screen.getByRole('button', { name: 'Add a print on Club shirt' }));
    expect(kept.line().placements.map(({ name }) => name)).toEqual(['Chest badge', 'Placement 2']);
    expect(kept.undoLabel()).toBe('Added placement on Club shirt');
  });

  it('takes another print size for some sizes, and loses the group with its last size', async () => {
    await layOut();
    unfold(back);
    fireEvent.click(screen.getByText('Another print size for some sizes'));
    expect(kept.placement().prints.map(({ sizes }) => sizes)).toEqual([['3XL'], null]);
    fireEvent.click(screen.getByLabelText('S', { selector: '[type=checkbox]' }));
    expect(kept.placement().prints[0]?.sizes).toEqual(['S', '3XL']);
    fireEvent.click(screen.getByLabelText('S', { selector: '[type=checkbox]' }));
    fireEvent.click(screen.getByLabelText('3XL', { selector: '[type=checkbox]' }));
    expect(kept.placement().prints.map(({ sizes }) => sizes)).toEqual([null]);
  });
});

describe('an artwork', () => {
  const art = `${back}-artwork`;

  it('takes its pixels as a pair; one alone waits for the other', async () => {
    await layOut();
    unfold(back);
    unfold(art);
    type(`${art}-pixels-width`, '');
    expect(kept.artwork('hill-path').pixels).toBeNull();
    expect(at(`${art}-pixels-height`)).toHaveValue('1,800');
    expect(screen.getByText('Both are needed.')).toBeVisible();
    type(`${art}-pixels-width`, '1600');
    expect(kept.artwork('hill-path').pixels).toEqual({ width: 1600, height: 1800 });
  });

  it('takes ink by channel once all four are there; until then the total stays in force', async () => {
    await layOut();
    unfold(back);
    unfold(art);
    fireEvent.change(at(`${art}-coverage`), { target: { value: 'channels' } });
    for (const [channel, typed] of [
      ['cyan', '40'],
      ['magenta', '30'],
      ['yellow', '20'],
    ]) {
      type(`${art}-coverage-${channel}`, typed ?? '');
    }
    expect(kept.artwork('hill-path').coverage).toEqual({ kind: 'total', total: 1.1 });
    type(`${art}-coverage-black`, '5');
    expect(kept.artwork('hill-path').coverage).toEqual({
      kind: 'channels',
      cyan: 0.4,
      magenta: 0.3,
      yellow: 0.2,
      black: 0.05,
    });
  });

  it('is made new together with the placement that shows it, as one step', async () => {
    await layOut();
    unfold(back);
    fireEvent.change(at(`${back}-artworkId`), { target: { value: 'new artwork' } });
    const { artworkId } = kept.placement();
    expect(kept.artwork(artworkId)).toMatchObject({ name: 'Artwork 1', coverage: null });
    expect(kept.undoLabel()).toBe('New artwork');
  });
});

describe('a line', () => {
  const blankOfLine = (id: string) => fireEvent.change(at('job-lines-0-blankId'), { target: { value: id } });
  const rename = (name: string) =>
    act(() => {
      benchStore().actions.edit('Name', [
        {
          do: 'change',
          kind: 'job',
          id: 'club-order',
          to: (body) => ({ ...body, lines: body.lines.map((line) => ({ ...line, name })) }),
        },
      ]);
    });

  it('keeps the name the maker gave it on another blank, and follows the blank where nobody named it', async () => {
    await layOut();
    blankOfLine('white-mug');
    expect(kept.line()).toMatchObject({ name: 'Club shirt', blankId: 'white-mug' });
    expect(kept.undoLabel()).toMatch(/^Blank of Club shirt; .*the asked 19.00 USD was for a shirt$/);
    rename(kept.blank('white-mug').name);
    blankOfLine('white-shirt');
    expect(kept.line().name).toBe(kept.blank('white-shirt').name);
  });

  it('is duplicated by a button, in one step that undo takes back', async () => {
    await layOut();
    fireEvent.click(screen.getByRole('button', { name: 'Duplicate Club shirt' }));
    expect(kept.job().lines.map(({ name }) => name)).toEqual(['Club shirt', 'Club shirt 2']);
    expect(kept.line(1).quantities).toEqual(kept.line().quantities);
    expect(kept.undoLabel()).toBe('Duplicated Club shirt');
    await act(() => benchStore().actions.undo());
    expect(kept.job().lines).toHaveLength(1);
  });

  it('shows each print drawn, and takes another picture with nothing unfolded', async () => {
    await layOut();
    const picture = screen.getByLabelText('Picture of Chest badge');
    expect(picture).toHaveDisplayValue('Club crest');
    fireEvent.change(picture, { target: { value: 'hill-path' } });
    expect(kept.placement(1).artworkId).toBe('hill-path');
    expect(at('job-lines-0-placements-1')).toHaveAttribute('aria-expanded', 'false');
  });

  it('says beside its prices how tax stands to them and what larger sizes add', async () => {
    await layOut();
    const job = within(screen.getByRole('region', { name: 'The job' }));
    expect(job.getByText('tax added later')).toBeVisible();
    expect(job.getByText('2XL +1.50, 3XL +2.50')).toBeVisible();
  });
});

describe('the job as a whole', () => {
  it('answers first what it is', async () => {
    await layOut();
    expect(screen.getByText('37 white shirts').parentElement).toHaveTextContent(
      '37 white shirts, printed on back and chest',
    );
  });

  it('takes another product, like the last one but with no quantities and no price', async () => {
    await layOut();
    fireEvent.click(screen.getByText('Another product'));
    expect(kept.line(1)).toMatchObject({ name: 'Line 2', quantities: [], askedPrice: null });
    expect(kept.line(1).placements[0]?.id).not.toBe(kept.placement().id);
    expect(screen.getByRole('heading', { level: 3, name: 'Line 2' })).toBeVisible();
  });

  it('keeps a delivery in kilometres and shows it in miles', async () => {
    await layOut();
    unfold('job-more');
    expect(at('job-deliveryKm')).toHaveValue('12');
    type('job-deliveryKm', '10');
    expect(kept.job().deliveryKm).toBeCloseTo(16.09344, 9);
  });

  it('takes the day it is wanted, and none when it is emptied', async () => {
    await layOut();
    unfold('job-more');
    type('job-wantedOn', '2031-05-06');
    expect(kept.job().wantedOn).toBe('2031-05-06');
    type('job-wantedOn', '');
    expect(kept.job().wantedOn).toBeNull();
  });

  it('takes packaging and up-charges of a line, each with its own name in undo', async () => {
    await layOut();
    unfold('job-lines-0-more');
    fireEvent.change(at('job-lines-0-packagingId'), { target: { value: 'none' } });
    expect(kept.line().packagingId).toBeNull();
    type('job-lines-0-upCharges-new3', '0.5');
    expect(kept.line().upCharges).toContainEqual({ size: 'XL', amount: 0.5 });
    expect(kept.undoLabel()).toBe('Up-charge for XL');
  });
});

describe('the customer', () => {
  it('may fill 200 letters, and spaces count, as the document keeps them', async () => {
    await layOut();
    unfold('job-more');
    type('job-customer', 'k'.repeat(200));
    expect(kept.job().customer).toBe('k'.repeat(200));
    type('job-customer', `${'k'.repeat(200)} `);
    expect(at('job-customer')).toHaveAccessibleDescription(/too long: 200 fit here/);
    expect(kept.job().customer).toBe('k'.repeat(200));
  });
});
