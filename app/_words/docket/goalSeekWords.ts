import type { Formatter } from '@/app/_words/formatter';
import type { GoalSeekAnswer, GoalSeekQuestion } from '@/lib/studies/goalSeek/goalSeekAnswer';

/** What was found, or why nothing was, in one or two sentences. */
export function goalSeekWords(
  answer: GoalSeekAnswer,
  question: GoalSeekQuestion,
  formatter: Formatter,
): string {
  switch (answer.seek) {
    case 'priceForMargin': {
      const margin = question.seek === 'priceForMargin' ? question.margin : 0;
      if (answer.found.ok) {
        const { each, total, taxInside, earns } = answer.found.value;
        return `${formatter.money(each)} a piece, ${formatter.money(total)} for all${taxOf(taxInside)}, leaves ${formatter.share(margin)}.${
          earns === 'nothing' ? ' It pays cost, fees and your own pay, and nothing more.' : ''
        }`;
      }
      const { problem } = answer.found;
      switch (problem.kind) {
        case 'nothingLeft':
          return `A margin of ${formatter.share(problem.margin)} and fees of ${formatter.share(problem.fees)} take the whole price: no price is high enough. Ask for less.`;
        case 'notAMargin':
          return 'A margin lies between 0 and 100 %: it is the part of the price that is profit.';
        case 'notABatch':
          return 'Nothing is ordered yet, so there is nothing to price.';
        case 'unknownCost':
          return noNumber;
        default:
          return problem satisfies never;
      }
    }
    case 'priceForPay': {
      const perHour = question.seek === 'priceForPay' ? question.perHour : 0;
      if (answer.found.ok) {
        const { each, total, taxInside } = answer.found.value;
        return `${formatter.money(each)} a piece, ${formatter.money(total)} for all${taxOf(taxInside)}, pays you ${formatter.money(perHour)} for each hour of it.`;
      }
      const { problem } = answer.found;
      switch (problem.kind) {
        case 'notAnAmount':
          return 'A pay is an amount of nothing or more an hour.';
        case 'notABatch':
          return 'Nothing is ordered yet, so there is nothing to price.';
        case 'noSuchPrice':
          return 'No price pays that: the fees take it all. Look at the way of selling.';
        default:
          return problem satisfies never;
      }
    }
    case 'batchForMargin': {
      const margin = question.seek === 'batchForMargin' ? question.margin : 0;
      if (answer.found.ok)
        return `From ${formatter.count(answer.found.value, 'piece')} in one batch the price leaves ${formatter.share(margin)}.`;
      const { problem } = answer.found;
      switch (problem.kind) {
        case 'noSuchBatch':
          return `At this price no batch up to ${formatter.count(problem.upTo, 'piece')} leaves ${formatter.share(margin)}.${
            problem.marginThere === null
              ? ''
              : ` The last of them leaves ${formatter.share(problem.marginThere)}.`
          }`;
        case 'notAMargin':
          return 'A margin lies between 0 and 100 %, and at 100 % nothing is left to pay the costs.';
        case 'notAPrice':
          return 'A price is an amount above nothing.';
        default:
          return problem satisfies never;
      }
    }
    case 'largestWage': {
      if (answer.found.ok)
        return `At most ${formatter.money(answer.found.value)} an hour: with that the job pays its costs and fees, and leaves no profit.`;
      const { problem } = answer.found;
      switch (problem.kind) {
        case 'noWage':
          return `Even with nobody paid the job loses ${formatter.money(problem.lossUnpaid)}: the price does not cover what is bought.`;
        case 'anyWage':
          return 'The job takes no paid minutes, so any wage can be borne.';
        case 'notABatch':
          return 'Nothing is ordered yet, so nobody works on it.';
        case 'notAPrice':
          return 'A price is an amount above nothing.';
        case 'unknownCost':
          return noNumber;
        default:
          return problem satisfies never;
      }
    }
    default:
      return answer satisfies never;
  }
}

const taxOf = (inside: number) => (inside > 0 ? ' with its tax' : ' without tax');

const noNumber = 'A formula of your own gives no number for it. Look at your own rows.';
