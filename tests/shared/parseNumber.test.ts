import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNumber } from '@/shared/formatNumber';
import { parseNumber } from '@/shared/parseNumber';
import { cases } from '@/tests/tools/cases';

const number = (value: number) => ({ kind: 'number', value });

describe('parseNumber reads a number as its locale writes it', () => {
  it.each([
    ['en', '12', 12],
    ['en', ' 12 ', 12],
    ['en', '0.5', 0.5],
    ['en', '.5', 0.5],
    ['en', '-3.25', -3.25],
    ['en', '+3', 3],
    ['en', '007', 7],
    ['en', '1,234', 1234],
    ['en', '1,234,567', 1234567],
    ['en', '1,234.50', 1234.5],
    ['en-IN', '12,34,567', 1234567],
    ['en-IN', '1,234,567', 1234567],
    ['de', '1,5', 1.5],
    ['de', '1.234,56', 1234.56],
    ['de', '1.234', 1234],
    ['de-CH', "1'234.5", 1234.5],
    ['de-CH', '1’234’567', 1234567],
    ['fr', '1\u202F234,5', 1234.5],
    ['fr', '1 234,5', 1234.5],
    ['fr', '1\u00A0234\u00A0567', 1234567],
    ['sv', '\u22121\u00A0234,5', -1234.5],
    ['en', '\u22125', -5],
    ['en', '–5', -5],
    ['es', '1.234', 1234],
    ['ar-EG', '١٬٢٣٤٫٥', 1234.5],
    ['ar-EG', '\u061C-١٢', -12],
    ['mr', '१,२३४', 1234],
    ['ja', '１２．５', 12.5],
  ])('%s: "%s" is %d', (locale, text, value) => {
    expect(parseNumber(text, locale)).toEqual(number(value));
  });

  it('keeps minus nothing out of the documents', () => {
    expect(parseNumber('-0', 'en')).toEqual(number(0));
    expect(parseNumber('-0.0', 'en')).toEqual(number(0));
  });
});

describe('parseNumber waits for a number that is half-typed', () => {
  it.each([
    ['en', '-'],
    ['en', '+'],
    ['en', '.'],
    ['en', '-.'],
    ['en', '1.'],
    ['en', '1,'],
    ['en', '1,234,'],
    ['de', '1,'],
    ['de', '-,'],
    ['de', '1.'],
    ['ar-EG', '٫'],
  ])('%s: "%s"', (locale, text) => {
    expect(parseNumber(text, locale)).toEqual({ kind: 'unfinished' });
  });

  it.each(['', ' ', '\u00A0', '\u200E'])('reads "%s" as empty', (text) => {
    expect(parseNumber(text, 'en')).toEqual({ kind: 'empty' });
  });
});

