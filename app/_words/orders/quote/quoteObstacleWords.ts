import { findingWords } from '@/app/_words/findings/findingWords';
import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import type { AlternativeProblem, QuoteObstacle } from '@/lib/quotes/quoteObstacle';
import { fromMinor, type MinorUnits } from '@/shared/money';

/** @returns what stands in the way of a quote, what it causes, and how it is mended. */
export function quoteObstacleWords(obstacle: QuoteObstacle, context: TextContext): string {
  const formatter = formatterFor(context);
  const minor = (amount: number) => formatter.money(fromMinor(amount as MinorUnits, context.currency));
  switch (obstacle.kind) {
    case 'noCustomer':
      return 'Nobody is named as the customer, and a quote must say whom it is for. Choose the customer.';
    case 'nothingOrdered':
      return 'Nothing is ordered: no job of this order has pieces in it. Add a job, and how many of each size.';
    case 'jobGone':
      return `A job of this order is not there (${obstacle.jobId}). Take it out of the order, or bring the job back.`;
    case 'asBegun':
      return `The job “${obstacle.job}” is as it began: ${formatter.number(obstacle.pieces, 0)} × ${obstacle.name}, printed with “${obstacle.picture}”. Nobody has chosen that yet, so the quote would be for goods nobody asked for. Choose the blank, the sizes and the print in the job, or say that it is right so.`;
    case 'stopped':
      return `The job “${obstacle.name}” has a stop, so it has no price. ${stopWords(obstacle.why, context)}`;
    case 'noPrice':
      return `“${obstacle.name}” has no price for every size. Type one in its job.`;
    case 'noChannel':
      return 'The way of selling that the order names is not in the workshop. Choose another.';
    case 'noTaxMode':
      return `Nobody has said how tax stands to prices of “${obstacle.channel}”. Say it in the workshop: added, inside, or none.`;
    case 'mixedChannels':
      return `Some prices have tax inside and others do not (${obstacle.channels.join(', ')}). On one paper nobody could tell which. Sell all jobs of the order in one way.`;
    case 'noCertificate':
      return 'No tax is to be taken, but the customer has given no certificate. Note its number with the customer, or let tax be taken.';
    case 'certificateExpired':
      return `The customer’s certificate ended on ${formatter.day(obstacle.on)}. Ask for a new one, or let tax be taken.`;
    case 'listGone':
      return `The price list that “${obstacle.name}” takes its price from is not here. Choose another, or the price of the job.`;
    case 'listExpired':
      return `The price list of “${obstacle.name}” was valid until ${formatter.day(obstacle.on)}. Issue a new one, or take the price of the job.`;
    case 'listWithdrawn':
      return `The price list of “${obstacle.name}” was withdrawn. Choose another, or take the price of the job.`;
    case 'listOtherTerms':
      return `The price list of “${obstacle.name}” is in other money, or has tax otherwise. Choose another, or take the price of the job.`;
    case 'sizeNotListed':
      return `The price list of “${obstacle.name}” has no price for ${obstacle.size}. Take the price of the job, or issue a list with it.`;
    case 'underFirstBreak':
      return `The price list of “${obstacle.name}” begins at ${formatter.count(obstacle.from, 'piece')}, and ${formatter.number(obstacle.pieces)} are ordered. Take the price of the job.`;
    case 'discountOver':
      return `The discount of ${minor(obstacle.discount)} is more than the ${minor(obstacle.before)} it is taken from. Make it smaller.`;
    case 'tooManyLines':
      return `The order has ${formatter.number(obstacle.lines)} lines, and a paper holds ${formatter.number(obstacle.most)}. Make two orders of it.`;
    case 'tooLarge':
      return 'It comes to more than can be kept exact to the last coin. Look for a slip in a price or a quantity.';
    case 'asksNothing':
      return 'Nothing is left to pay. A quote asks for something: make the discount smaller.';
    case 'underCost':
      return `At this price the order loses ${formatter.money(-obstacle.profit)}: it costs ${formatter.money(obstacle.fullCost)} in full. Ask more, or write down why it goes out all the same.`;
    case 'wantedInPast':
      return `It is wanted on ${formatter.day(obstacle.wantedOn)}, which is past. Agree on another day.`;
    case 'alternative':
      return `An alternative cannot be offered. ${problemWords(obstacle.problem, formatter, context)}`;
    default:
      return obstacle satisfies never;
  }
}

export const RIGHT_AS_BEGUN = 'It is right so';

// Helpers

function stopWords(
  why: Extract<QuoteObstacle, { readonly kind: 'stopped' }>['why'],
  context: TextContext,
): string {
  if (why === null) return 'One of its sums gives no number.';
  const { sentence, detail } = findingWords(why, context);
  return `${sentence} ${detail}`.trim();
}

function problemWords(problem: AlternativeProblem, formatter: Formatter, context: TextContext): string {
  switch (problem.kind) {
    case 'gone':
      return 'Its line, print or size is no longer in the job. Take it out, or choose again.';
    case 'same':
      return 'It is as many pieces as the order. Choose another quantity.';
    case 'onlyPrint':
      return 'It leaves out the only print of its line. Choose another print.';
    case 'notListed':
      return 'The price list says nothing of so many. Choose another quantity.';
    case 'noPrice':
      return 'Nothing would be left to pay for it. Type a price of its own, or take it out.';
    case 'tooLarge':
      return 'It comes to more than can be kept exact to the last coin. Choose fewer pieces.';
    case 'discountOver':
      return 'The discount is more than it comes to. Make the discount a share, or take the alternative out.';
    case 'stopped':
      return `Made so, the job has a stop. ${stopWords(problem.why, context)}`;
    case 'underCost':
      return `It would lose ${formatter.money(problem.loss)}. Type a higher price for it, or write down why it goes out all the same.`;
    default:
      return problem satisfies never;
  }
}
