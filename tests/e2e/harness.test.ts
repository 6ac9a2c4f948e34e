import { expect, test } from 'vitest';
import { axe } from '@/tests/e2e/harness/axe';
import { tellFailure } from '@/tests/e2e/harness/failureReport';
import { openPage } from '@/tests/e2e/harness/openPage';
import { expectProblem } from '@/tests/e2e/harness/problems';
import { FIXED_DAY } from '@/tests/tools/clock/testDay';

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
  const beside = await openPage({ beside: first });
  await expect.poll(() => beside.evaluate(read)).toBe('kept');
  expect(await (await openPage()).evaluate(read)).toBe(null);
});

test('every page has the same day, and its time flows', async () => {
  const first = await openPage();
  const now = () => new Date().toISOString();
  const before = await first.evaluate(now);
  expect(before.split('T')[0]).toBe(FIXED_DAY);
  const second = await openPage({ beside: first });
  await expect.poll(() => second.evaluate(now)).not.toBe(before);
  expect((await second.evaluate(now)).split('T')[0]).toBe(FIXED_DAY);
});

test('a failure tells its last steps and what was on the page', async () => {
  const page = await openPage({ path: '/price-lists' });
  await page.getByRole('heading', { level: 1, name: 'Price lists' }).waitFor();
  const error = { name: 'Error', message: 'It took too long.' };
  await tellFailure({ id: 'example', result: { state: 'fail', errors: [error] } }, [page]);
  expect(error.message).toMatch(/^It took too long\.[\s\S]*=> locator\.waitFor started/);
  expect(error.message).toMatch(/On http:\S+\/price-lists [\s\S]*heading "Price lists"/);
});
