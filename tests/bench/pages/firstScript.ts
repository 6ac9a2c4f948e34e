import { gzipSync } from 'node:zlib';

/** Gzipped bytes of the scripts a page names as it is sent, without what only old browsers fetch. */
export async function firstScript(origin: string, path: string): Promise<readonly number[]> {
  const page = await (await fetch(`${origin}${path}`)).text();
  const tags = [...page.matchAll(/<script[^>]* src="([^"]+\.js)"[^>]*>/g)];
  const modern = new Set(tags.filter(([tag]) => !/nomodule/i.test(tag)).map(([, address = '']) => address));
  return Promise.all(
    [...modern].map(async (address) => {
      const answer = await fetch(new URL(address, origin));
      return gzipSync(new Uint8Array(await answer.arrayBuffer())).length;
    }),
  );
}
