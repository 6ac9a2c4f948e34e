// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { workshopFields } from '@/app/_workshop/workshopFields';
import { workshopSections } from '@/app/_workshop/workshopSections';
import { bodyOf, clearScreens, enter } from './screens';

vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

// Whole parts of a screen are slow to search through in jsdom beside other tests.
vi.setConfig({ testTimeout: 20_000 });

afterEach(() => {
  cleanup();
  clearScreens();
});

const part = (id: string) =>
  enter(
    <WithWorkspace>
      {(workspace) => (
        <>
          <h1>One part</h1>
          {workshopSections.find((section) => section.id === id)?.body(workshopFields(workspace))}
        </>
      )}
    </WithWorkspace>,
  );

const workshop = () => bodyOf('workshop', 'workshop');
const sheet = () => workshop().sheets[0];

async function retype(name: string, text: string): Promise<HTMLElement> {
  const field = screen.getByRole('textbox', { name });
  await userEvent.tripleClick(field);
  await userEvent.paste(text);
  return field;
}

describe('a sheet, whose document takes 0.01 to 2,000 mm, typed in inches', () => {
  it('may be as wide as the sentence says', async () => {
    await part('sheets');
    await userEvent.click(screen.getByRole('button', { name: /^Letter sheet/ }));
    const field = await retype('Width', '78.7401');
    expect(field).not.toHaveAttribute('aria-invalid');
    expect(sheet()?.widthMm).toBeCloseTo(78.7401 * 25.4, 9);
  });

  it.each([
    ['78.7402', '78.7402 is too large: the most here is 78.7401. 8.5 in stays in force.'],
    ['0.0003', '0.0003 is too small: the least here is 0.0004. 8.5 in stays in force.'],
    ['0', '0 is too small: the least here is 0.0004. 8.5 in stays in force.'],
  ])('is not taken as %s in wide, and keeps the text and the width in force', async (text, sentence) => {
    await part('sheets');
    await userEvent.click(screen.getByRole('button', { name: /^Letter sheet/ }));
    const field = await retype('Width', text);
    expect(field).toHaveValue(text);
    expect(field).toHaveAccessibleDescription(`in ${sentence}`);
    expect(sheet()?.widthMm).toBe(215.9);
  });
});

describe('the minutes on artwork that a price includes', () => {
  it('may be forty hours, as the document takes them', async () => {
    await part('charges');
    await retype('Artwork the price includes', '2400');
    expect(workshop().policy.charges.artMinutesIncluded).toBe(2400);
  });

  it('are not taken a minute beyond', async () => {
    await part('charges');
    const before = workshop().policy.charges.artMinutesIncluded;
    const field = await retype('Artwork the price includes', '2401');
    expect(field).toHaveAccessibleDescription(/2401 is too large: the most here is 2,400\./);
    expect(workshop().policy.charges.artMinutesIncluded).toBe(before);
  });
});