describe('parseNumber refuses what could be another number, and says what to type', () => {
  it.each([
    // adobe/react-spectrum issues 1879 and 9086: these were read as 222222, 1.23 and 100.
    ['de', '22.2222', 'decimalMark', '22,2222'],
    ['en', '1.234,56', 'decimalMark', '1234.56'],
    ['en', '1,00', 'decimalMark', '1.00'],
    ['en', '1,5', 'decimalMark', '1.5'],
    ['en', '-1,5', 'decimalMark', '-1.5'],
    ['en', ',5', 'decimalMark', '0.5'],
    ['en', '0,123', 'decimalMark', '0.123'],
    ['en', '12,3456', 'decimalMark', '12.3456'],
    ['de', '0.500', 'decimalMark', '0,500'],
    ['de-CH', '1,5', 'decimalMark', '1.5'],
    ['fr', '1.5', 'decimalMark', '1,5'],
    ['fr', '1,234.5', 'decimalMark', '1234,5'],
    ['ar-EG', '1.5', 'decimalMark', '1٫5'],
    ['en', '1.234.567', 'groups', '1234567'],
    ['en', '12,34,567', 'groups', null],
    ['en', '1.2.3', 'groups', null],
    ['en', '1,,2', 'groups', null],
    ['en', '..', 'groups', null],
    ['en', '1’234', 'groups', '1234'],
    ['en', '12 3', 'space', null],
    ['en', '1 234', 'space', '1234'],
    ['fr', '12 3', 'space', null],
    ['en', '1e5', 'exponent', '100000'],
    ['en', '1e-3', 'exponent', '0.001'],
    ['de', '25e-1', 'exponent', '2,5'],
    ['en', '1e', 'exponent', null],
    ['en', '1e400', 'exponent', null],
    ['en', '0x10', 'letters', null],
    ['en', '1/2', 'letters', null],
    ['en', '3.4 in', 'letters', '3.4'],
    ['en', 'USD 5', 'letters', '5'],
    ['en', 'twelve', 'letters', null],
    ['en', 'NaN', 'letters', null],
    ['en', 'Infinity', 'letters', null],
    ['en', '(5)', 'letters', null],
    ['en', '5%', 'percent', '5'],
    ['en', '5 %', 'percent', '5'],
    ['en', '%', 'percent', null],
    ['en', '$5', 'currency', '5'],
    ['de', '5,50 €', 'currency', '5,50'],
    ['en', '5-', 'sign', '-5'],
    ['en', '--5', 'sign', null],
    ['en', '10-12', 'sign', null],
  ])('%s: "%s" is refused as %s, offering %s', (locale, text, reason, instead) => {
    expect(parseNumber(text, locale)).toMatchObject({ kind: 'refused', reason, facts: { instead } });
  });

  it('offers only what it would read itself', () => {
    const sign = fc.constantFrom(..."0123456789.,-+' %$e".split(''));
    const locales = fc.constantFrom('en', 'de', 'fr', 'de-CH', 'en-IN', 'ar-EG');
    fc.assert(
      fc.property(fc.array(sign, { maxLength: 9 }), locales, (signs, locale) => {
        const parsed = parseNumber(signs.join(''), locale);
        if (parsed.kind !== 'refused' || !('instead' in parsed.facts) || parsed.facts.instead === null)
          return;
        expect(parseNumber(parsed.facts.instead, locale).kind).toBe('number');
      }),
      cases(3000),
    );
  });

  it('refuses the digits of a script that is not the locale’s', () => {
    expect(parseNumber('१२', 'en')).toMatchObject({ reason: 'foreignDigits', facts: { found: '१' } });
  });
});

describe('parseNumber never rounds', () => {
  it('refuses more decimals than the field keeps', () => {
    expect(parseNumber('1.255', 'en', { decimals: 2 })).toEqual({
      kind: 'refused',
      reason: 'decimals',
      facts: { typed: 3, most: 2 },
    });
    expect(parseNumber('2.5', 'en', { decimals: 0 })).toMatchObject({ reason: 'decimals' });
  });

  it('lets zeros at the end pass, as they change nothing', () => {
    expect(parseNumber('1.500', 'en', { decimals: 1 })).toEqual(number(1.5));
    expect(parseNumber('300.00', 'en', { decimals: 0 })).toEqual(number(300));
  });

  it('refuses more digits than a number holds', () => {
    expect(parseNumber('9007199254740993', 'en')).toMatchObject({ reason: 'digits', facts: { typed: 16 } });
    expect(parseNumber('0.1234567890123456', 'en')).toMatchObject({ reason: 'digits' });
  });

  it('reads back whatever formatNumber wrote, in every locale', () => {
    const locales = fc.constantFrom(
      'en',
      'de',
      'fr',
      'sv',
      'de-CH',
      'en-IN',
      'ar-EG',
      'fa',
      'pl',
      'pt-PT',
      'hi',
      'nb',
    );
    const values = fc.integer({ min: -1e12, max: 1e12 }).map((n) => n / 1000);
    fc.assert(
      fc.property(values, locales, fc.boolean(), (value, locale, grouped) => {
        const text = formatNumber(value, locale, { maxDecimals: 3, grouped });
        expect(parseNumber(text, locale)).toEqual(number(value === 0 ? 0 : value));
      }),
      cases(2000),
    );
  });
});
