import { spawn } from 'node:child_process';
import { constants } from 'node:os';

/**
 * @typedef {{ code: number, stalled: boolean }} Ended
 * @typedef {{ cwd: string, env?: Record<string, string | undefined>, still?: Still, quiet?: boolean }} Options
 * @typedef {{ afterMs: number, mark?: () => unknown }} Still when to end a program that gets nowhere: `mark` is another
 *   value whenever it got on; without it the program has only its end to show
 */

const CAN_GROUP = process.platform !== 'win32';

/** @type {Set<import('node:child_process').ChildProcess>} */
const running = new Set();

/**
 * Runs a program to its end. It gets a process group of its own, so that what it started ends with it; a
 * signal sent to this program is handed on to it.
 *
 * @param {string} program
 * @param {readonly string[]} args
 * @param {Options} options `quiet` drops what it prints to standard output
 * @returns {Promise<Ended>} a code as the shell counts: 128 + n after signal n, 127 when it could not be started
 */
export function runChild(program, args, options) {
  const child = spawn(program, args, {
    cwd: options.cwd,
    env: childEnv(options.env),
    stdio: ['ignore', options.quiet === true ? 'ignore' : 'inherit', 'inherit'],
    detached: CAN_GROUP,
    // On Windows npm is a script, which only a shell can start.
    shell: !CAN_GROUP && program === 'npm',
  });
  running.add(child);
  return new Promise((resolve) => {
    let stalled = false;
    const stopWatching = watchStill(options.still, () => {
      stalled = true;
      sendSignal(child, 'SIGKILL');
    });
    /** @param {number} code */
    const end = (code) => {
      stopWatching();
      running.delete(child);
      // Whatever the program left behind in its group.
      sendSignal(child, 'SIGKILL');
      resolve({ code, stalled });
    };
    child.once('error', () => end(127));
    child.once('exit', (code, signal) =>
      end(code ?? 128 + (signal === null ? 0 : constants.signals[signal])),
    );
  });
}

/**
 * Hands signals on to the running children and tells the caller; this program then ends when they have.
 *
 * @param {(signal: NodeJS.Signals) => void} onSignal
 */
export function forwardSignals(onSignal) {
  /** @param {NodeJS.Signals} signal */
  const handOn = (signal) => {
    onSignal(signal);
    for (const child of running) sendSignal(child, signal);
  };
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) process.on(signal, handOn);
  // The last resort, should this program fail while a child runs.
  process.on('exit', () => {
    for (const child of running) sendSignal(child, 'SIGKILL');
  });
  if (process.env.npm_lifecycle_event !== undefined) onParentGone(() => handOn('SIGTERM'));
}

/**
 * @param {Still | undefined} still
 * @param {() => void} onStill
 * @returns {() => void} ends the watch
 */
function watchStill(still, onStill) {
  if (still === undefined) return () => undefined;
  const { afterMs, mark = () => undefined } = still;
  let last = mark();
  let since = performance.now();
  const watch = setInterval(
    () => {
      const now = mark();
      if (now !== last) since = performance.now();
      else if (performance.now() - since > afterMs) onStill();
      last = now;
    },
    Math.min(1000, afterMs / 4),
  );
  return () => clearInterval(watch);
}

/**
 * npm runs its scripts through a shell, and a signal to npm ends only that shell: the sign of it here is
 * another parent.
 *
 * @param {() => void} react
 */
function onParentGone(react) {
  const parent = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(watch);
    react();
  }, 500);
  watch.unref();
}

/**
 * @param {Record<string, string | undefined>} [extra]
 * @returns {any} the framework's types ask for the very variable that is left out here
 */
function childEnv(extra) {
  // A NODE_ENV from outside would turn tests into production or a build into development.
  const { NODE_ENV: _, ...inherited } = process.env;
  return { ...inherited, NEXT_TELEMETRY_DISABLED: '1', ...extra };
}

/**
 * @param {import('node:child_process').ChildProcess} child
 * @param {NodeJS.Signals} signal
 */
function sendSignal(child, signal) {
  if (child.pid === undefined) return;
  try {
    if (CAN_GROUP) process.kill(-child.pid, signal);
    else child.kill(signal);
  } catch {
    // It has ended already, which is what was wanted.
  }
}
