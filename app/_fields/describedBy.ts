/** Names, for `aria-describedby`, the parts of a field's frame that are there. */
export function describedBy(
  id: string,
  parts: Readonly<{
    unit?: string | undefined;
    hint?: string | undefined;
    caution?: string | undefined;
    issue?: string | null | undefined;
  }>,
): string | undefined {
  const ids = (['unit', 'hint', 'caution', 'issue'] as const)
    .filter((part) => parts[part])
    .map((part) => `${id}-${part}`);
  return ids.length > 0 ? ids.join(' ') : undefined;
}
