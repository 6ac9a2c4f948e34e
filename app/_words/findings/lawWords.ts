import { childRiskWords, claimWords } from '@/app/_words/choices/goodsWords';
import type { SafetyFacts } from '@/shared/facts/safetyFacts';
import { type WordingsOf, wording } from './wording';

type Ids = `LAW-0${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9}`;

const unsettled = {
  permit: 'Whether you need a permit to sell there is',
  insurance: 'Whether you need liability insurance there is',
  both: 'Whether you need a permit to sell and liability insurance there is',
};

/** Words of the findings about law. These give bearings, never advice. */
export const lawWords = {
  'LAW-01': ({ variant }) => {
    switch (variant) {
      case 'removed':
        return wording(
          'The sewn label is to be taken out.',
          'In many places fibres, origin, maker and care must stay readable on what is sold. Leave it in. Ask your local authority.',
        );
      default:
        return wording(
          'The sewn label is to be covered.',
          'In many places fibres, origin, maker and care must stay readable on what is sold. Leave it free. Ask your local authority.',
        );
    }
  },
  'LAW-02': ({ variant, facts }) =>
    wording(
      variant === 'denied'
        ? `${facts.blank} is said not to be for children, but ${facts.sizes} names a child.`
        : `${facts.blank} is meant for children.`,
      'Goods for children may need tests, a certificate and a lasting mark that says who made them, where, when and in which batch. Find out before you sell. Ask your local authority.',
    ),
  'LAW-03': ({ variant, facts }) => {
    const rules =
      'Sleepwear, bibs, cords, small parts and anything for the youngest come under rules on fire and choking. Give what evidence you have as the reason to go on. Ask your local authority.';
    if (variant === 'denied') {
      return wording(
        `${facts.blank} is said not to be for children, but ${facts.sizes} is worn under three.`,
        'Sleepwear, bibs, cords, small parts and anything for the youngest come under rules on fire and choking. Look whom it is for, or call the size by another name. Ask your local authority.',
      );
    }
    return variant === 'said'
      ? wording(`${facts.blank}: ${facts.risks.split(';').map(childRiskWords).join(', ')}.`, rules)
      : wording(`${facts.blank} in ${facts.sizes} is for children under three.`, rules);
  },
  'LAW-04': ({ variant, facts }, formatter) =>
    variant === 'inside'
      ? wording(
          `${facts.placement} lies inside the cup.`,
          'Drink would touch dye and coating. Print the outside only. For rules on what touches food ask your local authority.',
        )
      : wording(
          `${facts.placement} ends ${formatter.length(facts.mm)} below the rim.`,
          `Lips touch the uppermost ${formatter.length(facts.wantedMm)}. Move the print down, or make it lower. For rules on what touches food ask your local authority.`,
        ),
  'LAW-05': ({ facts }) =>
    wording(
      `Whether prices on ${facts.channel} are with or without tax is not set.`,
      'Tax that nobody added comes out of your own pocket. Choose how tax is handled there before you quote. In some places set-up and artwork are taxed too: ask your local authority.',
    ),
  'LAW-06': ({ variant, facts }, formatter) => {
    switch (variant) {
      case 'permitEnds':
      case 'insuranceEnds':
        return wording(
          `The ${variant === 'permitEnds' ? 'permit' : 'insurance'} ends on ${formatter.day(facts.until)}, and the last day of selling is ${formatter.day(facts.lastDay)}.`,
          'From then on nothing covers you there. Have it renewed before you go. Ask your local authority and the organiser.',
        );
      default:
        return wording(
          `${unsettled[variant]} not settled.`,
          'Without what they ask for you may be sent away on the day, or pay yourself for harm done to a visitor. Ask your local authority and the organiser.',
        );
    }
  },
  'LAW-07': ({ facts }) =>
    wording(
      `Buyers are promised: ${claimWords(facts.claim)}.`,
      'Whoever promises it must be able to prove it. Keep the evidence, or take the promise back. Ask your local authority.',
    ),
  'LAW-08': ({ facts }, formatter) =>
    wording(
      `${facts.blank} comes from the customer.`,
      `${facts.spare > 0 ? `Ask for ${formatter.count(facts.spare, 'spare piece')}, which leave every size whole with a chance of ${formatter.share(facts.confidence)}.` : 'Ask for a spare one.'} Get it in writing that a spoiled piece is not replaced. For what you owe them anyway ask your local authority.`,
    ),
  'LAW-09': ({ variant, facts }, formatter) => {
    const kept = [
      ...(facts.childRows > 0 ? [`${formatter.count(facts.childRows, 'name')} in children’s sizes`] : []),
      ...(facts.addresses > 0 ? [formatter.count(facts.addresses, 'address')] : []),
    ].join(' and ');
    return variant === 'over'
      ? wording(
          `The order is over, and this device still keeps ${kept} of it.`,
          'Personal data may be kept only as long as it is needed, and that of children least of all. Delete it. What your papers must go on saying, and for how long, ask your local authority.',
        )
      : wording(
          `This device keeps ${kept} of the order.`,
          'Personal data may be kept only as long as it is needed. Delete it when the order is closed. What your papers must go on saying, and for how long, ask your local authority.',
        );
  },
} satisfies WordingsOf<Pick<SafetyFacts, Ids>>;
