import type { ChildRisk } from '@/shared/schemas/blankTraits';
import type { Claim } from '@/shared/schemas/habits';

/** What makes goods a matter of special rules, each as it stands in a list. */
export const childRiskNames: { readonly [Risk in ChildRisk]: string } = {
  underThree: 'for children under three',
  sleepwear: 'sleepwear',
  bib: 'a bib',
  cords: 'has cords',
  smallParts: 'has small parts',
};

/** What buyers may be promised. */
export const claimNames: { readonly [Name in Claim]: string } = {
  handmade: 'handmade',
  organic: 'organic',
  dishwasherSafe: 'dishwasher-safe',
  madeIn: 'made in a named place',
};

const isRisk = (text: string): text is ChildRisk => Object.hasOwn(childRiskNames, text);

/** @returns a risk in words, from the name of its choice. */
export const childRiskWords = (risk: string): string => (isRisk(risk) ? childRiskNames[risk] : risk);

/** @returns a promise in words. */
export const claimWords = (claim: Claim): string => claimNames[claim];
