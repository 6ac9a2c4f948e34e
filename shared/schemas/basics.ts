import { LENGTH_TOLERANCE_MM } from '@/shared/units';
import { z } from './z';

export const idSchema = z.string().regex(/^[A-Za-z0-9][A-Za-z0-9-]{0,63}$/);
export const nameSchema = z.string().trim().min(1).max(120);
/** A length no shorter than what is the same length to the eye: thinner ones leave no area to count with. */
export const lengthMmSchema = z.number().min(LENGTH_TOLERANCE_MM).max(20_000);
