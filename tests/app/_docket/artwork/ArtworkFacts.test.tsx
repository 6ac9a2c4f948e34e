// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, it } from 'vitest';
import { ArtworkFacts } from '@/app/_docket/artwork/ArtworkFacts';
import { aPicture } from '@/tests/fixtures/aPicture';
import { club } from '@/tests/fixtures/clubJob';
import { InJob } from '../inJob';

afterEach(cleanup);

it.each([
  ['jpeg', 1],
  ['png', 0],
] as const)('a %s is said to have no check sum only where it has none', (format, times) => {
  render(
    <InJob input={club()}>
      <ArtworkFacts picture={aPicture({ format })} />
    </InJob>,
  );
  expect(screen.queryAllByText(/no check sum: look at the preview/)).toHaveLength(times);
});
