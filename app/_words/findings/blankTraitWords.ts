import type { SubstrateFacts } from '@/shared/facts/substrateFacts';
import { type WordingsOf, wording } from './wording';

type Ids = 'SUB-03' | 'SUB-07' | 'SUB-08' | 'SUB-10' | 'SUB-11' | 'SUB-13' | 'SUB-14';

/** Words of the findings about finish, coating, lot and layers of a blank. */
export const blankTraitWords = {
  'SUB-03': ({ variant, facts }, formatter) => {
    const share = formatter.share(facts.share);
    const most = formatter.share(facts.most);
    return variant === 'stretch'
      ? wording(
          `${facts.blank} is ${share} elastane.`,
          `Above ${most} cloth may grow under the press and spring back with the picture warped. Press a test, at a lower heat.`,
        )
      : wording(
          `${facts.blank} is ${share} nylon, acrylic or acetate.`,
          `Above ${most} cloth scorches, glazes or melts at pressing heat. Choose another blank; where a test has come out well, give that as the reason to go on.`,
        );
  },
  'SUB-07': ({ facts }) =>
    wording(
      `Nobody has said which face of ${facts.blank} is coated.`,
      'Pressed on the bare face it is lost. Mark the coated one; it usually carries a film, which comes off before pressing.',
    ),
  'SUB-08': ({ variant, facts }) =>
    variant === 'claim'
      ? wording(
          `${facts.blank} has a soft coating and is promised to bear a dishwasher.`,
          'Soft coatings take dye quickly and give it away in the wash. Take the promise back, or prove it with a wash test.',
        )
      : wording(
          `Whether the coating of ${facts.blank} is soft or hard is not entered.`,
          'Soft coatings wash out sooner. Ask the supplier before you promise anything about a dishwasher.',
        ),
  'SUB-10': ({ variant, facts }, formatter) => {
    switch (variant) {
      case 'performance':
        return wording(
          `${facts.blank} has a performance finish.`,
          `It marks and bleeds sooner than plain cloth. Press it no longer than ${formatter.number(facts.seconds, 0)} s, lightly, and plan a test press.`,
        );
      case 'heather':
        return wording(
          `${facts.blank} is a heather cloth.`,
          'It shows press marks sooner than plain cloth, and the picture looks speckled. Press it lightly, and plan a test press.',
        );
      default:
        return wording(
          `${facts.blank} is a delicate cloth.`,
          'Light pressure and a test press are planned. Look at the test for press marks before going on.',
        );
    }
  },
  'SUB-11': ({ variant, facts }) => {
    switch (variant) {
      case 'dyed':
        return wording(
          `${facts.blank} is dyed ${facts.colour}.`,
          'The cloth’s own dye may move under heat, leave a box around the print and stain the pad. Plan a test press, and fresh paper for every press.',
        );
      case 'coloured':
        return wording(
          `${facts.blank} is ${facts.colour}, so the cloth is probably dyed.`,
          'Its own dye may move under heat, leave a box around the print and stain the pad. Plan a test press and fresh paper, or enter for the blank that it is not dyed.',
        );
      default:
        return wording(
          `The ${facts.colour} of ${facts.blank} may move under heat.`,
          'A test press and fresh paper are planned. Look for a box around the test print before going on.',
        );
    }
  },
  'SUB-13': ({ variant, facts }) =>
    variant === 'first'
      ? wording(
          `${facts.blank}, lot ${facts.lot}, has not been pressed before.`,
          'Cloth and coatings differ from one supplier to the next. Plan a test press or two; they are added to the cost.',
        )
      : wording(
          `${facts.blank} is now of lot ${facts.lot}; your recipe worked on lot ${facts.provenLot}.`,
          'Colours and heat may come out a little different. Look at the first piece closely.',
        ),
  'SUB-14': ({ variant, facts }, formatter) => {
    const ink = formatter.share(facts.coverage);
    return variant === 'two'
      ? wording(
          `${facts.placement} prints ${ink} ink on ${facts.blank}, which has a layer behind.`,
          'Dye gas goes through and marks the other side. Put clean paper inside.',
        )
      : wording(
          `${facts.placement} prints ${ink} ink on ${facts.blank}; nobody has said whether a layer lies behind.`,
          'If so, dye gas goes through and marks it. Put clean paper inside, or enter the layers of the blank.',
        );
  },
} satisfies WordingsOf<Pick<SubstrateFacts, Ids>>;
