import type { BrowserContext, Worker } from 'playwright-core';
import { expect } from 'vitest';
import { browserOfFile } from './browser';

let noted: string[] = [];
let allowed: RegExp[] = [];

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
 * Says that a problem belongs to the test, such as the browser's remark on a 404 page. Fails when there was no
 * such problem.
 */
export async function expectProblem(pattern: RegExp): Promise<void> {
  // Events arrive a moment after what caused them, and more than one may come of it.
  allowTrouble(pattern);
  const isThere = async () => {
    await noteOutside();
    return noted.some((problem) => pattern.test(problem));
  };
  await expect.poll(isThere, { message: `${pattern}` }).toBe(true);
}

/** Says that a problem may come in this test, or not, such as the browser's remark on a request without a network. */
export function allowTrouble(pattern: RegExp): void {
  allowed.push(pattern);
}

/** Fails when anything went wrong since the last call. */
export async function expectNoProblem(): Promise<void> {
  await noteOutside();
  const found = noted.filter((problem) => !allowed.some((pattern) => pattern.test(problem)));
  noted = [];
  allowed = [];
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
