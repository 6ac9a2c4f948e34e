import { expect, test } from 'vitest';
import { dataPolicy, filePolicy, pagePolicy } from '@/app/_security/contentPolicy';

test('the policy of a page names every source it may use, and starts from none', () => {
  expect(pagePolicy('abc', ['sha256-def='], false).split('; ')).toEqual([
    "default-src 'none'",
    "script-src 'self' 'nonce-abc' 'sha256-def='",
    "style-src 'self'",
    "img-src 'self' blob: data:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
    "object-src 'none'",
  ]);
});

test('only the development server may evaluate text and style inline', () => {
  expect(pagePolicy('abc', [], true)).toContain("'unsafe-eval'");
  for (const policy of [pagePolicy('abc', [], false), filePolicy, dataPolicy]) {
    expect(policy).not.toContain('unsafe');
    expect(policy).not.toMatch(/https?:|\*/);
  }
});

test('data answers may load nothing', () => {
  expect(dataPolicy).toBe("default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'");
});
