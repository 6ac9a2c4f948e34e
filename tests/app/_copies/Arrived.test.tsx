// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { Arrived } from '@/app/_copies/Arrived';
import type { Arriving } from '@/app/_copies/useArriving';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import { aMeeting, aPlan } from './aPlan';

const network = vi.hoisted(() => ({ isUp: false }));
vi.mock('@/app/_network/lazy', async (original) => {
  const { lazy } = await original<typeof import('@/app/_network/lazy')>();
  return {
    lazy: <Value,>(load: () => Promise<Value>) =>
      lazy(() => (network.isUp ? load() : Promise.reject(new Error('Failed to load chunk')))),
  };
});

beforeEach(() => {
  network.isUp = false;
  vi.stubGlobal('fetch', () => Promise.reject(new TypeError('No network')));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const nothing = () => undefined;
const arriving = (state: Arriving['state']): Arriving => ({
  state,
  chooser: { current: null },
  look: nothing,
  choose: nothing,
  take: nothing,
  leave: nothing,
  undo: null,
});
const settled = () => act(async () => undefined);

it('what becomes of a file is missed only once one was chosen, and comes by “Try again”', async () => {
  const { rerender } = render(<Arrived arriving={arriving({ kind: 'idle' })} level={2} />);
  await settled();
  expect(screen.queryByRole('alert')).toBeNull();
  rerender(<Arrived arriving={arriving({ kind: 'several', count: 2 })} level={2} />);
  expect(screen.getByRole('alert')).toHaveTextContent('What becomes of the file could not be fetched.');
  network.isUp = true;
  fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
  expect(await screen.findByText('Those were 2 files. Bring them in one at a time.')).toBeVisible();
  expect(screen.queryByRole('alert')).toBeNull();
});

it('leads from a run that came in to its screen and, once it was begun, to the press', async () => {
  network.isUp = true;
  const of = { kind: 'run', id: 'club-run', name: 'Club shirts' } as const;
  const plan = aPlan({ meetings: [aMeeting('new', 'Club shirts')], of });
  const told = (papers: readonly string[]) =>
    arriving({
      ...({ kind: 'told', mode: 'beside', chosen: {}, newLetter: null, label: 'Bring in' } as const),
      plan: {
        ...plan,
        copy: {
          ...plan.copy,
          papers: papers.map((kind) => ({ kind }) as ArrivalPlan['copy']['papers'][number]),
        },
      },
    });
  const { rerender } = render(<Arrived arriving={told([])} level={2} />);
  expect(await screen.findByRole('link', { name: 'Open Club shirts' })).toBeVisible();
  expect(screen.queryByRole('link', { name: /press/ })).toBeNull();
  rerender(<Arrived arriving={told(['runStandard'])} level={2} />);
  expect(screen.getByRole('link', { name: 'To the press with Club shirts' })).toHaveAttribute(
    'href',
    '/making/club-run/press',
  );
});

it('leads from a stall day that came in to its screen and, before it is closed, to its count', async () => {
  network.isUp = true;
  const of = { kind: 'stallDay', id: 'fair', name: 'Harbour Market' } as const;
  const plan = aPlan({ meetings: [aMeeting('new', 'Fair')], of });
  const told = (papers: ArrivalPlan['copy']['papers']) =>
    arriving({
      ...({ kind: 'told', mode: 'beside', chosen: {}, newLetter: null, label: 'Bring in' } as const),
      plan: { ...plan, copy: { ...plan.copy, papers } },
    });
  const paper = (kind: string) => ({ kind }) as ArrivalPlan['copy']['papers'][number];
  const { rerender } = render(<Arrived arriving={told([paper('stallPlan')])} level={2} />);
  const links = () => screen.getAllByRole('link').map((link) => link.getAttribute('href'));
  expect(await screen.findByRole('link', { name: 'Open Harbour Market' })).toBeVisible();
  expect(links()).toEqual(['/stall/fair', '/stall/fair/count']);
  rerender(<Arrived arriving={told([paper('stallPlan'), paper('dayClose')])} level={2} />);
  expect(links()).toEqual(['/stall/fair']);
});
