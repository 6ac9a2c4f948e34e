// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { PricesSection } from '@/app/_docket/prices/PricesSection';
import { priceJob } from '@/lib/costing/priceJob';
import { club } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { InJobFields } from './inJobFields';

it('shows the break that is picked by its button', async () => {
  const input = club();
  const answer = priceJob(input, grid);
  render(
    <InJobFields input={input}>
      <PricesSection
        {...{ jobId: 'club-order', input, answer, madeOf: input, stale: false, findings: answer.findings }}
      />
    </InJobFields>,
  );
  const pick = screen.getByRole('radio', { name: '12 to 23', hidden: true });
  await userEvent.setup().click(pick);
  expect(pick).toBeChecked();
  expect(screen.getByText(/^S to XL, 12 to 23 pieces: /)).toBeInTheDocument();
});
