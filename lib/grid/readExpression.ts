import type { TracePart } from './traceFigure';

export type Operand = Extract<TracePart, { kind: 'operand' }>;

/** A formula as it is built, brackets resolved. */
export type Expression =
  | { readonly kind: 'operand'; readonly part: Operand }
  | { readonly kind: 'number'; readonly text: string }
  | {
      readonly kind: 'pair';
      readonly sign: string;
      readonly left: Expression;
      readonly right: Expression;
    }
  | { readonly kind: 'lead'; readonly sign: string; readonly of: Expression }
  | { readonly kind: 'percent'; readonly of: Expression }
  | { readonly kind: 'call'; readonly name: string; readonly of: readonly Expression[] };

/** Signs between two values, the loosest first; each level is read from left to right, as OpenFormula has it. */
export const pairSigns: readonly (readonly string[])[] = [
  ['=', '<>', '<', '>', '<=', '>='],
  ['+', '-'],
  ['*', '/'],
  ['^'],
];

/**
 * Reads the parts of a trace as an expression.
 *
 * @returns null where they do not make one
 */
export function readExpression(parts: readonly TracePart[]): Expression | null {
  const reader = { parts, at: 0 };
  const read = pair(reader, 0);
  return reader.at === parts.length ? read : null;
}

// Helpers

interface Reader {
  readonly parts: readonly TracePart[];
  at: number;
}

function pair(reader: Reader, level: number): Expression | null {
  const signs = pairSigns[level];
  if (signs === undefined) return lead(reader);
  let left = pair(reader, level + 1);
  while (left !== null) {
    const sign = signOf(reader);
    if (sign === null || !signs.includes(sign)) return left;
    reader.at += 1;
    const right = pair(reader, level + 1);
    if (right === null) return null;
    left = { kind: 'pair', sign, left, right };
  }
  return null;
}

function lead(reader: Reader): Expression | null {
  const sign = signOf(reader);
  if (sign !== '-' && sign !== '+') return percent(reader);
  reader.at += 1;
  const of = lead(reader);
  return of === null ? null : { kind: 'lead', sign, of };
}

function percent(reader: Reader): Expression | null {
  let of = single(reader);
  while (of !== null && take(reader, '%')) of = { kind: 'percent', of };
  return of;
}

function single(reader: Reader): Expression | null {
  const part = reader.parts[reader.at];
  if (part === undefined) return null;
  reader.at += 1;
  switch (part.kind) {
    case 'operand':
      return { kind: 'operand', part };
    case 'number':
      return { kind: 'number', text: part.text };
    case 'function': {
      const of = take(reader, '(') ? list(reader) : null;
      return of === null ? null : { kind: 'call', name: part.text.toUpperCase(), of };
    }
    case 'sign': {
      if (part.text !== '(') return null;
      const inside = pair(reader, 0);
      return take(reader, ')') ? inside : null;
    }
    default:
      return part satisfies never;
  }
}

function list(reader: Reader): readonly Expression[] | null {
  const found: Expression[] = [];
  if (take(reader, ')')) return found;
  for (;;) {
    const next = pair(reader, 0);
    if (next === null) return null;
    found.push(next);
    if (take(reader, ')')) return found;
    if (!take(reader, ';')) return null;
  }
}

function signOf({ parts, at }: Reader): string | null {
  const part = parts[at];
  return part?.kind === 'sign' ? part.text : null;
}

function take(reader: Reader, sign: string): boolean {
  const found = signOf(reader) === sign;
  if (found) reader.at += 1;
  return found;
}
