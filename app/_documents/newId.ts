/**
 * An id that no other document or part of one has.
 *
 * Drawn from `getRandomValues` and not `randomUUID`, which a page served over plain http on a home network lacks.
 */
export const newId = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => byte.toString(16).padStart(2, '0')).join(
    '',
  );
