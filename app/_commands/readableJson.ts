const LINE = 110;

/** JSON with every object or list that fits on one line kept on one: a rate reads as one thing. */
export function readableJson(value: unknown, indent = ''): string {
  const short = oneLine(value);
  if (indent.length + short.length <= LINE || typeof value !== 'object' || value === null) return short;
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    return `[\n${value.map((item) => inner + readableJson(item, inner)).join(',\n')}\n${indent}]`;
  }
  const entries = Object.entries(value).map(
    ([key, item]) => `${inner}${JSON.stringify(key)}: ${readableJson(item, inner)}`,
  );
  return `{\n${entries.join(',\n')}\n${indent}}`;
}

function oneLine(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(oneLine).join(', ')}]`;
  const entries = Object.entries(value).map(([key, item]) => `${JSON.stringify(key)}: ${oneLine(item)}`);
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
}
