// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, it, vi } from 'vitest';
import { StartStops } from '@/app/_start/StartStops';
import { makeFinding } from '@/lib/findings/makeFinding';

afterEach(cleanup);

const stop = makeFinding({
  id: 'QTY-01',
  severity: 'stop',
  where: { document: 'job', path: ['lines'] },
  facts: { line: 'Shirts', total: 37, ordered: 40 },
});

it('nothing stands in the place of a reason that is being fetched', () => {
  const { container } = render(<StartStops stops={[stop]} words={{ kind: 'coming' }} />);
  expect(container).toBeEmptyDOMElement();
});

it('a reason whose words cannot be fetched is told as missing, with the way to get it', () => {
  const again = vi.fn<() => void>();
  render(<StartStops stops={[stop]} words={{ kind: 'missing', again, isGone: false }} />);
  expect(screen.getByRole('alert')).toHaveTextContent('Why there is no price could not be fetched.');
  screen.getByRole('button', { name: 'Try again' }).click();
  expect(again).toHaveBeenCalledTimes(1);
});
