import { describe, expect, it } from 'vitest';
import { isKnownKind } from '@/lib/kinds/draftFacts';
import { kinds } from '@/lib/kinds/kinds';

const documentKinds = Object.keys(kinds).filter(isKnownKind);

describe('kinds', () => {
  it.each(documentKinds)('has a step from every version of a %s to the next', (kind) => {
    const { version, steps } = kinds[kind];
    const from = Array.from({ length: version - 1 }, (_, index) => String(index + 1));
    expect(Object.keys(steps)).toEqual(from);
  });

  it.each(documentKinds)('refuses a %s with a key it does not know', (kind) => {
    const outcome = kinds[kind].schema.safeParse({ noSuchKey: 1 });
    expect(outcome.error?.issues.map(({ code }) => code)).toContain('unrecognized_keys');
  });
});
