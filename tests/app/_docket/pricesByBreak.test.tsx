// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { PricesSection } from '@/app/_docket/prices/PricesSection';
import { club } from '@/tests/fixtures/clubJob';
import { InJob, pricedNow } from './inJob';

it('shows the break that is picked by its button', async () => {
  const input = club();
  render(
    <InJob input={input} priced={pricedNow(input)}>
      <PricesSection />
    </InJob>,
  );
  const pick = screen.getByRole('radio', { name: '12 to 19', hidden: true });
  await userEvent.setup().click(pick);
  expect(pick).toBeChecked();
  expect(screen.getByText(/^S to XL, 12 to 19 pieces: /)).toBeInTheDocument();
});
