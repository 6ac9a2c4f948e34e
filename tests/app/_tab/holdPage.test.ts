// @vitest-environment jsdom
import { expect, it } from 'vitest';
import { holdPage } from '@/app/_tab/holdPage';

/** Whether the browser would ask before the page goes. */
const asks = () => !window.dispatchEvent(new Event('beforeunload', { cancelable: true }));

it('has the browser ask only for as long as the page is held, however often it is told', () => {
  expect(asks()).toBe(false);
  holdPage(true);
  holdPage(true);
  expect(asks()).toBe(true);
  holdPage(false);
  expect(asks()).toBe(false);
});
