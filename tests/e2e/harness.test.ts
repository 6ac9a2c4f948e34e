import { expect, test } from 'vitest';
import { axe } from '@/tests/e2e/harness/axe';
import { openPage } from '@/tests/e2e/harness/openPage';
import { expectTrouble } from '@/tests/e2e/harness/troubles';

test('a request to another host is seen, by the page and by the browser', async () => {
  const page = await openPage();
  // Leaving for another host is the one thing a page's own policy does not refuse.
  await page.goto('http://elsewhere.invalid/').catch(() => undefined);
  await expectTrouble(/request to another host: http:\/\/elsewhere\.invalid\//);
  await expectTrouble(/the browser asked for http:\/\/elsewhere\.invalid\//);
  await expectTrouble(/console: .*502/);
});

test('requests of a worker, a beacon and a socket to another host are seen', async () => {
  const page = await openPage();
  // A blank page has no policy that would keep them from leaving.
  await page.goto('about:blank');
  await page.evaluate(() => {
    const script = "fetch('http://worker.invalid/').catch(() => {})";
    new Worker(URL.createObjectURL(new Blob([script])));
    navigator.sendBeacon('http://beacon.invalid/');
    new WebSocket('ws://socket.invalid/');
  });
  for (const name of ['worker', 'beacon', 'socket']) {
    await expectTrouble(new RegExp(`the browser asked for .*${name}\\.invalid`));
  }
  await expectTrouble(/request to another host/);
  await expectTrouble(/console: /);
});

test('a request that the policy refuses is seen and never leaves', async () => {
  const page = await openPage();
  await page.evaluate(() => fetch('http://elsewhere.invalid/').catch(() => undefined));
  await expectTrouble(/content policy: connect-src http:\/\/elsewhere\.invalid\//);
  await expectTrouble(/console: .*elsewhere\.invalid/);
});

test('an inline style is seen', async () => {
  const page = await openPage();
  await page.evaluate(() => document.body.setAttribute('style', 'color: red'));
  await expectTrouble(/content policy: style-src-attr inline/);
  await expectTrouble(/console: .*style/);
});

test('a word on the error console and an error thrown are seen', async () => {
  const page = await openPage();
  await page.evaluate(() => {
    console.error('said aloud');
    setTimeout(() => {
      throw new Error('thrown late');
    });
  });
  await expectTrouble(/console: said aloud/);
  await expectTrouble(/error on the page: thrown late/);
});

test('a picture without words is a finding of the accessibility check', async () => {
  const page = await openPage();
  await page.evaluate(() => document.body.append(document.createElement('img')));
  await expect(axe(page)).rejects.toMatchObject({
    actual: expect.arrayContaining([expect.stringMatching(/^image-alt/)]),
  });
});

test('a second tab shares the storage of the first, and a fresh page does not', async () => {
  const first = await openPage();
  await first.evaluate(() => localStorage.setItem('mark', 'kept'));
  const read = () => localStorage.getItem('mark');
  expect(await (await openPage({ beside: first })).evaluate(read)).toBe('kept');
  expect(await (await openPage()).evaluate(read)).toBe(null);
});
