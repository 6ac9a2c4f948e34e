// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { workshopFields } from '@/app/_workshop/workshopFields';
import { workshopSections } from '@/app/_workshop/workshopSections';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { clearScreens, enter, screenStore } from './screens';

vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

afterEach(() => {
  cleanup();
  clearScreens();
});

const prints = {
  day: TEST_DAY,
  name: 'Prints',
  prints: 160,
  total: 1,
  widthMm: 254,
  heightMm: 254,
  sessions: 2,
  jobId: null,
} as const;

describe('a refill on a day of prints', () => {
  it('takes prints of the day the tank was filled for those after it, unless told otherwise', async () => {
    await enter(
      <WithWorkspace>
        {(workspace) => (
          <>
            <h1>Ink</h1>
            {workshopSections.find(({ id }) => id === 'ink')?.body(workshopFields(workspace))}
          </>
        )}
      </WithWorkspace>,
    );
    await userEvent.click(await screen.findByRole('button', { name: /^Note a refill/ }, { timeout: 20_000 }));
    const refill = within(screen.getByRole('form', { name: 'A refill' }));
    await userEvent.type(refill.getByRole('textbox', { name: 'Poured in, all colours' }), '62.5');
    const when = refill.getByRole('combobox', { name: 'When' });
    expect(when).toHaveDisplayValue('before the day’s prints');
    // In a narrow field the end of these words is cut off.
    expect(when.closest('[class*="narrow"]')).toBeNull();
    expect(
      refill.getByRole('textbox', { name: 'Poured in, all colours' }).closest('[class*="narrow"]'),
    ).not.toBeNull();
    await userEvent.click(refill.getByRole('button', { name: 'Note the refill' }));
    act(() => {
      screenStore().actions.note('Prints', [{ kind: 'inkPrints', body: prints }]);
    });
    expect(screen.getByText(/160 prints since the last refill will count with the next one/)).toBeVisible();
    // With prints noted that day the next one is most likely what they took.
    expect(refill.getByRole('combobox', { name: 'When' })).toHaveDisplayValue('after the day’s prints');
    await userEvent.click(screen.getByRole('button', { name: /^Correct Refill of/ }));
    const form = within(screen.getByRole('form', { name: /^Correct Refill of/ }));
    await userEvent.selectOptions(form.getByRole('combobox', { name: 'When' }), 'after the day’s prints');
    await userEvent.click(form.getByRole('button', { name: 'Put it right' }));
    expect(screen.getByText(/160 prints noted up to the first refill do not count/)).toBeVisible();
  });
});
