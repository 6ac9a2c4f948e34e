// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, fireEvent, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import type { ReactNode } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { PaperFields } from '@/app/_workshop/papers/PaperFields';
import { QuotingFields } from '@/app/_workshop/papers/QuotingFields';
import { SellerFields } from '@/app/_workshop/papers/SellerFields';
import { type WorkshopFields, workshopFields } from '@/app/_workshop/workshopFields';
import { workshopSections } from '@/app/_workshop/workshopSections';
import { pngFile } from '@/tests/fixtures/pictures/fileBytes';
import { bodyOf, clearScreens, enter, screenStore, undo } from './screens';

vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

beforeEach(() => {
  URL.createObjectURL = (blob) => `blob:${blob instanceof Blob ? blob.type : ''}`;
  URL.revokeObjectURL = () => undefined;
});
afterEach(() => {
  cleanup();
  clearScreens();
});

const TINY_PNG = new Uint8Array(pngFile(40, 20));

type Part = (props: Readonly<{ fields: WorkshopFields }>) => ReactNode;
const open = (ThePart: Part) =>
  enter(
    <WithWorkspace>
      {(workspace) => (
        <>
          <h1>One part</h1>
          <ThePart fields={workshopFields(workspace)} />
        </>
      )}
    </WithWorkspace>,
  );
const workshop = () => bodyOf('workshop', 'workshop');
const type = (name: string | RegExp, value: string) =>
  fireEvent.change(screen.getByLabelText(name), { target: { value } });
const press = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));

it.each([
  ['seller', 'Name on papers'],
  ['papers', 'Page'],
  ['quoting', 'A quote is valid for'],
])('the part %s of the workshop comes behind what is seen first', async (id, label) => {
  await enter(
    <WithWorkspace>
      {(workspace) => (
        <>
          <h1>One part</h1>
          {workshopSections.find((section) => section.id === id)?.body(workshopFields(workspace))}
        </>
      )}
    </WithWorkspace>,
  );
  expect(await screen.findByLabelText(label, {}, { timeout: 20_000 })).toBeVisible();
});

it('a field of such a part that the address names is gone to once it comes', async () => {
  Element.prototype.scrollIntoView = () => undefined;
  window.location.hash = 'workshop-quoting-idleDays';
  const { body } = workshopSections.find(({ id }) => id === 'quoting') ?? { body: () => null };
  await open(({ fields }) => body(fields));
  expect(await screen.findByLabelText('Idle printer', {}, { timeout: 20_000 })).toHaveFocus();
});

describe('who stands at the head of papers', () => {
  it('is the workshop by its name until another is typed', async () => {
    await open(SellerFields);
    expect(screen.getByLabelText('Name on papers')).toHaveAttribute('placeholder', workshop().name);
    type('Name on papers', 'Placeholder Press');
    type('How to pay you', 'Sample Bank\nIBAN XX00');
    expect(workshop().seller).toMatchObject({
      name: 'Placeholder Press',
      howToPay: 'Sample Bank\nIBAN XX00',
    });
    await undo();
    // As the example has it.
    expect(workshop().seller.howToPay).toMatch(/^By transfer to Example Bank/);
  });

  it('names every paper that says how to pay', async () => {
    await open(SellerFields);
    expect(screen.getByLabelText('How to pay you')).toHaveAccessibleDescription(
      /It stands on quotes, confirmations, requests and invoices\.$/,
    );
  });

  it('takes no longer text than papers do, and keeps what was typed in sight', async () => {
    await open(SellerFields);
    type('Your address', 'a'.repeat(502));
    expect(screen.getByLabelText('Your address')).toHaveAccessibleDescription(
      /2 letters too long: 500 fit here/,
    );
    expect(workshop().seller.address).toBe('12 Sample Lane\nExampleton');
  });

  const choose = (file: File) =>
    userEvent.upload(screen.getByLabelText('Picture at the head of papers'), file, { applyAccept: false });

  it('has a picture, shown as what it is and not as its name says', async () => {
    await open(SellerFields);
    await choose(new File([TINY_PNG], 'mark.html', { type: 'text/html' }));
    const mark = await screen.findByRole('img', { name: 'Your mark, as papers show it' });
    expect(mark).toHaveAttribute('src', 'blob:image/png');
    expect(workshop().seller.logo).toMatchObject({ fileName: 'mark.html', mediaType: 'image/png' });
    await press('Remove the picture');
    expect(workshop().seller.logo).toBeNull();
    await undo();
    expect(workshop().seller.logo).not.toBeNull();
  });

  it.each<[string, BlobPart, RegExp]>([
    [
      'mark.svg',
      '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>',
      /is a drawing of lines.*Save it as PNG/,
    ],
    [
      'mark.pdf',
      '%PDF-1.7 and more of it',
      /“mark\.pdf” is no picture that a paper can show\. Save it as PNG or JPEG/,
    ],
    ['mark.png', TINY_PNG.slice(0, 50), /The PNG file ends before its picture does/],
    ['empty.png', '', /“empty\.png” is empty/],
    ['poster.png', new Uint8Array(5_000_001), /has 5 MB; a picture at the head of papers may have 5 MB/],
  ])('takes no %s, and says why', async (name, content, told) => {
    await open(SellerFields);
    await choose(new File([content], name));
    expect(await screen.findByText(told)).toBeVisible();
    expect(workshop().seller.logo).toBeNull();
  });
});

