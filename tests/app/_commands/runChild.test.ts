import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { freePort } from '@/app/_commands/freePort.mjs';
import { OWN_HOST } from '@/app/_commands/readHost.mjs';
import { runChild } from '@/app/_commands/runChild.mjs';

const here = { cwd: process.cwd(), quiet: true };

function run(script: string, options = {}) {
  return runChild(process.execPath, ['-e', script], { ...here, ...options });
}

test('the code of the program is handed back', async () => {
  expect(await run('process.exit(3)')).toEqual({ code: 3, stalled: false });
});

test('a program ended by a signal has the code the shell gives it', async () => {
  expect(await run(`process.kill(process.pid, 'SIGTERM')`)).toEqual({ code: 143, stalled: false });
});

test('a program that does not exist has code 127', async () => {
  expect(await runChild('no-such-program', [], here)).toEqual({ code: 127, stalled: false });
});

test('a program that gets nowhere is ended', async () => {
  const still = { afterMs: 200 };
  expect(await run('setInterval(() => {}, 1000)', { still })).toEqual({ code: 137, stalled: true });
});

test('a program that gets on is left to its end, however long it takes', async () => {
  let looked = 0;
  const mark = () => {
    looked += 1;
    return looked;
  };
  const folder = await mkdtemp(join(tmpdir(), 'run-child-'));
  const sign = join(folder, 'end');
  const script = `setInterval(() => require('node:fs').existsSync(${JSON.stringify(sign)}) && process.exit(0), 5)`;
  const ended = run(script, { still: { afterMs: 40, mark } });
  // Far longer than a program is left that gets nowhere.
  await expect.poll(() => looked, { timeout: 20_000 }).toBeGreaterThan(20);
  await writeFile(sign, '');
  expect(await ended).toEqual({ code: 0, stalled: false });
  await rm(folder, { recursive: true });
});

test('the program runs without telemetry and without the NODE_ENV of the tests', async () => {
  const script = `process.exit(process.env.NEXT_TELEMETRY_DISABLED === '1' && !('NODE_ENV' in process.env) ? 0 : 1)`;
  expect(process.env.NODE_ENV).toBe('test');
  expect((await run(script)).code).toBe(0);
});

test('what the program started ends with it', async () => {
  const port = (await freePort(0)) ?? 0;
  // The program ends as soon as the one it started listens.
  const listener = `require('node:net').createServer().listen(${port}, '${OWN_HOST}', () => console.log('listening'))`;
  const script = `
    const { spawn } = require('node:child_process');
    const left = spawn(process.execPath, ['-e', ${JSON.stringify(listener)}]);
    left.stdout.once('data', () => process.exit(0));`;
  expect((await run(script)).code).toBe(0);
  await expect.poll(() => freePort(port)).toBe(port);
});
