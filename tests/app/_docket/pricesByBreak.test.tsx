// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { PricesSection } from '@/app/_docket/prices/PricesSection';
import { clubWith } from '@/tests/fixtures/clubJob';
import { InJob, pricedNow } from './inJob';

it('shows the break that is picked by its button', async () => {
  const input = clubWith({ 'job.lines.0.breaks': [1, 6, 12, 24, 48] });
  render(
    <InJob input={input} priced={pricedNow(input)}>
      <PricesSection />
    </InJob>,
  );
  const user = userEvent.setup();
  await user.click(screen.getByRole('button', { name: 'For you: margin, pay an hour' }));
  const pick = screen.getByRole('radio', { name: '12 to 23', hidden: true });
  await user.click(pick);
  expect(pick).toBeChecked();
  expect(screen.getByText(/^S to XL, 12 to 23 pieces: /)).toBeInTheDocument();
});
