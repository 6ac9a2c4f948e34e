/** From one minute to another, the end not included. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** @returns the same minutes in order, with what overlaps or touches as one. */
export function mergeSpans(spans: readonly Span[]): readonly Span[] {
  const merged: Span[] = [];
  for (const span of spans.toSorted((one, other) => one.from - other.from)) {
    const last = merged.at(-1);
    if (last !== undefined && span.from <= last.to)
      merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    else merged.push(span);
  }
  return merged;
}

/** @returns what is left of a span without others, which are in order and apart. */
export function withoutSpans(span: Span, others: readonly Span[]): readonly Span[] {
  const left: Span[] = [];
  let { from } = span;
  for (const other of others) {
    if (other.from >= span.to) break;
    if (other.to <= from) continue;
    if (other.from > from) left.push({ from, to: other.from });
    from = other.to;
  }
  if (from < span.to) left.push({ from, to: span.to });
  return left;
}
