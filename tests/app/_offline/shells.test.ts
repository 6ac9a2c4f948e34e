import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pageAt, shells } from '@/app/_offline/shells';

describe('the pages that are kept on the device', () => {
  it('are all that the app has', () => {
    const pages = readdirSync('app', { recursive: true, encoding: 'utf8' })
      .map((file) => `/${file.replaceAll('\\', '/')}`)
      .filter((file) => file.endsWith('/page.tsx'))
      .map((file) => file.replace(/\/page\.tsx$/, '') || '/');
    expect(shells.map(({ page }) => page).toSorted()).toEqual(pages.toSorted());
  });

  it.each([
    ['/', '/'],
    ['/jobs', '/jobs'],
    ['/jobs/club-order', '/jobs/one'],
    ['/jobs/a%20b', '/jobs/one'],
    ['/jobs/one', '/jobs/one'],
    ['/jobs/club-order/sheet', '/jobs/one/sheet'],
    ['/price-lists/spring', '/price-lists/one'],
    ['/stall/shops', '/stall/shops'],
    ['/making/suppliers', '/making/suppliers'],
    ['/making/buying', '/making/buying'],
    ['/making/buying/club-list', '/making/buying/one'],
    ['/making/stock', '/making/stock'],
    ['/stall/shops/corner', '/stall/shops/one'],
    ['/stall/spring-fair', '/stall/one'],
    ['/jobs/', null],
    ['/jobs/club-order/papers', null],
    ['/job', null],
    ['/api/schema', null],
  ])('are sent for %s as %s', (path, page) => {
    expect(pageAt(path)).toBe(page);
  });
});
