import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { freePort } from '../../../app/_commands/freePort.mjs';
import { OWN_HOST } from '../../../app/_commands/readHost.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app answers, such as `http://127.0.0.1:40123`. */
    baseUrl: string;
  }
}

const READY_WITHIN_MS = 240_000;

let server: ChildProcess | undefined;

/** Serves the built app on a free port for the whole run. */
export async function setup(project: TestProject): Promise<void> {
  const root = project.config.root;
  if (!existsSync(join(root, '.next', 'BUILD_ID'))) {
    throw new Error('There is no build to open: run `npm run build` first.');
  }
  const port = await freePort(0);
  const baseUrl = `http://${OWN_HOST}:${port}`;
  const args = ['app/_commands/serve.mjs', OWN_HOST, String(port)];
  server = spawn(process.execPath, args, {
    cwd: root,
    // The runner's own NODE_ENV is `test`; the app is to run as it does for its users.
    env: { ...process.env, NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1' },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  await firstAnswer(baseUrl, server);
  project.provide('baseUrl', baseUrl);
}

export async function teardown(): Promise<void> {
  if (server === undefined || server.exitCode !== null) return;
  const ended = once(server, 'exit');
  server.kill('SIGTERM');
  const late = setTimeout(() => server?.kill('SIGKILL'), 5_000);
  await ended;
  clearTimeout(late);
}

async function firstAnswer(baseUrl: string, child: ChildProcess): Promise<void> {
  const until = Date.now() + READY_WITHIN_MS;
  while (Date.now() < until) {
    if (child.exitCode !== null) throw new Error(`The server ended with code ${child.exitCode}.`);
    try {
      await fetch(baseUrl);
      return;
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
  child.kill('SIGKILL');
  throw new Error(`No answer from ${baseUrl} within ${READY_WITHIN_MS / 1000} s.`);
}
