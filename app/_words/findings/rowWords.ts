import { type Say, saying } from './sayings';

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
  'ROW-01': ({ finding, name, figure, formatter }) => {
    const sentence = `The formula of “${name('label')}” cannot be read.`;
    const at = formatter.number(figure('at'), 0);
    switch (finding.variant) {
      case 'unknownName':
        return saying(
          sentence,
          `Nothing goes by the name “${name('text')}” at character ${at}. Pick a name from the list of rows and rates.`,
        );
      case 'unknownFunction':
        return saying(
          sentence,
          `There is no function “${name('text')}” at character ${at}. Pick one from the list of functions.`,
        );
      case 'badSign':
        return saying(
          sentence,
          `The sign “${name('text')}” at character ${at} has no meaning there. Take it out.`,
        );
      default:
        return saying(
          sentence,
          `Something is missing or too much at character ${at}. Look for an open bracket or a sign without a number behind it.`,
        );
    }
  },
  'ROW-02': ({ name }) =>
    saying(
      `The formula of “${name('label')}” leads back to itself: ${name('chain')}.`,
      'Each figure waits for the other, so none can be worked out. Take one of the names out of one of the formulas.',
    ),
  'ROW-03': ({ finding, name, figure, formatter }) => {
    if (finding.variant === 'negative' || finding.variant === 'nothingLeft') {
      return saying(
        `“${name('label')}” takes ${formatter.money(figure('amount'))} off this job.`,
        finding.variant === 'negative'
          ? 'Every price becomes lower by it. If it is a discount, leave it; else check the sign.'
          : 'Nothing is left of the cost, so no price can be built on it. Check the sign and the figures.',
      );
    }
    return saying(
      `“${name('label')}” comes out as an error: ${errors[name('error')] ?? 'the sum cannot be done'}.`,
      'Until it is mended no cost can be shown. Look at the figures it is built from.',
    );
  },
} satisfies Record<string, Say>;
