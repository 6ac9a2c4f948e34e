import type { Channel } from '@/shared/schemas/workshop';

/** @returns how the written price stands to tax, in words after a comma. */
export function taxWords(mode: Channel['taxMode']): string {
  switch (mode) {
    case 'added':
      return 'tax is added later';
    case 'inside':
      return 'tax is inside';
    case 'none':
      return 'no tax on them';
    case null:
      return 'tax not yet decided';
    default:
      return mode satisfies never;
  }
}
