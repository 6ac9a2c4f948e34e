import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { dayTests } from './dayTests';
import { testSources } from './testSources';

/* tsx tests/tools/clock/listDayTests.ts FILE: writes which test files touch days. */
const root = fileURLToPath(new URL('../../..', import.meta.url));
const file = process.argv[2];
if (file === undefined) throw new Error('name the file to write');
mkdirSync(dirname(file), { recursive: true });
writeFileSync(file, JSON.stringify(dayTests(testSources(root))));
