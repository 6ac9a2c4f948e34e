import { z } from '@/shared/schemas/z';

/** A margin somebody may ask a price for: up to the whole price, so that the answer can say what no price gives. */
export const soughtMarginSchema = z.number().min(0).max(1);
