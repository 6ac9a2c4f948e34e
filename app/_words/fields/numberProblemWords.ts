import type { NumberProblem } from '@/app/_numbers/judgeNumber';
import { formatNumber } from '@/shared/formatNumber';
import type { NumberRefusal } from '@/shared/refuseNumber';

/** Says why a typed number is not taken and what to type, in one or two short sentences. */
export function numberProblemWords(problem: NumberProblem, typed: string, locale: string): string {
  switch (problem.kind) {
    case 'unfinished':
      return 'Half-typed.';
    case 'missing':
      return 'A number is needed here.';
    case 'below':
      return `${typed.trim()} is too small: the least here is ${formatNumber(problem.least, locale)}.`;
    case 'notAbove':
      return `${typed.trim()} is too small: it must be more than ${formatNumber(problem.floor, locale)}.`;
    case 'above':
      return `${typed.trim()} is too large: the most here is ${formatNumber(problem.greatest, locale)}.`;
    case 'refused':
      return refusalText(problem, typed.trim());
    default:
      return problem satisfies never;
  }
}

// Helpers

function refusalText(refusal: NumberRefusal, typed: string): string {
  switch (refusal.reason) {
    case 'decimalMark':
      return `${typed} could be misread: decimals follow ${named(refusal.facts.use)} here.${type(refusal.facts.instead)}`;
    case 'groups':
      return `The marks between the digits of ${typed} are uneven.${type(refusal.facts.instead, ' Write the number without them.')}`;
    case 'space':
      return `A space stands inside ${typed}.${type(refusal.facts.instead, ' Write one number without spaces.')}`;
    case 'exponent':
      return `${typed} is a short form. Write the number out${refusal.facts.instead === null ? '' : `: ${refusal.facts.instead}`}.`;
    case 'percent':
      return `Only the number goes here, without the percent sign.${type(refusal.facts.instead)}`;
    case 'currency':
      return `Only the number goes here, without ${refusal.facts.sign}.${type(refusal.facts.instead)}`;
    case 'letters':
      return `“${refusal.facts.found.trim()}” is no part of a number.${type(refusal.facts.instead)}`;
    case 'foreignDigits':
      return `“${refusal.facts.found}” is not read here. Type the digits 0 to 9.`;
    case 'sign':
      return `A sign stands once, before the number.${type(refusal.facts.instead)}`;
    case 'decimals':
      return refusal.facts.most === 0
        ? 'Only whole numbers go here.'
        : `${refusal.facts.typed} decimals are too many: ${refusal.facts.most} at most here.`;
    case 'digits':
      return `${refusal.facts.typed} digits are more than can be kept exactly: ${refusal.facts.most} at most.`;
    default:
      return refusal satisfies never;
  }
}

const type = (instead: string | null, otherwise = '') => (instead === null ? otherwise : ` Type ${instead}.`);

function named(mark: string): string {
  if (mark === '.') return 'a point';
  return mark === ',' ? 'a comma' : `“${mark}”`;
}
