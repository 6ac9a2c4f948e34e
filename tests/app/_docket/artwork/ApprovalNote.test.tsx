// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, it } from 'vitest';
import { ApprovalNote } from '@/app/_docket/artwork/ApprovalNote';
import { club } from '@/tests/fixtures/clubJob';
import { InJob } from '../inJob';

afterEach(cleanup);

it('an approval noted leaves the focus to the sentence about it, though its button goes', async () => {
  const input = club();
  const [id, artwork] = Object.entries(input.artworks)[0] ?? [];
  if (id === undefined || artwork === undefined) throw new Error('the job has artwork');
  const nothing = { ...input, approvedVersions: {} };
  render(
    <InJob input={nothing}>
      <ApprovalNote artwork={artwork} id={id} />
    </InJob>,
  );
  await userEvent.click(screen.getByRole('button', { name: `Version ${artwork.version} is approved` }));
  expect(screen.getByText('The customer has not approved it yet.')).toHaveFocus();
});
