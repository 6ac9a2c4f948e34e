// `node app/_commands/next.mjs COMMAND …` runs the framework's own command line, without its telemetry on any
// system: a variable written before a command in package.json is not understood everywhere.
import { fileURLToPath } from 'node:url';
import { forwardSignals, runChild } from './runChild.mjs';

forwardSignals(() => {});
const root = fileURLToPath(new URL('../..', import.meta.url));
const { code } = await runChild(
  process.execPath,
  ['node_modules/next/dist/bin/next', ...process.argv.slice(2)],
  { cwd: root },
);
process.exit(code);
