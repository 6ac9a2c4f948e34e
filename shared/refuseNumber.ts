import type { NumberMarks } from './numberMarks';

/** Why a text is not read as a number, with what the sentence beside the field needs. */
export type NumberRefusal = Readonly<{ kind: 'refused' }> &
  (
    | Refused<'decimalMark', { typed: string; use: string; instead: string | null }>
    | Refused<'groups', { instead: string | null }>
    | Refused<'space', { instead: string | null }>
    | Refused<'exponent', { instead: string | null }>
    | Refused<'percent', { instead: string | null }>
    | Refused<'currency', { sign: string; instead: string | null }>
    | Refused<'letters', { found: string; instead: string | null }>
    | Refused<'foreignDigits', { found: string }>
    | Refused<'sign', { instead: string | null }>
    | Refused<'decimals', { typed: number; most: number }>
    | Refused<'digits', { typed: number; most: number }>
  );

/**
 * Names the reason a text is no number and what could be typed instead.
 *
 * @param typed - trimmed, with plain digits and minus, already known not to be a number here
 * @returns the first reason that applies; `instead` is null where guessing would be risky
 * @example refuseNumber('5%', numberMarks('en'), 'en').reason // 'percent'
 */
export function refuseNumber(typed: string, marks: NumberMarks, locale: string): NumberRefusal {
  const refused = { kind: 'refused' } as const;
  const tidy = (text: string) => rewrite(text, marks);
  if (/[%\u066A]/.test(typed))
    return { ...refused, reason: 'percent', facts: { instead: tidy(typed.replace(/[%\u066A]/g, '')) } };
  const sign = /\p{Sc}/u.exec(typed)?.[0];
  if (sign)
    return { ...refused, reason: 'currency', facts: { sign, instead: tidy(typed.replace(sign, '')) } };
  if (/^[+-]?[\d.,]*\de[+-]?\d*$/i.test(typed))
    return { ...refused, reason: 'exponent', facts: { instead: written(typed, locale) } };
  const foreign = /(?![0-9])\p{Nd}/u.exec(typed)?.[0];
  if (foreign) return { ...refused, reason: 'foreignDigits', facts: { found: foreign } };
  const found = /[^\d\s.,'’+\-\u066B\u066C]+/u.exec(typed)?.[0];
  if (found) return { ...refused, reason: 'letters', facts: { found, instead: aside(typed, found, tidy) } };
  if (/.[+-]/.test(typed))
    return {
      ...refused,
      reason: 'sign',
      facts: { instead: /^[^+-]+-$/.test(typed) ? tidy(`-${typed.slice(0, -1)}`) : null },
    };
  if (/\s/.test(typed)) return { ...refused, reason: 'space', facts: { instead: tidy(typed) } };
  return misread(typed, marks);
}

// Helpers

interface Refused<Reason extends string, Facts> {
  readonly reason: Reason;
  readonly facts: Readonly<Facts>;
}

/** Only marks are left to blame: one of them stands where this locale has another, or groups are uneven. */
function misread(typed: string, marks: NumberMarks): NumberRefusal {
  const found = typed.match(/[^\d+-]/g) ?? [];
  const last = found.at(-1) ?? '';
  const lone = found.filter((mark) => mark === last).length === 1;
  const instead = rewrite(typed, marks);
  if (lone && last !== marks.decimal && /[.,\u066B]/.test(last))
    return { kind: 'refused', reason: 'decimalMark', facts: { typed: last, use: marks.decimal, instead } };
  return { kind: 'refused', reason: 'groups', facts: { instead } };
}

/** The same digits with this locale's decimal mark and no groups, or null if it isn't plain which mark is which. */
function rewrite(text: string, marks: NumberMarks): string | null {
  const tight = text.trim();
  if (/\s/.test(tight) && !/^[+-]?\d{1,3}(\s\d{3})+(\D|$)/.test(tight)) return null;
  const match = /^([+-]?)([\d.,]*?)(?:([.,\u066B])(\d+))?$/.exec(tight.replace(/[\s'’\u066C]/g, ''));
  if (!match) return null;
  const [, sign = '', front = '', mark = '', tail = ''] = match;
  const [first = '', ...groups] = front.split(/\D/);
  if (groups.some((group) => group.length !== 3) || new Set(front.match(/\D/g)).size > 1) return null;
  if (groups.length > 0 && !/^[1-9]\d{0,2}$/.test(first)) return null;
  const whole = `${first}${groups.join('')}`;
  if (tail === '') return whole === '' ? null : `${sign}${whole}`;
  if (!front.includes(mark)) return `${sign}${whole || '0'}${marks.decimal}${tail}`;
  // The same mark again and again can only part thousands.
  return tail.length === 3 ? `${sign}${whole}${tail}` : null;
}

/** "3.4 in" can be tidied; "0x10" can't, as its letters stand among the digits. */
function aside(typed: string, found: string, tidy: (text: string) => string | null): string | null {
  const at = typed.indexOf(found);
  return at === 0 || at + found.length === typed.length ? tidy(typed.replace(found, '')) : null;
}

function written(typed: string, locale: string): string | null {
  const value = /,/.test(typed) ? Number.NaN : Number(typed);
  if (!Number.isFinite(value) || Math.abs(value) >= 1e15 || (value !== 0 && Math.abs(value) < 1e-9))
    return null;
  return new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: 12 }).format(value);
}
