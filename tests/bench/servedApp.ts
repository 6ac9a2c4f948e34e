import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { freePort } from '@/app/_commands/freePort.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Serves the built app on a free port while `use` runs.
 *
 * @returns what `use` returns; null where the app is not built
 */
export async function servedApp<Answer>(use: (origin: string) => Promise<Answer>): Promise<Answer | null> {
  if (!existsSync(new URL('../../.next/BUILD_ID', import.meta.url))) return null;
  const port = await freePort(0);
  if (port === undefined) throw new Error('no port is free');
  const server = spawn(process.execPath, ['app/_commands/serve.mjs', '127.0.0.1', String(port)], {
    cwd: root,
    stdio: 'ignore',
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1' },
  });
  try {
    return await use(`http://127.0.0.1:${port}`);
  } finally {
    server.kill();
    if (server.exitCode === null) await once(server, 'exit');
  }
}
