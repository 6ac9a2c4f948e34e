import type { RowFacts } from '@/shared/facts/rowFacts';
import { type WordingsOf, wording } from './wording';

/** Errors of the formula engine in words. */
const errors: Readonly<Record<string, string>> = {
  '#DIV/0!': 'something is divided by nothing',
  '#NUM!': 'a figure is too large or has no root',
  '#VALUE!': 'a text stands where a number should',
  '#NAME?': 'a name is not known',
  '#REF!': 'a row it needs is gone',
  '#CYCLE!': 'it leads back to itself',
  '#N/A': 'a figure is missing',
};

/** Words of the findings about the maker's own cost rows. */
export const rowWords = {
  'ROW-01': ({ variant, facts }, formatter) => {
    const sentence = `The formula of “${facts.label}” cannot be read.`;
    const at = formatter.number(facts.at, 0);
    switch (variant) {
      case 'unknownName':
        return wording(
          sentence,
          `Nothing goes by the name “${facts.text}” at character ${at}. Pick a name from the list of rows and rates.`,
        );
      case 'unknownFunction':
        return wording(
          sentence,
          `There is no function “${facts.text}” at character ${at}. Pick one from the list of functions.`,
        );
      case 'comma':
        return wording(
          sentence,
          `The comma at character ${at} has no meaning in a formula. Write ; between two values, and a point before decimals.`,
        );
      case 'decimalComma':
        return wording(
          sentence,
          `At character ${at}, write ${facts.instead} instead of ${facts.text}: formulas have a point before decimals.`,
        );
      case 'unclearComma':
        return wording(
          sentence,
          `At character ${at}, ${facts.text} could mean two things. Write ${facts.instead} or ${facts.other}, whichever is meant.`,
        );
      case 'badSign':
        return wording(
          sentence,
          `The sign “${facts.text}” at character ${at} has no meaning there. Take it out.`,
        );
      case 'tooDeep':
        return wording(
          sentence,
          `At character ${at} there are more than ${formatter.number(facts.most, 0)} brackets inside one another. Take out those it can do without, or move a part of it to a row of its own.`,
        );
      default:
        return wording(
          sentence,
          `Something is missing or too much at character ${at}. Look for an open bracket or a sign without a number behind it.`,
        );
    }
  },
  'ROW-02': ({ facts }) =>
    wording(
      `The formula of “${facts.label}” leads back to itself: ${facts.chain}.`,
      'Each figure waits for the other, so none can be worked out. Take one of the names out of one of the formulas.',
    ),
  'ROW-03': ({ variant, facts }, formatter) => {
    if (variant === 'negative' || variant === 'nothingLeft') {
      return wording(
        `“${facts.label}” takes ${formatter.money(facts.amount)} off this job.`,
        variant === 'negative'
          ? 'Every price becomes lower by it. If it is a discount, leave it; else check the sign.'
          : 'Nothing is left of the cost, so no price can be built on it. Check the sign and the figures.',
      );
    }
    return wording(
      `“${facts.label}” comes out as an error: ${errors[facts.error] ?? 'the sum cannot be done'}.`,
      'Until it is mended no cost can be shown. Look at the figures it is built from.',
    );
  },
} satisfies WordingsOf<RowFacts>;
