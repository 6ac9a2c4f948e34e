import { z } from '@/shared/schemas/z';

/* Parts of documents as they were when papers and entries left them. They never change with the schemas of today: what
   leaves an old record must be the same whenever and wherever that record is read, or it would count twice. */

export const heldIdSchema = z.string().regex(/^[A-Za-z0-9][A-Za-z0-9-]{0,63}$/);
export const heldNameSchema = z.string().trim().min(1).max(120);
export const heldLengthMmSchema = z.number().min(0.01).max(20_000);
export const heldDaySchema = z.iso.date();
export const heldSizeNameSchema = z.string().trim().min(1).max(24);
