import { shortAmount } from './countWords';

/** @param minor what the customer pays on top; below 0 what goes back */
export const exchangeWords = (minor: number, currency: string, locale: string): string =>
  minor > 0
    ? `Exchange, ${shortAmount(minor, currency, locale)} on top`
    : `Exchange, ${shortAmount(-minor, currency, locale)} back`;
