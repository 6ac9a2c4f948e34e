// @vitest-environment jsdom
import { afterEach, expect, it, vi } from 'vitest';
import { holdInSight } from '@/app/_sections/holdInSight';

const lead = vi.fn();
const grow = async () => {
  document.body.append(document.createElement('p'));
  // What watches the page is told before the next task.
  await new Promise((resolve) => setTimeout(resolve, 0));
};

let letGo: () => void = () => undefined;
afterEach(() => {
  letGo();
  lead.mockClear();
  document.body.replaceChildren();
});

it('leads again with whatever comes', async () => {
  letGo = holdInSight(lead);
  expect(lead).toHaveBeenCalledTimes(1);
  await grow();
  await grow();
  expect(lead).toHaveBeenCalledTimes(3);
});

it.each(['wheel', 'touchmove', 'keydown', 'pointerdown', 'click'])('lets go at a %s', async (event) => {
  letGo = holdInSight(lead);
  document.body.dispatchEvent(new Event(event, { bubbles: true }));
  await grow();
  expect(lead).toHaveBeenCalledTimes(1);
});

it('lets go when the page is scrolled without having grown', async () => {
  letGo = holdInSight(lead);
  const scrolledTo = vi.spyOn(window, 'scrollY', 'get').mockReturnValue(400);
  window.dispatchEvent(new Event('scroll'));
  scrolledTo.mockRestore();
  await grow();
  expect(lead).toHaveBeenCalledTimes(1);
});

it('holds one thing only', async () => {
  const first = vi.fn();
  holdInSight(first);
  letGo = holdInSight(lead);
  await grow();
  expect(first).toHaveBeenCalledTimes(1);
  expect(lead).toHaveBeenCalledTimes(2);
});
