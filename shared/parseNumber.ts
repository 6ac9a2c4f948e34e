import type { NumberMarks } from './numberMarks';
import { numberMarks } from './numberMarks';
import type { NumberRefusal } from './refuseNumber';
import { refuseNumber } from './refuseNumber';
import { tooExact } from './tooExact';

type ParsedNumber =
  | Readonly<{ kind: 'number'; value: number }>
  | Readonly<{ kind: 'empty' }>
  /** Right so far, but no number yet: a sign alone, a mark with nothing behind it. */
  | Readonly<{ kind: 'unfinished' }>
  | NumberRefusal;

interface NumberLimits {
  /** Decimals allowed, 0 or more; what is longer is refused, never rounded. */
  readonly decimals?: number;
}

/**
 * Reads a number as its locale writes it; what could be meant as another number is refused with a reason.
 *
 * @param text - as typed or pasted
 * @param locale - a BCP 47 tag
 * @example parseNumber('1,234.50', 'en') // { kind: 'number', value: 1234.5 }
 * @example parseNumber('1,5', 'en') // refused, 'decimalMark', instead '1.5'
 */
export function parseNumber(text: string, locale: string, limits: NumberLimits = {}): ParsedNumber {
  const marks = numberMarks(locale);
  const typed = plain(text, marks);
  if (typed === '') return { kind: 'empty' };
  const sign = /^[+-]/.test(typed) ? typed.slice(0, 1) : '';
  const body = typed.slice(sign.length);
  if (isUnfinished(body, marks)) return { kind: 'unfinished' };
  const parts = split(body, marks);
  if (!parts) return refuseNumber(typed, marks, locale);
  const refused = tooExact(parts, limits);
  if (refused) return refused;
  const value = Number(`${parts.whole === '' ? '0' : parts.whole}.${parts.fraction}0`);
  return { kind: 'number', value: sign === '-' && value !== 0 ? -value : value };
}

// Helpers

/** Direction marks carry no meaning here; wide and local digits are the same digits; every dash is a minus. */
function plain(text: string, marks: NumberMarks): string {
  return Array.from(text.replace(/[\u200E\u200F\u061C]/g, '').trim(), (sign) => {
    const digit = marks.digits.indexOf(sign);
    if (digit >= 0) return String(digit);
    if (/[\uFF0B-\uFF0E\uFF10-\uFF19]/.test(sign)) return sign.normalize('NFKC');
    return /[\u2212\u2013]/.test(sign) ? '-' : sign;
  }).join('');
}

function isUnfinished(body: string, marks: NumberMarks): boolean {
  if (body === '') return true;
  const last = body.slice(-1);
  if (last !== marks.decimal && !marks.groups.includes(last)) return false;
  const before = body.slice(0, -1);
  if (last === marks.decimal && before === '') return true;
  const parts = split(before, marks);
  return parts !== null && !before.includes(marks.decimal);
}

interface Parts {
  readonly whole: string;
  readonly fraction: string;
}

function split(body: string, marks: NumberMarks): Parts | null {
  const [front = '', fraction = '', ...more] = body.split(marks.decimal);
  if (more.length > 0 || !/^\d*$/.test(fraction)) return null;
  if (body.includes(marks.decimal) && fraction === '') return null;
  const whole = joinGroups(front, marks);
  return whole === null || (whole === '' && fraction === '') ? null : { whole, fraction };
}

/** Groups count only where they are whole: "1,5" or "0,123" is far likelier a decimal of another locale. */
function joinGroups(front: string, marks: NumberMarks): string | null {
  if (/^\d*$/.test(front)) return front;
  const mark = marks.groups.find((group) => front.includes(group));
  if (mark === undefined) return null;
  const groups = front.split(mark);
  if (!groups.every((group) => /^\d+$/.test(group))) return null;
  const [first = '', ...rest] = groups;
  if (first.startsWith('0')) return null;
  const { last, others } = marks.groupSizes;
  const sized = (size: number) =>
    first.length <= size && rest.every((g, i) => g.length === (i === rest.length - 1 ? last : size));
  return sized(others) || (last === 3 && sized(3)) ? groups.join('') : null;
}
