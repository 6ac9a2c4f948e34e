import type { StallGoods } from '@/shared/schemas/stallDay';

/** @returns one text for goods, by which they are looked up. */
export const goodsKey = ({ jobId, lineId, size }: StallGoods): string =>
  JSON.stringify([jobId, lineId, size]);
