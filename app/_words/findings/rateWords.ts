import type { PriceFacts } from '@/shared/facts/priceFacts';
import type { RateFacts } from '@/shared/facts/rateFacts';
import { type WordingsOf, wording } from './wording';

/** "Blank price (White shirt L)". */
const rateName = ({ rate, of }: { readonly rate: string; readonly of: string }): string =>
  of === '' ? rate : `${rate} (${of})`;

const whatIsFiner = {
  ownFiner: 'Your own price',
  askedFiner: 'The price asked',
  startFiner: 'What is asked to start',
  chargeFiner: 'The up-charge',
} as const;

/** Words of the findings about rates and the price. */
export const rateWords = {
  'RATE-01': ({ variant, facts }, formatter) => {
    if (variant === 'noFreight') {
      return wording(
        'Nobody has said what the freight of the blanks costs.',
        'Nothing is counted for it, and your margin pays. Type what the supplier charges, or zero where it comes free.',
      );
    }
    if (variant === 'noDrive') {
      return wording(
        'Nobody has said how the order gets to the customer.',
        `Nothing is counted for it, neither a drive nor ${formatter.count(facts.minutes, 'minute')} of delivering. Type the way there and back, or zero where it is posted.`,
      );
    }
    const sentence = `${rateName(facts)} is not set.`;
    if (variant === 'noTypical') {
      return wording(
        sentence,
        'No figure is typical for it, and a missing figure is never taken as nothing. Enter your own to get a price.',
      );
    }
    const typical = formatter.rate(facts.typical, facts.unit);
    return variant === 'stop'
      ? wording(
          sentence,
          `A price without it would be a guess. Enter your own, or take ${typical} as a start and replace it soon.`,
        )
      : wording(
          sentence,
          `${typical} is taken as typical and marked so. Enter your own: the price is only as good as its figures.`,
        );
  },
  'RATE-02': ({ variant, facts }, formatter) => {
    const others = facts.others;
    const also = others > 0 ? ` So are ${formatter.count(others, 'more figure')} there.` : '';
    const day = formatter.day(facts.date);
    switch (variant) {
      case 'future':
        return wording(
          `${rateName(facts)} is dated ${day}, which is still to come.`,
          `Its age cannot be told, so it would never be questioned.${also} Check the date.`,
        );
      case 'stale':
        return wording(
          `${rateName(facts)} is from ${day}, ${formatter.count(facts.days, 'day')} ago.`,
          `In more than a year most prices move, and your margin moves with them.${also} Look the price up again.`,
        );
      default:
        return wording(
          `${rateName(facts)} is from ${day}, ${formatter.count(facts.days, 'day')} ago.`,
          `It may still hold.${also} A quick look at the last bill makes sure.`,
        );
    }
  },
  'RATE-03': ({ variant, facts }, formatter) => {
    switch (variant) {
      case 'doubled':
      case 'outOfOrder':
        return wording(
          `The price breaks ${facts.breaks} do not rise.`,
          'Which price holds from which quantity would be a guess. Put them in rising order, each once.',
        );
      case 'ending':
        return wording(
          `Prices are to end on ${formatter.number(facts.step, 6)} ${facts.currency}, which is finer than a coin.`,
          `Nobody can pay it, so prices end on ${formatter.money(facts.coin)} instead. Set an ending that can be paid.`,
        );
      case 'ownFiner':
      case 'askedFiner':
      case 'startFiner':
      case 'chargeFiner':
        return wording(
          `${whatIsFiner[variant]} of ${facts.line}${'size' in facts ? ` in ${facts.size}` : ''}, ${formatter.number(facts.each, 6)} ${facts.currency}, is finer than a coin.`,
          `Nobody can pay it; the nearest that can be paid is ${formatter.money(facts.payable)}. Write a price that can be paid.`,
        );
      case 'ownNoBreak':
        return wording(
          `Your own price of ${facts.line}, ${formatter.money(facts.price)} from ${formatter.count(facts.from, 'piece')} on, holds for no order.`,
          `No break begins there: yours are ${facts.breaks}.${facts.others > 0 ? ` So it is with ${formatter.count(facts.others, 'more price')}.` : ''} Take it out, or add that break in the workshop.`,
        );
      case 'ownUnused':
        return wording(
          `Your own price of ${facts.line}, ${formatter.money(facts.price)} from ${formatter.count(facts.from, 'piece')} on, holds for no order.`,
          `Its list has no breaks.${facts.others > 0 ? ` So it is with ${formatter.count(facts.others, 'more price')}.` : ''} Take it out, or sell by a list with breaks.`,
        );
      case 'noPay':
        return wording(
          'Your pay is set to nothing: you work for free.',
          'Every price leaves your time out, and what looks like profit is your own wage. Enter what an hour of yours is worth.',
        );
      case 'noInk':
        return wording(
          `${facts.artwork} is set to use no ink.`,
          'A picture that prints takes ink, so its cost is too low. Enter how much of it prints, or take in the picture.',
        );
      case 'underDwell':
        return wording(
          `${facts.placement} stays in the press for ${formatter.number(facts.seconds, 0)} s, but only ${formatter.count(facts.minutes, 'minute')} ${facts.minutes === 1 ? 'is' : 'are'} counted for a press.`,
          'Hands and the press working alone must fill that time, or the day is planned too short. Raise one of the two.',
        );
      case 'largerCheaper':
        return wording(
          `${facts.of} in ${facts.size} costs ${formatter.money(facts.amount)}, less than ${facts.smaller} at ${formatter.money(facts.smallerAmount)}.`,
          `Larger sizes mostly cost more. Until you say otherwise ${facts.size} is suggested at no less than ${facts.smaller}; check both prices.`,
        );
      case 'largerCharge':
        return wording(
          `${facts.of} adds ${formatter.money(facts.amount)} for ${facts.size} and ${formatter.money(facts.smallerAmount)} for ${facts.smaller}.`,
          'The larger size would be sold for less than the smaller one. Check both up-charges.',
        );
      case 'ownDearer':
        return wording(
          `From ${formatter.count(facts.more, 'piece')} on, ${facts.line} costs ${formatter.money(facts.morePrice)} each, more than the ${formatter.money(facts.fewerPrice)} from ${formatter.count(facts.fewer, 'piece')} on.`,
          'Whoever orders more would pay more for each. Take your own price out, or write one that falls.',
        );
      case 'ownNothing':
        return wording(
          `From ${formatter.count(facts.from, 'piece')} on, ${facts.line} in ${facts.size} would be sold for ${formatter.money(facts.price)}.`,
          'A piece cannot be sold for nothing or less. Raise your own price of that break, or make the up-charge smaller.',
        );
      case 'resale':
        return wording(
          `${facts.machine} is to fetch ${formatter.money(facts.resale)} and cost ${formatter.money(facts.price)}.`,
          'Each press would then make the job cheaper, and every price too low. Check both figures.',
        );
      case 'paperForm':
        return facts.form === 'roll'
          ? wording(
              `${facts.sheet} comes on a roll, but its price is for a sheet.`,
              'Nobody can say from it what a print costs. Give the price of a metre.',
            )
          : wording(
              `${facts.sheet} is a cut sheet, but its price is for a metre.`,
              'Nobody can say from it what a print costs. Give the price of a sheet.',
            );
      case 'tooLarge':
        return wording(
          `The sums of this job come to more than ${formatter.number(facts.most, 0)} ${facts.currency}.`,
          'Amounts that large are not exact to the last coin any more. Look for a figure that slipped: pay, prices, minutes.',
        );
      case 'nothing':
        return wording(
          `${rateName(facts)} is ${formatter.rate(facts.value, facts.unit)}.`,
          'A yearly cost spread over no hours has no end. Enter how many hours a year you work on jobs.',
        );
      default:
        return wording(
          `${rateName(facts)} is ${formatter.rate(facts.value, facts.unit)}; usual is ${formatter.rate(facts.least, facts.unit)} to ${formatter.rate(facts.most, facts.unit)}.`,
          'If a mark or a unit slipped, every price built on it is off. Check the figure; if it is right, leave it.',
        );
    }
  },
  'RATE-04': ({ variant, facts }, formatter) => {
    const sentence = `${rateName(facts)} is ${formatter.rate(facts.value, facts.unit)}, ${formatter.number(facts.times, 0)} times the typical ${formatter.rate(facts.typical, facts.unit)}.`;
    return variant === 'litre'
      ? wording(
          sentence,
          'That looks like the price of a litre or a bottle. Enter what one millilitre costs.',
        )
      : wording(
          sentence,
          'That looks like the price of a whole pack. Enter what one costs, or leave it if it is one.',
        );
  },
  'RATE-05': ({ facts }, formatter) =>
    wording(
      `${facts.placement} is set to spoil nothing.`,
      `Everybody loses a piece now and then, and at 0 % the price carries none of it. ${formatter.share(facts.typical)} is a fair start.`,
    ),
  'RATE-06': ({ facts }, formatter) =>
    wording(
      `Fees of ${formatter.share(facts.fees)} on ${facts.channel} and a margin of ${formatter.share(facts.margin)} use up the whole price.`,
      'Nothing is left to pay the cost with, so no price can reach this margin. Lower the margin, or sell where fees are lower.',
    ),
  'RATE-07': ({ facts }) =>
    wording(
      `Wear of ${facts.machine} is charged to each job and is in your yearly overhead too.`,
      'The same wear is paid for twice, which makes every price too high. Take it out of the overhead, or set the prices of your machines to 0.',
    ),
  'RATE-08': ({ variant, facts }, formatter) => {
    const price = formatter.money(facts.price);
    if (variant === 'nothing') {
      return wording(
        `${facts.line} in ${facts.size} would be sold for ${price}.`,
        'A piece cannot be sold for nothing or less. Make the up-charge smaller, or the price higher.',
      );
    }
    if (variant === 'ownBelowCost') {
      return wording(
        `From ${formatter.count(facts.from, 'piece')} on, your own price of ${facts.line} is ${price} in ${facts.size}, less than a piece costs.`,
        `With fees and your own pay, ${formatter.money(facts.short)} a piece is missing at ${formatter.count(facts.at, 'piece')}. Raise it, take the suggestion, or know why not.`,
      );
    }
    const whose = `${facts.line} in ${facts.size}`;
    const also = facts.others === '' ? '' : `; too low as well: ${facts.others}`;
    const tax = facts.taxInside ? ', tax inside' : '';
    return variant === 'belowFloor'
      ? wording(
          `${whose} at ${price} a piece is below the ${formatter.money(facts.floor)} that only pay the bills${tax}${also}.`,
          `${formatter.money(facts.short)} a piece is missing: you would pay to do this job, with no pay for your time. Raise the price, or give a reason to do it all the same.`,
        )
      : wording(
          `${whose} at ${price} a piece is below the ${formatter.money(facts.cost)} that pay its full cost${facts.hasFees ? ' with its fees' : ''}${tax}${also}.`,
          `It pays the bills of the day but not all of your time and the workshop: ${formatter.money(facts.short)} a piece is missing. Raise the price, or know why not.`,
        );
  },
} satisfies WordingsOf<RateFacts & PriceFacts>;
