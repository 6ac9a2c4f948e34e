import type { Blank } from '@/shared/schemas/blank';

/** @returns share of polyester in the cloth by mass, 0 to 1. */
export const polyesterShare = ({ fibres }: Pick<Blank, 'fibres'>): number =>
  fibres.filter(({ fibre }) => fibre === 'polyester').reduce((sum, { share }) => sum + share, 0);
