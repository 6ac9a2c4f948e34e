import { describe, expect, it } from 'vitest';
import { askedFor } from '@/app/_offline/worker/askedFor';

const ORIGIN = 'https://prints.example';

const ask = (path: string, more: { method?: string; mode?: string; rsc?: true } = {}) =>
  askedFor(
    {
      method: more.method ?? 'GET',
      mode: more.mode ?? 'no-cors',
      url: new URL(path, ORIGIN).href,
      headers: new Headers(more.rsc ? { rsc: '1' } : {}),
    },
    ORIGIN,
  );

describe('what the service worker sees in a request', () => {
  it('is a page where an address of the app is opened', () => {
    expect(ask('/jobs/made-in-the-field', { mode: 'navigate' })).toEqual({ kind: 'page', page: '/jobs/one' });
    expect(ask('/blanks?id=mug', { mode: 'navigate' })).toEqual({ kind: 'page', page: '/blanks' });
  });

  it('is the router’s question where the same address is asked for by a link', () => {
    expect(ask('/jobs/made-in-the-field?_rsc=1x', { mode: 'cors', rsc: true })).toEqual({ kind: 'router' });
  });

  it('is a file where a page or a worker fetches one', () => {
    expect(ask('/_next/static/chunks/a.js?dpl=3')).toEqual({
      kind: 'file',
      path: '/_next/static/chunks/a.js',
    });
  });

  it('is the API whatever the method, and whoever opens it', () => {
    expect(ask('/api/price', { method: 'POST', mode: 'cors' })).toEqual({ kind: 'api' });
    expect(ask('/api/schema', { mode: 'navigate' })).toEqual({ kind: 'api' });
  });

  it('is a slash too many, which the server would take off', () => {
    expect(ask('/jobs/?x=1', { mode: 'navigate' })).toEqual({ kind: 'slashTooMany', address: '/jobs?x=1' });
  });

  it.each(['//other.example/', '/\\\\other.example/', '/jobs//'])(
    'is left to the server where %s could be read as the address of another site',
    (path) => {
      const url = `${ORIGIN}${path.replaceAll('\\', '/')}`;
      const asked = { method: 'GET', mode: 'navigate', url, headers: new Headers() };
      expect(askedFor(asked, ORIGIN)).toEqual({ kind: 'otherPage' });
    },
  );

  it('is another page where the app has none', () => {
    expect(ask('/nowhere', { mode: 'navigate' })).toEqual({ kind: 'otherPage' });
  });

  it('is nothing where it goes to another host or is no question', () => {
    expect(ask('https://other.example/a.js')).toEqual({ kind: 'none' });
    expect(ask('/jobs', { method: 'HEAD' })).toEqual({ kind: 'none' });
  });
});