describe('the words of papers', () => {
  const words = () => workshop().papers.words;
  const openWords = async (language = 'German') => {
    await open(PaperFields);
    await userEvent.selectOptions(screen.getByLabelText('Words below are for papers in'), language);
    await press(new RegExp(`^Words in ${language}`));
  };

  it('are found by ours, stand greyly until overwritten, and go back when emptied', async () => {
    await openWords();
    expect(screen.getByText('None of yours in this language yet.')).toBeVisible();
    fireEvent.change(screen.getByRole('searchbox'), { target: { value: 'valid until' } });
    const box = screen.getByLabelText('valid until');
    expect(box).toHaveAttribute('placeholder', 'valid until');
    type('valid until', 'gültig bis');
    expect(words()).toEqual([{ language: 'de', key: 'validUntil', text: 'gültig bis' }]);
    expect(screenStore().getState().undoLabel).toBe('“valid until” on papers');
    fireEvent.change(screen.getByRole('searchbox'), { target: { value: '' } });
    expect(screen.getByLabelText('valid until')).toHaveValue('gültig bis');
    type('valid until', '');
    expect(words()).toEqual([]);
    expect(screen.getByLabelText('valid until')).toBeVisible();
  });

  it('that lose a figure are told of, and so are braces that stand for none', async () => {
    await openWords();
    fireEvent.change(screen.getByRole('searchbox'), { target: { value: 'page {page}' } });
    const box = screen.getByRole('textbox', { name: 'page {page} of {pages}' });
    fireEvent.change(box, { target: { value: 'Seite {page}' } });
    expect(box).toHaveAccessibleDescription('Without {pages} it is not said on the paper.');
    fireEvent.change(box, { target: { value: 'Seite {page} von {pages} {seiten}' } });
    expect(box).toHaveAccessibleDescription('{seiten} stands for no figure and is printed as it is.');
  });

  it('that are alike are told apart by their place', async () => {
    await openWords();
    fireEvent.change(screen.getByRole('searchbox'), { target: { value: 'date' } });
    expect(screen.getByLabelText('date (date)')).toBeVisible();
    expect(screen.getByLabelText('date (signed on)')).toBeVisible();
  });

  it('of one language are none of another', async () => {
    await openWords();
    fireEvent.change(screen.getByRole('searchbox'), { target: { value: 'valid until' } });
    type('valid until', 'gültig bis');
    await userEvent.selectOptions(screen.getByLabelText('Words below are for papers in'), 'French');
    expect(screen.getByRole('button', { name: /^Words in French/ })).toHaveTextContent('0 words of yours');
    await userEvent.selectOptions(screen.getByLabelText('Words below are for papers in'), 'German');
    expect(screen.getByRole('button', { name: /^Words in German/ })).toHaveTextContent('1 word of yours');
  });

  it('are all shown on demand, thirty at a time', async () => {
    await openWords();
    await press(/^Show all/);
    expect(screen.getAllByRole('textbox')).toHaveLength(30);
    await press(/^Show more/);
    expect(screen.getAllByRole('textbox')).toHaveLength(60);
  });
});

