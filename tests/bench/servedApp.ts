import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ownServer } from '@/tests/e2e/harness/ownServer';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Serves the built app on a free port while `use` runs.
 *
 * @returns what `use` returns; null where the app is not built
 */
export async function servedApp<Answer>(use: (origin: string) => Promise<Answer>): Promise<Answer | null> {
  if (!existsSync(join(root, '.next', 'BUILD_ID'))) return null;
  const server = await ownServer(root);
  try {
    await server.start();
    return await use(server.baseUrl);
  } finally {
    await server.end();
  }
}
