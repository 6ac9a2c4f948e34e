import { child, children, nameOf, type Source, walk } from '@/tests/tools/floors/source';

/** Where the number of draws is set. */
const PLACE = 'tests/tools/cases.ts';

/**
 * Every random case counts as `cases` or `draws` says, so that one setting draws more of all of them: a property
 * has `cases(…)` for its settings, a sample has it too or a number worked out from it, and no number of runs is
 * written out.
 */
export function drawsRule(sources: readonly Source[]): readonly string[] {
  return sources
    .filter(({ path }) => path.startsWith('tests/') && path !== PLACE)
    .flatMap((source) => {
      const problems: string[] = [];
      walk(source.program, (node) => {
        if (node.type === 'Property' && nameOf(child(node, 'key')) === 'numRuns') {
          if (child(node, 'value')?.type === 'Literal') problems.push('writes out a number of runs');
        }
        if (node.type !== 'CallExpression') return;
        const callee = child(node, 'callee');
        if (nameOf(child(callee, 'object')) !== 'fc') return;
        const [, settings] = children(node, 'arguments');
        const asks = nameOf(child(callee, 'property'));
        if ((asks === 'assert' || asks === 'check') && nameOf(child(settings, 'callee')) !== 'cases')
          problems.push(`calls fc.${asks} without cases(…)`);
        if (asks === 'sample' && (settings === undefined || settings.type === 'Literal'))
          problems.push('calls fc.sample without a number from cases(…)');
      });
      return problems.map((problem) => `${source.path} ${problem}`);
    });
}
