// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { tabId } from '@/app/_tab/tabId';

afterEach(() => sessionStorage.clear());

describe('tabId', () => {
  it('is the same again after a reload', () => {
    const id = tabId();
    expect(tabId()).toBe(id);
  });

  it('is another one in another tab', () => {
    const id = tabId();
    sessionStorage.clear();
    expect(tabId()).not.toBe(id);
  });

  it('is there even where nothing may be remembered', () => {
    const get = vi.spyOn(Storage.prototype, 'getItem').mockImplementation(() => {
      throw new DOMException('no', 'SecurityError');
    });
    expect(tabId()).toMatch(/^[0-9a-f-]{36}$/);
    get.mockRestore();
  });

  it('does not take over whatever else stands in its place', () => {
    sessionStorage.setItem('pressminute-tab', 'x'.repeat(5000));
    expect(tabId()).toHaveLength(36);
  });
});
