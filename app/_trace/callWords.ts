import { type Phrase, words } from './phrase';

type Phrases = readonly Phrase[];

/**
 * A function of a formula in words.
 *
 * @param of its arguments in words, compound ones in brackets
 * @example callWords('ROUNDUP', [[9.25], [0]]) // 9.25 “rounded up”
 */
export function callWords(name: string, of: readonly Phrases[]): Phrases {
  const [first = [], second, third] = of;
  switch (name) {
    case 'IF':
      return [
        words('if'),
        ...first,
        words('then'),
        ...(second ?? []),
        ...(third === undefined ? [] : [words('otherwise'), ...third]),
      ];
    case 'MAX':
      return [words(of.length > 2 ? 'the largest of' : 'the larger of'), ...joined(of, 'and')];
    case 'MIN':
      return [words(of.length > 2 ? 'the smallest of' : 'the smaller of'), ...joined(of, 'and')];
    case 'SUM':
      return [words('the sum of'), ...joined(of, 'and')];
    case 'AVERAGE':
      return [words('the average of'), ...joined(of, 'and')];
    case 'ROUNDUP':
      return rounded(first, 'rounded up', second);
    case 'ROUNDDOWN':
    case 'TRUNC':
    case 'INT':
      return rounded(first, 'rounded down', second);
    case 'ROUND':
      return rounded(first, 'rounded', second);
    case 'CEILING':
      return stepped(first, 'rounded up to a multiple of', second);
    case 'FLOOR':
      return stepped(first, 'rounded down to a multiple of', second);
    case 'MROUND':
      return stepped(first, 'rounded to a multiple of', second);
    case 'MOD':
      return [words('what is left of'), ...first, words('after whole parts of'), ...(second ?? [])];
    case 'QUOTIENT':
      return [words('the whole times that'), ...(second ?? []), words('goes into'), ...first];
    case 'POWER':
      return [...first, words('to the power of'), ...(second ?? [])];
    case 'SQRT':
      return [words('the square root of'), ...first];
    case 'ABS':
      return [...first, words('without its sign')];
    case 'AND':
      return joined(of, 'and', 'and');
    case 'OR':
      return joined(of, 'or', 'or');
    case 'NOT':
      return [words('not'), ...first];
    default:
      return [words(`${name} of`), ...joined(of, 'and')];
  }
}

// Helpers

function rounded(value: Phrases, how: string, decimals: Phrases | undefined): Phrases {
  const [only] = decimals ?? [];
  const whole = only === undefined || (only.kind === 'number' && only.value === 0);
  return whole
    ? [...value, words(how)]
    : [...value, words(`${how} to`), ...(decimals ?? []), words('decimals')];
}

const stepped = (value: Phrases, how: string, step: Phrases | undefined): Phrases =>
  step === undefined
    ? [...value, words(how.replace(' to a multiple of', ''))]
    : [...value, words(how), ...step];

function joined(of: readonly Phrases[], last: string, between = ','): Phrases {
  return of.flatMap((phrases, index) => {
    if (index === 0) return phrases;
    return [words(index === of.length - 1 ? last : between), ...phrases];
  });
}
