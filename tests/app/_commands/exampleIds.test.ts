import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const FOLDER = 'public/examples/';

interface Written {
  readonly entries?: readonly { readonly entry: { readonly id: string } }[];
  readonly papers?: readonly { readonly paper: { readonly id: string } }[];
}

/** Entries and papers of each file, by id, with the files that hold one. */
function holders(): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const name of readdirSync(FOLDER).filter((one) => one.endsWith('.json'))) {
    const { entries = [], papers = [] }: Written = JSON.parse(readFileSync(`${FOLDER}${name}`, 'utf8'));
    for (const { id } of [...entries.map(({ entry }) => entry), ...papers.map(({ paper }) => paper)])
      found.set(id, [...(found.get(id) ?? []), name]);
  }
  return found;
}

describe('the example files', () => {
  it('bear no id twice, so that each can be brought in beside the others and nothing of it is set aside', () => {
    const all = holders();
    expect(all.size).toBeGreaterThan(200);
    expect([...all].filter(([, files]) => files.length > 1)).toEqual([]);
  });
});
