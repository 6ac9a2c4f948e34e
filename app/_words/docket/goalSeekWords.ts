import type { Speaker } from '@/app/_words/formatter';
import type { SeekAnswer, SeekQuestion } from '@/lib/studies/goalSeek/goalSeekAnswer';

/** What was found, or why nothing was, in one or two sentences. */
export function seekWords(answer: SeekAnswer, question: SeekQuestion, speak: Speaker): string {
  switch (answer.seek) {
    case 'noPrice':
      return 'No price is asked in this job yet. Type one here, or decide it above.';
    case 'priceForMargin': {
      const margin = question.seek === 'priceForMargin' ? question.margin : 0;
      if (answer.found.ok) {
        const { each, total, earns } = answer.found.value;
        return `${speak.money(each)} a piece, ${speak.money(total)} for all without tax, leaves ${speak.share(margin)}.${
          earns === 'nothing' ? ' It pays cost, fees and your own pay, and nothing more.' : ''
        }`;
      }
      const { trouble } = answer.found;
      switch (trouble.kind) {
        case 'nothingLeft':
          return `A margin of ${speak.share(trouble.margin)} and fees of ${speak.share(trouble.fees)} take the whole price: no price is high enough. Ask for less.`;
        case 'notAMargin':
          return 'A margin lies between 0 and 100 %: it is the part of the price that is profit.';
        case 'notABatch':
          return 'Nothing is ordered yet, so there is nothing to price.';
        case 'unknownCost':
          return noNumber;
        default:
          return trouble satisfies never;
      }
    }
    case 'priceForPay': {
      const perHour = question.seek === 'priceForPay' ? question.perHour : 0;
      if (answer.found.ok) {
        const { each, total } = answer.found.value;
        return `${speak.money(each)} a piece, ${speak.money(total)} for all without tax, pays you ${speak.money(perHour)} for each hour of it.`;
      }
      const { trouble } = answer.found;
      switch (trouble.kind) {
        case 'notAnAmount':
          return 'A pay is an amount of nothing or more an hour.';
        case 'notABatch':
          return 'Nothing is ordered yet, so there is nothing to price.';
        case 'noSuchPrice':
          return 'No price pays that: the fees take it all. Look at the way of selling.';
        default:
          return trouble satisfies never;
      }
    }
    case 'batchForMargin': {
      const margin = question.seek === 'batchForMargin' ? question.margin : 0;
      if (answer.found.ok)
        return `From ${speak.count(answer.found.value, 'piece')} in one batch the price leaves ${speak.share(margin)}.`;
      const { trouble } = answer.found;
      switch (trouble.kind) {
        case 'noSuchBatch':
          return `At this price no batch up to ${speak.count(trouble.upTo, 'piece')} leaves ${speak.share(margin)}.${
            trouble.marginThere === null
              ? ''
              : ` The last of them leaves ${speak.share(trouble.marginThere)}.`
          }`;
        case 'notAMargin':
          return 'A margin lies between 0 and 100 %, and at 100 % nothing is left to pay the costs.';
        case 'notAPrice':
          return 'A price is an amount above nothing.';
        default:
          return trouble satisfies never;
      }
    }
    case 'largestWage': {
      if (answer.found.ok)
        return `At most ${speak.money(answer.found.value)} an hour: with that the job pays its costs and fees, and leaves no profit.`;
      const { trouble } = answer.found;
      switch (trouble.kind) {
        case 'noWage':
          return `Even with nobody paid the job loses ${speak.money(trouble.lossUnpaid)}: the price does not cover what is bought.`;
        case 'anyWage':
          return 'The job takes no paid minutes, so any wage can be borne.';
        case 'notABatch':
          return 'Nothing is ordered yet, so nobody works on it.';
        case 'notAPrice':
          return 'A price is an amount above nothing.';
        case 'unknownCost':
          return noNumber;
        default:
          return trouble satisfies never;
      }
    }
    default:
      return answer satisfies never;
  }
}

const noNumber = 'A formula of your own gives no number for it. Look at your own rows.';
