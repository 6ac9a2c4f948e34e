import type { BrowserContext, Worker } from 'playwright-core';
import { expect } from 'vitest';
import { browserOfFile } from './browser';

let noted: string[] = [];

/** Starts noting whatever goes wrong in a browser context. */
export async function watchContext(context: BrowserContext, baseUrl: string): Promise<void> {
  context.on('request', (request) => {
    if (!isOwn(request.url(), baseUrl)) noted.push(`request to another host: ${request.url()}`);
  });
  context.on('console', (message) => {
    if (message.type() === 'error') noted.push(`console: ${message.text()} (${message.location().url})`);
  });
  context.on('weberror', (webError) => {
    noted.push(`error on the page: ${webError.error().message}`);
  });
  context.on('page', (page) => page.on('worker', watchWorker));
  await context.exposeFunction('notePolicyRefusal', (refusal: string) => {
    noted.push(`refused by the content policy: ${refusal}`);
  });
  await context.addInitScript(() => {
    const note = Reflect.get(window, 'notePolicyRefusal');
    document.addEventListener('securitypolicyviolation', (event) => {
      note(`${event.effectiveDirective} ${event.blockedURI} on ${event.documentURI}`);
    });
  });
}

/**
 * Says that a trouble belongs to the test, such as the browser's remark on a 404 page. Fails when there was no
 * such trouble.
 */
export async function expectProblem(pattern: RegExp): Promise<void> {
  // Events arrive a moment after what caused them.
  const isThere = async () => {
    await noteOutside();
    return noted.some((problem) => pattern.test(problem));
  };
  await expect.poll(isThere, { message: `${pattern}` }).toBe(true);
  noted = noted.filter((problem) => !pattern.test(problem));
}

/** Fails when anything went wrong since the last call. */
export async function expectNoProblem(): Promise<void> {
  await noteOutside();
  const found = noted;
  noted = [];
  expect(found, 'what went wrong on the page').toEqual([]);
}

/** The browser keeps a worker's refusals to itself; the worker's console is heard. */
function watchWorker(worker: Worker): void {
  const listen = () => {
    addEventListener('securitypolicyviolation', (event) => {
      console.error(`refused in a worker: ${event.effectiveDirective} ${event.blockedURI}`);
    });
  };
  // A worker that has ended already has nothing more to say.
  worker.evaluate(listen).catch(() => undefined);
}

async function noteOutside(): Promise<void> {
  const { outside } = await browserOfFile();
  noted.push(...outside.taken().map((url) => `the browser asked for ${url}`));
}

function isOwn(url: string, baseUrl: string): boolean {
  // The latter two are in the page's own memory.
  return url.startsWith(`${baseUrl}/`) || url.startsWith('blob:') || url.startsWith('data:');
}
