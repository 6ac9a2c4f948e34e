import { z } from 'zod';

/*
 * Schemas are interpreted, never compiled: compiling needs eval, which the content policy forbids, and even
 * asking whether it is allowed is a refusal on the record.
 */
z.config({ jitless: true });

export { z };
