// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { JobRates } from '@/app/_docket/costs/JobRates';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';
import { InJob } from '@/tests/app/_docket/inJob';
import { club, clubWith } from '@/tests/fixtures/clubJob';

vi.mock('@/app/_store/appDocuments', async () => {
  const { benchStore: appDocuments } = await import('@/tests/app/_docket/bench');
  return { appDocuments };
});

afterEach(cleanup);

function show() {
  const input = clubWith({
    'workshop.rates': Object.fromEntries(
      Object.entries(club().workshop.rates).map(([name, rate]) => [
        name,
        rate === null ? null : { ...rate, origin: name === 'wage' ? 'typical' : 'yours' },
      ]),
    ),
  });
  render(
    <NumberLocale value="en-US">
      <MeasuresContext value={measuresOf(input.workshop)}>
        <InJob input={input}>
          <JobRates />
        </InJob>
      </MeasuresContext>
    </NumberLocale>,
  );
}

describe('the rates of a job', () => {
  const shown = () => screen.getAllByRole('textbox').length - 1;
  const wage = () => screen.queryByRole('textbox', { name: rateDefinition('wage').label });

  it('are at first only those nobody has told; the others come when asked for', async () => {
    show();
    expect(shown()).toBe(1);
    expect(wage()).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: `All ${rateNames.length} rates` }));
    expect(shown()).toBe(rateNames.length);
  });

  it('are found by a word, all of them', async () => {
    show();
    await userEvent.type(screen.getByRole('textbox', { name: 'Find a rate' }), 'electricity');
    expect(shown()).toBeGreaterThan(0);
    expect(wage()).toBeNull();
  });
});
