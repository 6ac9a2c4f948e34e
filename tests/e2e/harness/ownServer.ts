import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { freePort } from '../../../app/_commands/freePort.mjs';
import { OWN_HOST } from '../../../app/_commands/readHost.mjs';

export interface OwnServer {
  readonly baseUrl: string;
  /** Serves from now on, another build where a folder is given. */
  readonly start: (folder?: string) => Promise<void>;
  readonly end: () => Promise<void>;
}

const READY_WITHIN_MS = 240_000;

/** A server of the built app on a port of its own, which can be ended and started again. Not started yet. */
export async function ownServer(root: string): Promise<OwnServer> {
  const port = await freePort(0);
  const baseUrl = `http://${OWN_HOST}:${port}`;
  let child: ChildProcess | null = null;

  async function end(): Promise<void> {
    const ending = child;
    child = null;
    if (ending === null || ending.exitCode !== null) return;
    const ended = once(ending, 'exit');
    ending.kill('SIGTERM');
    const late = setTimeout(() => ending.kill('SIGKILL'), 5_000);
    await ended;
    clearTimeout(late);
  }

  return {
    baseUrl,
    end,
    async start(folder) {
      await end();
      const where = folder === undefined ? [] : [folder];
      child = spawn(process.execPath, ['app/_commands/serve.mjs', OWN_HOST, String(port), ...where], {
        cwd: root,
        // The runner's own NODE_ENV is `test`; the app is to run as it does for its users.
        env: { ...process.env, NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1' },
        stdio: ['ignore', 'ignore', 'inherit'],
      });
      await firstAnswer(baseUrl, child);
    },
  };
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
