import { describe, expect, it } from 'vitest';
import { fieldAddress } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { idSchema } from '@/shared/schemas/basics';

describe('fieldAddress', () => {
  it.each([
    [{ document: 'workshop', path: ['rates', 'wage'] }, '/workshop#workshop-rates-wage'],
    [{ document: 'blank', id: 'mug', path: ['sizes', 0, 'price'] }, '/blanks#blank-mug-sizes-0-price'],
    [{ document: 'job', path: ['name'] }, null],
    [{ document: 'artwork', id: 'crest', path: ['rights'] }, null],
  ] as const)('of %j is %s', (where, address) => expect(fieldAddress(where)).toBe(address));
});

describe('newId', () => {
  it('is an id that documents take, and never the same twice', () => {
    const ids = Array.from({ length: 1000 }, newId);
    expect(new Set(ids).size).toBe(1000);
    expect(ids.every((id) => idSchema.safeParse(id).success)).toBe(true);
  });
});
