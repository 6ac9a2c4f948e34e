import type { StallGoods } from '@/shared/schemas/stallDay';

/** @returns one text for the goods, by which they are told from all others; ids hold no slash. */
export const goodsKey = ({ jobId, lineId, size }: StallGoods): string => `${jobId}/${lineId}/${size}`;
