import type { Blank } from '@/shared/schemas/blank';
import { textileKinds } from '@/shared/schemas/blank';
import { thresholds } from '@/shared/tables/thresholds';

/** On white and pale cloth one fibre under the transfer shows for good. */
export const needsLintRoll = ({ kind, colour }: Blank): boolean =>
  textileKinds.includes(kind) && colour.L >= thresholds.colour.nearWhiteLightness.value;

/** Cloth is left lying under its transfer until the dye has stopped moving. */
export const coolsInPlace = ({ kind }: Blank): boolean => textileKinds.includes(kind);

/** Hard goods hold their heat, and the picture goes on spreading in them. A mat is thin and soft. */
export const coolsByFan = ({ kind }: Blank): boolean => !textileKinds.includes(kind) && kind !== 'mat';
