/**
 * A record's own entry. A plain look-up would find what every object inherits under names like `constructor`.
 *
 * @returns undefined where the record has no such key of its own
 */
export const ownEntry = <Value>(record: Readonly<Record<string, Value>>, key: string): Value | undefined =>
  Object.hasOwn(record, key) ? record[key] : undefined;
