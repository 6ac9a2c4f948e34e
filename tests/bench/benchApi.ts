import type { JobInput } from '@/shared/schemas/request';
import { type BenchRow, timeRow, withRatio } from './benchRow';
import { servedApp } from './servedApp';

const CONNECTIONS = 20;
/** In turn with the yardstick: each gets this many rounds of so many requests. */
const ROUNDS = 6;
const REQUESTS_EACH = 5;

/* Not a server without the framework: what the framework and the connection cost would then be counted as ours. */
const REFUSED = 'the least answer of the same server and framework, a 405 to the same documents sent by PUT';

interface Asked {
  readonly method: 'POST' | 'PUT';
  readonly status: number;
}
const priced: Asked = { method: 'POST', status: 200 };
const refused: Asked = { method: 'PUT', status: 405 };

/** Times POST /api/price of the built app at twenty connections, each asking again as soon as it is answered. */
export async function benchApi(input: JobInput): Promise<readonly BenchRow[]> {
  const body = JSON.stringify(input);
  const rounds = await servedApp(async (origin) => {
    const url = `${origin}/api/price`;
    // The first price makes the engine.
    await askInTurn(url, body, priced);
    await crowd(url, body, refused);
    const done: { readonly figure: Round; readonly yardstick: Round }[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      done.push({ figure: await crowd(url, body, priced), yardstick: await crowd(url, body, refused) });
    }
    return done;
  });
  if (rounds === null) {
    process.stderr.write('The API is not measured: build the app first (npm run build).\n');
    return [];
  }
  const figure = joined(rounds.map((round) => round.figure));
  const yardstick = joined(rounds.map((round) => round.yardstick));
  const what = `POST /api/price at ${CONNECTIONS} connections`;
  return [
    timeRow(what, { figure: figure.spent, yardstick: yardstick.spent }, REFUSED),
    withRatio({
      what,
      unit: 'requests/s',
      median: figure.spent.length / figure.seconds,
      p99: null,
      yardstick: { what: REFUSED, median: yardstick.spent.length / yardstick.seconds },
    }),
  ];
}

interface Round {
  /** Milliseconds of each request. */
  readonly spent: readonly number[];
  readonly seconds: number;
}

async function crowd(url: string, body: string, asked: Asked): Promise<Round> {
  const start = performance.now();
  const spent = await Promise.all(Array.from({ length: CONNECTIONS }, () => askInTurn(url, body, asked)));
  return { spent: spent.flat(), seconds: (performance.now() - start) / 1000 };
}

const joined = (rounds: readonly Round[]): Round => ({
  spent: rounds.flatMap(({ spent }) => spent),
  seconds: rounds.reduce((sum, { seconds }) => sum + seconds, 0),
});

async function askInTurn(url: string, body: string, { method, status }: Asked): Promise<readonly number[]> {
  const spent: number[] = [];
  for (let turn = 0; turn < REQUESTS_EACH; turn += 1) {
    const start = performance.now();
    const answer = await fetch(url, { method, body });
    await answer.arrayBuffer();
    if (answer.status !== status) throw new Error(`the API answered ${method} with ${answer.status}`);
    spent.push(performance.now() - start);
  }
  return spent;
}
