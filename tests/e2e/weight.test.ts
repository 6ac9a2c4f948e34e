import { gzipSync } from 'node:zlib';
import { expect, inject, test } from 'vitest';

/*
 * What a phone has to fetch before a page answers; the engine, the figures and the charts come after, and so do the
 * schemas of rare kinds, which come while the device opens what it keeps. Of the front door only what takes over the page as it was sent: the docket and the documents come beside it.
 */
test.each([
  ['/', 155],
  ['/jobs', 277],
  ['/jobs/club-order/sheet', 277],
  ['/workshop', 277],
  ['/year', 277],
  ['/blanks', 277],
  ['/price-lists', 277],
  ['/orders', 277],
  // What was noted, its money and its days at once; papers, names and forms come after.
  ['/orders/club-enquiry', 297],
  ['/customers', 277],
  ['/customers/ramblers-club', 277],
  ['/start', 277],
  ['/stall/spring-fair/count', 277],
  ['/stall/shops', 277],
  ['/stall/shops/corner', 277],
  ['/making/stock', 277],
  ['/making', 277],
  ['/making/club-run', 277],
  ['/stall', 277],
  ['/stall/spring-fair', 277],
  ['/stall/spring-fair/evening', 277],
  ['/making/suppliers', 277],
  ['/making/buying', 277],
  ['/making/buying/club-list', 277],
  ['/making/club-run/press', 277],
  ['/making/club-run/after', 277],
  ['/making/log', 277],
])(
  'the first script of %s stays under %d kB gzipped, without what only old browsers fetch',
  async (path, mostKilobytes) => {
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
    expect(scripts.reduce((sum, bytes) => sum + bytes, 0)).toBeLessThan(mostKilobytes * 1000);
  },
);
