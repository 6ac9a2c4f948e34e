import { expect, test } from 'vitest';
import { freePort, HOST } from '@/app/_commands/freePort.mjs';
import { runChild } from '@/app/_commands/runChild.mjs';

const here = { cwd: process.cwd(), quiet: true };

function run(script: string, options = {}) {
  return runChild(process.execPath, ['-e', script], { ...here, ...options });
}

test('the code of the program is handed back', async () => {
  expect(await run('process.exit(3)')).toEqual({ code: 3, timedOut: false });
});

test('a program ended by a signal has the code the shell gives it', async () => {
  expect(await run(`process.kill(process.pid, 'SIGTERM')`)).toEqual({ code: 143, timedOut: false });
});

test('a program that does not exist has code 127', async () => {
  expect(await runChild('no-such-program', [], here)).toEqual({ code: 127, timedOut: false });
});

test('a program that takes too long is ended', async () => {
  expect(await run('setInterval(() => {}, 1000)', { limitMs: 200 })).toEqual({ code: 137, timedOut: true });
});

test('the program runs without telemetry and without the NODE_ENV of the tests', async () => {
  const script = `process.exit(process.env.NEXT_TELEMETRY_DISABLED === '1' && !('NODE_ENV' in process.env) ? 0 : 1)`;
  expect(process.env.NODE_ENV).toBe('test');
  expect((await run(script)).code).toBe(0);
});

test('what the program started ends with it', async () => {
  const port = (await freePort(0)) ?? 0;
  // The program ends as soon as the one it started listens.
  const listener = `require('node:net').createServer().listen(${port}, '${HOST}', () => console.log('listening'))`;
  const script = `
    const { spawn } = require('node:child_process');
    const left = spawn(process.execPath, ['-e', ${JSON.stringify(listener)}]);
    left.stdout.once('data', () => process.exit(0));`;
  expect((await run(script)).code).toBe(0);
  await expect.poll(() => freePort(port)).toBe(port);
});
