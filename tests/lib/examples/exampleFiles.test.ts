import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { exampleFiles } from '@/lib/examples/exampleFiles';
import { resolveJob } from '@/lib/job/resolveJob';
import { jobInputSchema } from '@/shared/schemas/request';

describe.each(Object.entries(exampleFiles()))('%s', (file, input) => {
  it('is what its schema reads, nothing filled in', () => {
    expect(jobInputSchema.parse(input)).toEqual(input);
  });

  it('lacks no rate and leads nowhere that is not there', () => {
    expect(resolveJob(input).findings).toEqual([]);
  });

  it('is the file a reader can edit', () => {
    const path = fileURLToPath(new URL(`../../../public/examples/${file}`, import.meta.url));
    expect(JSON.parse(readFileSync(path, 'utf8'))).toEqual(input);
  });

  it('makes 37, 96 or 36 pieces', () => {
    const pieces = input.job.lines
      .flatMap(({ quantities }) => quantities)
      .reduce((sum, { quantity }) => sum + quantity, 0);
    expect(pieces).toBe({ 'club-order.json': 37, 'fair-shirts.json': 96, 'fair-mugs.json': 36 }[file]);
  });
});
