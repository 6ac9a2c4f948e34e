import { describe, expect, it } from 'vitest';
import { paperPages } from '@/app/_priceLists/paperPages';
import { anItem, aVersion } from '@/tests/lib/priceLists/aVersion';

const items = (count: number) =>
  Array.from({ length: count }, (_, index) => anItem({ id: `item-${index}`, name: `Shirt ${index}` }));

describe('the pages a list takes', () => {
  it('are one for eight items, on either paper', () => {
    expect(paperPages(aVersion({ items: items(8) }), 'a4')).toBe(1);
    expect(paperPages(aVersion({ items: items(8) }), 'letter')).toBe(1);
  });

  it('are more for twenty items, or for words without end', () => {
    expect(paperPages(aVersion({ items: items(20) }), 'a4')).toBe(2);
    expect(paperPages(aVersion({ items: items(8), notes: 'Word\n'.repeat(60) }), 'a4')).toBeGreaterThan(1);
  });

  it('are counted in lines of what is included as high as they are printed', () => {
    // 80 lines of 16 px letters, 1.45 apart, take 491 mm; two letter pages have 2 × 251.4 mm, of which head, foot and
    // item take more than the 12 mm that are left.
    expect(paperPages(aVersion({ items: items(1), notes: 'Word\n'.repeat(79) }), 'letter')).toBe(3);
  });
});
