import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { type OwnServer, ownServer } from './ownServer';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app answers, such as `http://127.0.0.1:40123`. */
    baseUrl: string;
  }
}

let server: OwnServer | undefined;

/** Serves the built app on a free port for the whole run. */
export async function setup(project: TestProject): Promise<void> {
  const root = project.config.root;
  if (!existsSync(join(root, '.next', 'BUILD_ID'))) {
    throw new Error('There is no build to open: run `npm run build` first.');
  }
  server = await ownServer(root);
  await server.start();
  project.provide('baseUrl', server.baseUrl);
}

export async function teardown(): Promise<void> {
  await server?.end();
}
