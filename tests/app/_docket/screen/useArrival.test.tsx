// @vitest-environment jsdom
import { cleanup, render, waitFor } from '@testing-library/react';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { useArrival } from '@/app/_docket/screen/useArrival';

const show = vi.fn<(fieldId: string) => void>();

function Docket({ shown }: Readonly<{ shown: readonly string[] }>) {
  useArrival(show);
  return (
    <div>
      {shown.map((id) => (
        <section key={id} id={id}>
          <h2 id={`${id}-heading`} tabIndex={-1}>
            {id}
          </h2>
        </section>
      ))}
    </div>
  );
}

beforeEach(() => {
  // The test's page has no layout to scroll in.
  Element.prototype.scrollIntoView = () => undefined;
  show.mockClear();
});
afterEach(() => {
  cleanup();
  window.location.hash = '';
});

const focused = () => document.activeElement?.id;

it('leads to the section of the address as soon as it comes', async () => {
  window.location.hash = 'prices';
  const { rerender } = render(<Docket shown={['the-job']} />);
  expect(focused()).toBe('');
  rerender(<Docket shown={['the-job', 'prices']} />);
  await waitFor(() => expect(focused()).toBe('prices-heading'));
});

it('leads to what stands in the place of a section that a stop withholds', () => {
  window.location.hash = 'prices';
  render(<Docket shown={['the-job', 'prices-waits']} />);
  expect(focused()).toBe('prices-waits-heading');
});

it('goes on from what stands in its place to the section, once that has come', async () => {
  window.location.hash = 'prices';
  const { rerender } = render(<Docket shown={['the-job', 'prices-waits']} />);
  rerender(<Docket shown={['the-job', 'prices']} />);
  await waitFor(() => expect(focused()).toBe('prices-heading'));
});

it('shows the field of the address again once it has come, where it may have been folded away', async () => {
  window.location.hash = 'job-ownRows';
  const { rerender } = render(<Docket shown={[]} />);
  rerender(<Docket shown={['job-ownRows']} />);
  await waitFor(() => expect(show).toHaveBeenCalledWith('job-ownRows'));
});

it('leaves alone whoever has begun to do something else', async () => {
  window.location.hash = 'prices';
  const { rerender } = render(<Docket shown={['the-job']} />);
  window.dispatchEvent(new KeyboardEvent('keydown', { key: 'a' }));
  rerender(<Docket shown={['the-job', 'prices', 'curve']} />);
  // What the watcher would have done it does before the next task.
  await new Promise((resolve) => setTimeout(resolve, 0));
  expect(focused()).toBe('');
});
