import { writeFile } from 'node:fs/promises';
import { everyAmounts } from '@/app/_firstScreen/workAmounts';
import { exampleFiles } from '@/lib/examples/exampleFiles';
import { Grid } from '@/lib/grid/evaluateGrid';
import { exampleQuote } from './exampleQuote';
import { exampleRun } from './exampleRun';
import { exampleStall } from './exampleStall';
import { readableJson } from './readableJson';

/* npm run examples: writes anew, after the example documents have changed, public/examples and the head of `/`. */
const grid = new Grid();
for (const [name, document] of Object.entries(exampleFiles()))
  await write(`public/examples/${name}`, document);
await write('public/examples/club-quote.json', exampleQuote());
await write('public/examples/club-run.json', exampleRun(grid));
await write('public/examples/spring-fair.json', exampleStall(grid));
await write('app/_firstScreen/exampleAmounts.json', everyAmounts(grid));

async function write(path: string, document: unknown): Promise<void> {
  await writeFile(new URL(`../../${path}`, import.meta.url), `${readableJson(document)}\n`);
}
