import { writeFile } from 'node:fs/promises';
import { exampleFiles } from '@/lib/examples/exampleFiles';
import { readableJson } from './readableJson';

/* npm run examples: writes public/examples anew after the example documents have changed. */
for (const [name, document] of Object.entries(exampleFiles())) {
  const file = new URL(`../../public/examples/${name}`, import.meta.url);
  await writeFile(file, `${readableJson(document)}\n`);
}
