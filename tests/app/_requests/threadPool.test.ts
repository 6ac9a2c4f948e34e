import { Worker } from 'node:worker_threads';
import { afterEach, describe, expect, it } from 'vitest';
import { type PoolLimits, ThreadPool } from '@/app/_requests/threadPool';

/** Answers a number with its double; `forever` never ends, `threadId` names the thread, `throw` ends it. */
const script = `
const { parentPort, threadId } = require('node:worker_threads');
parentPort.on('message', (question) => {
  if (question === 'forever') for (;;);
  if (question === 'slow') Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 300);
  if (question === 'throw') throw new Error('thrown on purpose');
  if (question === 'grow') { const all = []; for (;;) all.push(new Array(1000).fill({})); }
  parentPort.postMessage(question === 'threadId' ? threadId : question * 2);
});
parentPort.postMessage('ready');
`;
const generous: PoolLimits = {
  threads: 2,
  waiting: 100,
  workMs: 20_000,
  graceMs: 0,
  answerMs: 20_000,
  startMs: 20_000,
};
const pools: ThreadPool<string | number, number>[] = [];

function aPool(limits: Partial<PoolLimits> = {}, code = script) {
  const startThread = () => new Worker(code, { eval: true, resourceLimits: { maxOldGenerationSizeMb: 64 } });
  const pool = new ThreadPool<string | number, number>(startThread, { ...generous, ...limits });
  pools.push(pool);
  return pool;
}

afterEach(async () => {
  await Promise.all(pools.splice(0).map((pool) => pool.close()));
});

describe('a thread pool', () => {
  it('gives every question its own answer, however many are asked at once', async () => {
    const pool = aPool();
    const answers = await Promise.all(Array.from({ length: 50 }, (_, index) => pool.ask(index)));
    expect(answers).toEqual(
      Array.from({ length: 50 }, (_, index) => ({ kind: 'answered', answer: index * 2 })),
    );
  });

  it('keeps its thread from one question to the next', async () => {
    const pool = aPool({ threads: 1 });
    const first = await pool.ask('threadId');
    expect(first.kind).toBe('answered');
    expect(await pool.ask('threadId')).toEqual(first);
  });

  it('ends a question that takes too long, and answers the next one by another thread', async () => {
    const pool = aPool({ threads: 1, workMs: 100 });
    const first = await pool.ask('threadId');
    expect(await pool.ask('forever')).toEqual({ kind: 'tooLong' });
    const second = await pool.ask('threadId');
    expect(second.kind).toBe('answered');
    expect(second).not.toEqual(first);
  });

  it('lets a thread finish what came too late, so that it is warm for the next question', async () => {
    const pool = aPool({ threads: 1, workMs: 50, graceMs: 20_000 });
    const first = await pool.ask('threadId');
    expect(await pool.ask('slow')).toEqual({ kind: 'tooLong' });
    expect(await pool.ask('threadId')).toEqual(first);
  });

  it('answers small questions while a long one is worked on', async () => {
    const pool = aPool({ workMs: 20_000 });
    await pool.ask(1);
    let ended = false;
    void pool.ask('forever').then(() => {
      ended = true;
    });
    expect(await pool.ask(3)).toEqual({ kind: 'answered', answer: 6 });
    expect(await pool.ask(4)).toEqual({ kind: 'answered', answer: 8 });
    expect(ended).toBe(false);
  });

  it('says that it is busy where a question cannot be begun in time', async () => {
    const pool = aPool({ threads: 1, answerMs: 50, workMs: 20_000 });
    await pool.ask(1);
    void pool.ask('forever');
    expect(await pool.ask(2)).toEqual({ kind: 'busy' });
  });

  it('lets a question wait for a thread that takes the place of another', async () => {
    // Starting a thread takes longer than a millisecond.
    const pool = aPool({ threads: 1, answerMs: 1, startMs: 20_000 });
    expect(await pool.ask(1)).toEqual({ kind: 'answered', answer: 2 });
    await pool.close();
    expect(await pool.ask(2)).toEqual({ kind: 'answered', answer: 4 });
  });

  it('says that it is busy at once where too many wait already', async () => {
    const pool = aPool({ threads: 1, waiting: 2 });
    await pool.ask(1);
    const asked = ['forever', 1, 2].map((question) => pool.ask(question));
    expect(await pool.ask(3)).toEqual({ kind: 'busy' });
    await pool.close();
    expect((await asked[0])?.kind).toBe('failed');
  });

  it.each(['throw', 'grow'])('tells of a thread that broke off, and goes on: %s', async (question) => {
    const pool = aPool({ threads: 1 });
    expect(await pool.ask(question)).toEqual({ kind: 'failed' });
    expect(await pool.ask(2)).toEqual({ kind: 'answered', answer: 4 });
  });

  it('tells of threads that cannot be started, and does not start them without end', async () => {
    const pool = aPool({}, `throw new Error('no thread today');`);
    expect(await Promise.all([pool.ask(1), pool.ask(2)])).toEqual([{ kind: 'failed' }, { kind: 'failed' }]);
    expect(await pool.ask(3)).toEqual({ kind: 'failed' });
  });
});