describe('the terms under papers', () => {
  const terms = () => workshop().papers.terms;
  const openTerms = async () => {
    await open(PaperFields);
    await press(/^Terms in English/);
  };

  it('begin with our wording, become the maker’s when typed, and go back', async () => {
    await openTerms();
    expect(screen.getByLabelText('Colour')).toHaveValue(
      'We match by eye to a pressed sample. A screen glows and cloth does not, so small differences are no fault.',
    );
    type('Colour', 'As near as we can.');
    expect(terms()).toEqual([{ language: 'en', key: 'colour', text: 'As near as we can.' }]);
    type('Colour', '');
    expect(terms()[0]?.text).toBe('');
    expect(screen.getByLabelText('Colour')).toHaveAccessibleDescription('Left off papers in this language.');
    await press('Take our wording again for Colour');
    expect(terms()).toEqual([]);
    expect(screen.getByLabelText('Colour')).not.toHaveValue('');
  });

  it('send to the local authority where law decides', async () => {
    await openTerms();
    expect(screen.getByLabelText('Cancelling')).toHaveAccessibleDescription(/ask your local authority/);
    expect(screen.getByLabelText('Colour')).not.toHaveAccessibleDescription(/authority/);
  });

  it('of the maker alone are added and removed', async () => {
    await open(PaperFields);
    await press(/^Further terms of your own/);
    await press('Add a term');
    expect(screen.getByLabelText('Heading')).toHaveFocus();
    type('Heading', 'Parking');
    type('Text', 'In the yard.');
    expect(workshop().papers.ownTerms).toMatchObject([{ heading: 'Parking', text: 'In the yard.' }]);
    await press('Remove Parking');
    expect(workshop().papers.ownTerms).toEqual([]);
    await press('Bring it back');
    expect(workshop().papers.ownTerms).toHaveLength(1);
  });

  it('of the maker alone stand on papers of every language, or of the one that is chosen', async () => {
    await open(PaperFields);
    await press(/^Further terms of your own/);
    await press('Add a term');
    type('Text', 'Im Hof.');
    expect(workshop().papers.ownTerms).toMatchObject([{ language: null, text: 'Im Hof.' }]);
    expect(screen.getByText('1 term, 1 on papers in English')).toBeVisible();
    const on = screen.getByLabelText('On papers in');
    expect(on).toHaveAccessibleDescription(/whatever the language of the paper/);
    await userEvent.selectOptions(on, 'German');
    expect(workshop().papers.ownTerms).toMatchObject([{ language: 'de', text: 'Im Hof.' }]);
    expect(screen.getByText('1 term, 0 on papers in English')).toBeVisible();
    await userEvent.selectOptions(on, 'Every language');
    expect(workshop().papers.ownTerms).toMatchObject([{ language: null }]);
  });
});

it('papers have the page that is chosen, or that of the place', async () => {
  await open(PaperFields);
  const page = screen.getByLabelText('Page');
  expect(page).toHaveDisplayValue('As usual where you are');
  await userEvent.selectOptions(page, 'A4');
  expect(workshop().papers.page).toBe('a4');
  await userEvent.selectOptions(page, 'As usual where you are');
  expect(workshop().papers.page).toBeNull();
});

describe('what is usual of a quote', () => {
  it('is typed in days and percent, and no credit is nothing typed', async () => {
    await open(QuotingFields);
    type('A quote is valid for', '30');
    type('Deposit', '40');
    type('To pay within', '14');
    expect(workshop().quoting).toMatchObject({ validDays: 30, depositShare: 0.4, creditDays: 14 });
    type('To pay within', '');
    expect(workshop().quoting.creditDays).toBeNull();
  });

  it.each([
    ['A quote is valid for', '0', { validDays: 14 }],
    ['A quote is valid for', '1.5', { validDays: 14 }],
    ['Deposit', '101', { depositShare: 0.5 }],
    ['Rounds of changes', '', { revisionsIncluded: 2 }],
  ])('%s takes no “%s” and keeps what stood there', async (label, typed, stays) => {
    await open(QuotingFields);
    type(label, typed);
    expect(screen.getByLabelText(label)).toHaveValue(typed);
    expect(workshop().quoting).toMatchObject(stays);
  });
});
