import { shortAmount } from './countWords';

/** @param minor what the customer pays on top; below 0 what goes back */
export const exchangeWords = (minor: number, currency: string, locale: string): string =>
  minor > 0
    ? `Exchange, ${shortAmount(minor, currency, locale)} on top`
    : `Exchange, ${shortAmount(-minor, currency, locale)} back`;

/** Why no further pieces can be counted in. */
export const fullWords =
  'As many were put out as a day can be closed with. Undo the last ones if they were mistyped.';
