import type { PlacementFacts } from '@/shared/facts/placementFacts';
import { type WordingsOf, wording } from './wording';

type Ids = 'PLC-03' | 'PLC-04' | 'PLC-06' | 'PLC-09' | 'PLC-10';

/** Words of the findings about where a print sits, and whether the press takes the piece. */
export const pressFitWords = {
  'PLC-03': ({ variant, facts }, formatter) => {
    const sentence = `${facts.placement} begins ${formatter.length(facts.dropMm)} below the collar; about ${formatter.length(facts.usualMm)} is usual.`;
    const limit = formatter.length(facts.limitMm);
    return variant === 'high'
      ? wording(
          sentence,
          `Nearer than ${limit} the collar seam lifts the platen and the print crowds the neck. Move it down.`,
        )
      : wording(sentence, `Lower than ${limit} the print sits on the belly and looks slipped. Move it up.`);
  },
  'PLC-04': ({ variant, facts }, formatter) =>
    wording(
      `${facts.placement} is ${formatter.length(facts.mm)} on its longer side; a badge is usually ${formatter.length(facts.leastMm)} to ${formatter.length(facts.mostMm)}.`,
      variant === 'large'
        ? 'It runs under the arm or across the buttons. If it is meant as a badge, make it smaller.'
        : 'It looks lost, and small letters fill in. If it is meant as a badge, make it larger.',
    ),
  'PLC-06': ({ variant, facts }, formatter) => {
    const planned = `${facts.placement} is planned ${formatter.count(facts.planned, 'piece')} at a time;`;
    return variant === 'single'
      ? wording(
          `${planned} ${facts.press} takes one.`,
          'It wraps round a single piece, and no other gets any heat. Press one at a time, or use an oven that holds several.',
        )
      : wording(
          `${planned} ${formatter.number(facts.fit, 0)} fit evenly on the platen of ${facts.press}.`,
          `With less than ${formatter.length(facts.apartMm)} between them those at the edge come out pale. Press fewer at a time.`,
        );
  },
  'PLC-09': ({ variant, facts }) => {
    const sentence = `${facts.press} is no press for ${facts.blank}.`;
    const why =
      'A flat platen cannot reach round a curve, and a wrap-round press or an oven cannot hold cloth or a flat panel even.';
    return variant === 'other'
      ? wording(sentence, `${why} ${facts.better} can take it: choose it for this placement.`)
      : wording(
          sentence,
          `${why} None of your presses takes it: add one in the workshop, or have the pressing done.`,
        );
  },
  'PLC-10': ({ facts }, formatter) =>
    wording(
      `${facts.blank} is ${formatter.length(facts.thicknessMm)} thick; ${facts.press} opens ${formatter.length(facts.openingMm)}.`,
      'The press will not close, or presses one edge only. Use a press that opens wider, or a thinner blank.',
    ),
} satisfies WordingsOf<Pick<PlacementFacts, Ids>>;
