import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { freePort } from '@/app/_commands/freePort.mjs';
import type { JobInput } from '@/shared/schemas/request';
import { type BenchRow, median, percentile } from './measure';

const CONNECTIONS = 20;
const REQUESTS = 600;
const root = fileURLToPath(new URL('../..', import.meta.url));

/** Times POST /api/price of the built app at twenty connections, each asking again as soon as it is answered. */
export async function benchApi(input: JobInput): Promise<readonly BenchRow[]> {
  if (!existsSync(new URL('../../.next/BUILD_ID', import.meta.url))) {
    process.stderr.write('The API is not measured: build the app first (npm run build).\n');
    return [];
  }
  const port = await freePort(0);
  if (port === undefined) throw new Error('no port is free');
  const server = spawn(process.execPath, ['app/_commands/serve.mjs', '127.0.0.1', String(port)], {
    cwd: root,
    stdio: 'ignore',
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1' },
  });
  try {
    const url = `http://127.0.0.1:${port}/api/price`;
    await untilAnswered(url, input);
    const start = performance.now();
    const spent = (
      await Promise.all(
        Array.from({ length: CONNECTIONS }, () => askInTurn(url, input, REQUESTS / CONNECTIONS)),
      )
    ).flat();
    const seconds = (performance.now() - start) / 1000;
    return [
      {
        what: `POST /api/price at ${CONNECTIONS} connections`,
        unit: 'ms',
        median: median(spent),
        p99: percentile(spent, 0.99),
      },
      {
        what: `POST /api/price at ${CONNECTIONS} connections`,
        unit: 'requests/s',
        median: spent.length / seconds,
        p99: null,
      },
    ];
  } finally {
    server.kill();
    if (server.exitCode === null) await once(server, 'exit');
  }
}

async function askInTurn(url: string, input: JobInput, count: number): Promise<readonly number[]> {
  const spent: number[] = [];
  const body = JSON.stringify(input);
  for (let turn = 0; turn < count; turn += 1) {
    const start = performance.now();
    const answer = await fetch(url, { method: 'POST', body });
    await answer.arrayBuffer();
    if (answer.status !== 200) throw new Error(`the API answered ${answer.status}`);
    spent.push(performance.now() - start);
  }
  return spent;
}

async function untilAnswered(url: string, input: JobInput): Promise<void> {
  const body = JSON.stringify(input);
  for (let tries = 0; tries < 100; tries += 1) {
    const answer = await fetch(url, { method: 'POST', body }).catch(() => null);
    if (answer?.status === 200) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('the app did not answer within ten seconds');
}
