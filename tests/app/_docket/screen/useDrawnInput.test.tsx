// @vitest-environment jsdom
import { cleanup, renderHook } from '@testing-library/react';
import { afterEach, expect, it } from 'vitest';
import { useDrawnInput } from '@/app/_docket/screen/useDrawnInput';
import type { JobInput } from '@/shared/schemas/request';
import { aPicture } from '@/tests/fixtures/aPicture';
import { sharedJob } from '@/tests/fixtures/sharedJob';

afterEach(cleanup);

const input = sharedJob();
const withPicture: JobInput = {
  ...input,
  artworks: Object.fromEntries(
    Object.entries(input.artworks).map(([id, artwork]) => [id, { ...artwork, picture: aPicture() }]),
  ),
};
const withName = (name: string, of: JobInput): JobInput => ({ ...of, job: { ...of.job, name } });

/** What is drawn, in turn, once other documents come. */
function drawnWith(...coming: readonly JobInput[]): readonly (JobInput | null)[] {
  const drawn: (JobInput | null)[] = [];
  const { rerender } = renderHook(
    (now: JobInput) => {
      drawn.push(useDrawnInput(now));
    },
    { initialProps: input },
  );
  drawn.length = 0;
  for (const now of coming) rerender(now);
  return drawn;
}

it('a picture that comes alone is drawn after the keys, with the old documents whole until then', () => {
  const drawn = drawnWith(withPicture);
  expect(drawn[0]).toBe(input);
  expect(drawn.at(-1)).toBe(withPicture);
  expect(new Set(drawn)).toEqual(new Set([input, withPicture]));
});

it('what is typed is drawn at once, and a picture that came with it', () => {
  const typed = withName('Twenty caps', input);
  expect(new Set(drawnWith(typed))).toEqual(new Set([typed]));
  const both = withName('Twenty caps', withPicture);
  expect(new Set(drawnWith(both))).toEqual(new Set([both]));
});

it('what is typed of an artwork is drawn at once', () => {
  const renamed: JobInput = {
    ...input,
    artworks: Object.fromEntries(
      Object.entries(input.artworks).map(([id, artwork]) => [id, { ...artwork, name: `New ${id}` }]),
    ),
  };
  expect(new Set(drawnWith(renamed))).toEqual(new Set([renamed]));
});
