import { expect, test } from 'vitest';
import { axe } from '@/tests/e2e/harness/axe';
import { openPage } from '@/tests/e2e/harness/openPage';
import { expectProblem } from '@/tests/e2e/harness/problems';

test('a request to another host is seen, by the page and by the browser', async () => {
  const page = await openPage();
  // Leaving for another host is the one thing a page's own policy does not refuse.
  await page.goto('http://elsewhere.invalid/').catch(() => undefined);
  await expectProblem(/request to another host: http:\/\/elsewhere\.invalid\//);
  await expectProblem(/the browser asked for http:\/\/elsewhere\.invalid\//);
  await expectProblem(/console: .*502/);
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
    await expectProblem(new RegExp(`the browser asked for .*${name}\\.invalid`));
  }
  await expectProblem(/request to another host/);
  await expectProblem(/console: /);
});

test('a request that the policy refuses is seen and never leaves', async () => {
  const page = await openPage();
  await page.evaluate(() => fetch('http://elsewhere.invalid/').catch(() => undefined));
  await expectProblem(/content policy: connect-src http:\/\/elsewhere\.invalid\//);
  await expectProblem(/console: .*elsewhere\.invalid/);
});

test('an inline style is seen', async () => {
  const page = await openPage();
  await page.evaluate(() => document.body.setAttribute('style', 'color: red'));
  await expectProblem(/content policy: style-src-attr inline/);
  await expectProblem(/console: .*style/);
});

test('a word on the error console and an error thrown are seen', async () => {
  const page = await openPage();
  await page.evaluate(() => {
    console.error('said aloud');
    setTimeout(() => {
      throw new Error('thrown late');
    });
  });
  await expectProblem(/console: said aloud/);
  await expectProblem(/error on the page: thrown late/);
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
