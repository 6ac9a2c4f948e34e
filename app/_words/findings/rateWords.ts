import { type Say, saying, type Told } from './sayings';

/** "Blank price (White shirt L)". */
const rateName = ({ name }: Told): string =>
  name('of') === '' ? name('rate') : `${name('rate')} (${name('of')})`;

/** Words of the findings about rates and the price. */
export const rateWords = {
  'RATE-01': (told) => {
    const { finding, name, figure, formatter } = told;
    const sentence = `${rateName(told)} is not set.`;
    const typical = () => formatter.rate(figure('typical'), name('unit'));
    switch (finding.variant) {
      case 'noTypical':
        return saying(
          sentence,
          'No figure is typical for it, and a missing figure is never taken as nothing. Enter your own to get a price.',
        );
      case 'stop':
        return saying(
          sentence,
          `A price without it would be a guess. Enter your own, or take ${typical()} as a start and replace it soon.`,
        );
      default:
        return saying(
          sentence,
          `${typical()} is taken as typical and marked so. Enter your own: the price is only as good as its figures.`,
        );
    }
  },
  'RATE-02': (told) => {
    const { finding, figure, formatter, name } = told;
    const others = figure('others');
    const also = others > 0 ? ` So are ${formatter.count(others, 'more figure')} there.` : '';
    const day = formatter.day(name('date'));
    switch (finding.variant) {
      case 'future':
        return saying(
          `${rateName(told)} is dated ${day}, which is still to come.`,
          `Its age cannot be told, so it would never be questioned.${also} Check the date.`,
        );
      case 'stale':
        return saying(
          `${rateName(told)} is from ${day}, ${formatter.number(figure('days'), 0)} days ago.`,
          `In more than a year most prices move, and your margin moves with them.${also} Look the price up again.`,
        );
      default:
        return saying(
          `${rateName(told)} is from ${day}, ${formatter.number(figure('days'), 0)} days ago.`,
          `It may still hold.${also} A quick look at the last bill makes sure.`,
        );
    }
  },
  'RATE-03': (told) => {
    const { finding, name, figure, formatter } = told;
    switch (finding.variant) {
      case 'doubled':
      case 'outOfOrder':
        return saying(
          `The price breaks ${name('breaks')} do not rise.`,
          'Which price holds from which quantity would be a guess. Put them in rising order, each once.',
        );
      case 'ending':
        return saying(
          `Prices are to end on ${formatter.number(figure('step'), 6)} ${name('currency')}, which is finer than a coin.`,
          `Nobody can pay it, so prices end on ${formatter.money(figure('coin'))} instead. Set an ending that can be paid.`,
        );
      case 'ownFiner':
        return saying(
          `Your own price of ${name('line')}, ${formatter.number(figure('each'), 6)} ${name('currency')}, is finer than a coin.`,
          `Nobody can pay it, so ${formatter.money(figure('payable'))} is taken. Write a price that can be paid.`,
        );
      case 'ownNothing':
        return saying(
          `From ${formatter.count(figure('from'), 'piece')} on, ${name('line')} in ${name('size')} would be sold for ${formatter.money(figure('price'))}.`,
          'A piece cannot be sold for nothing or less. Raise your own price of that break, or make the up-charge smaller.',
        );
      case 'resale':
        return saying(
          `${name('machine')} is to fetch ${formatter.money(figure('resale'))} and cost ${formatter.money(figure('price'))}.`,
          'Each press would then make the job cheaper, and every price too low. Check both figures.',
        );
      case 'paperForm':
        return name('form') === 'roll'
          ? saying(
              `${name('sheet')} comes on a roll, but its price is for a sheet.`,
              'Nobody can say from it what a print costs. Give the price of a metre.',
            )
          : saying(
              `${name('sheet')} is a cut sheet, but its price is for a metre.`,
              'Nobody can say from it what a print costs. Give the price of a sheet.',
            );
      case 'tooLarge':
        return saying(
          `The sums of this job come to more than ${formatter.number(figure('most'), 0)} ${name('currency')}.`,
          'Amounts that large are not exact to the last coin any more. Look for a figure that slipped: pay, prices, minutes.',
        );
      default:
        break;
    }
    const value = formatter.rate(figure('value'), name('unit'));
    const band = `${formatter.rate(figure('least'), name('unit'))} to ${formatter.rate(figure('most'), name('unit'))}`;
    return finding.variant === 'nothing'
      ? saying(
          `${rateName(told)} is ${value}.`,
          'A yearly cost spread over no hours has no end. Enter how many hours a year you work on jobs.',
        )
      : saying(
          `${rateName(told)} is ${value}; usual is ${band}.`,
          'If a mark or a unit slipped, every price built on it is off. Check the figure; if it is right, leave it.',
        );
  },
  'RATE-04': (told) => {
    const { finding, name, figure, formatter } = told;
    const sentence = `${rateName(told)} is ${formatter.rate(figure('value'), name('unit'))}, ${formatter.number(figure('times'), 0)} times the typical ${formatter.rate(figure('typical'), name('unit'))}.`;
    return finding.variant === 'litre'
      ? saying(sentence, 'That looks like the price of a litre or a bottle. Enter what one millilitre costs.')
      : saying(
          sentence,
          'That looks like the price of a whole pack. Enter what one costs, or leave it if it is one.',
        );
  },
  'RATE-05': ({ name, figure, formatter }) =>
    saying(
      `${name('placement')} is set to spoil nothing.`,
      `Everybody loses a piece now and then, and at 0 % the price carries none of it. ${formatter.share(figure('typical'))} is a fair start.`,
    ),
  'RATE-06': ({ name, figure, formatter }) =>
    saying(
      `Fees of ${formatter.share(figure('fees'))} on ${name('channel')} and a margin of ${formatter.share(figure('margin'))} use up the whole price.`,
      'Nothing is left to pay the cost with, so no price can reach this margin. Lower the margin, or sell where fees are lower.',
    ),
  'RATE-07': ({ name }) =>
    saying(
      `Wear of ${name('machine')} is charged to each job and is in your yearly overhead too.`,
      'The same wear is paid for twice, which makes every price too high. Take it out of the overhead, or set the prices of your machines to 0.',
    ),
  'RATE-08': ({ finding, figure, name, formatter }) => {
    const price = formatter.money(figure('price'));
    if (finding.variant === 'nothing') {
      return saying(
        `${name('line')} in ${name('size')} would be sold for ${price}.`,
        'A piece cannot be sold for nothing or less. Make the up-charge smaller, or the price higher.',
      );
    }
    if (finding.variant === 'ownBelowCost') {
      return saying(
        `From ${formatter.count(figure('from'), 'piece')} on, your own price of ${name('line')} is ${price} in ${name('size')}, less than a piece costs.`,
        `With fees and your own pay, ${formatter.money(figure('short'))} a piece is missing at ${formatter.count(figure('at'), 'piece')}. Raise it, take the suggestion, or know why not.`,
      );
    }
    const whose = name('sizes') === '' ? name('line') : `${name('line')} in ${name('sizes')}`;
    return finding.variant === 'belowFloor'
      ? saying(
          `${whose} at ${price} a piece is below the ${formatter.money(figure('floor'))} that leave your pocket.`,
          `You would pay ${formatter.money(figure('short'))} a piece to do this job, with no pay for your time. Raise the price, or give a reason to do it all the same.`,
        )
      : saying(
          `${whose} at ${price} a piece is below its full cost of ${formatter.money(figure('cost'))}.`,
          `It pays the bills of the day but not all of your time and the workshop: ${formatter.money(figure('short'))} a piece is missing. Raise the price, or know why not.`,
        );
  },
} satisfies Record<string, Say>;
