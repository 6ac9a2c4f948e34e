import { gzipSync } from 'node:zlib';
import { expect, inject, test } from 'vitest';

/* What a phone has to fetch before it can be used; the engine, the figures and the charts come after. */
const MOST_BYTES = 320_000;

test.each(['/', '/jobs', '/jobs/club-order/sheet', '/workshop', '/blanks', '/price-lists', '/start'])(
  'the first script of %s stays under 320 kB gzipped, without what only old browsers fetch',
  async (path) => {
    const page = await (await fetch(`${inject('baseUrl')}${path}`)).text();
    const tags = [...page.matchAll(/<script[^>]* src="([^"]+\.js)"[^>]*>/g)];
    const modern = tags.filter(([tag]) => !/nomodule/i.test(tag));
    const scripts = await Promise.all(
      modern.map(async ([, address = '']) => {
        const answer = await fetch(new URL(address, inject('baseUrl')));
        return gzipSync(new Uint8Array(await answer.arrayBuffer())).length;
      }),
    );
    expect(scripts.length).toBeGreaterThan(3);
    expect(scripts.reduce((sum, bytes) => sum + bytes, 0)).toBeLessThan(MOST_BYTES);
  },
);
