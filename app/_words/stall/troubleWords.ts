import type { Formatter } from '@/app/_words/formatter';
import type { StallTrouble } from '@/lib/stall/plan/stallPlanned';
import { sameDayMend } from './dayWords';

/** @returns what stands in the way of a plan, or is to be settled beside it: what is wrong, what it causes, how to mend it */
export function stallTroubleWords(
  trouble: StallTrouble,
  formatter: Pick<Formatter, 'share' | 'number'>,
): string {
  switch (trouble.kind) {
    case 'noJobs':
      return 'Nothing is brought yet, so there is nothing to plan. Add the goods and their designs.';
    case 'jobMissing':
      return 'A job that goods are made by is not here, so nobody knows what they cost. Bring it back, or take its designs out.';
    case 'lineMissing':
      return `A design of ${trouble.jobName} is not in that job any more, so nobody knows what it costs. Take it out, or add it to the job.`;
    case 'jobStopped':
      return `${trouble.jobName} has a stop, so what a piece costs is not known. Mend it in the job.`;
    case 'noPrice':
      return `${trouble.design}${trouble.goods.size === '' ? '' : ` in ${trouble.goods.size}`} has no price, so nobody knows what a sale brings. Set it in the job.`;
    case 'noForecast':
      return trouble.range === null
        ? 'Nobody has said how many will be asked for, so there is nothing to bring them for. Say it with the goods.'
        : `Nobody has said how many ${trouble.range} will be asked for, so none can be advised. Say it with the goods.`;
    case 'noShares':
      return `All parts of ${trouble.range} are 0, so none of its designs would be asked for. Give the designs their parts.`;
    case 'noMix':
      return `${trouble.range} come in several sizes and are said to have one, so nobody knows how many of each are asked for. Say by whom the sizes go.`;
    case 'noSizes':
      return `“${trouble.design}” comes in no size that anybody of ${trouble.range} is said to buy, so none of it would be asked for. Choose whom the sizes go by, or give its sizes shares of your own.`;
    case 'noPastDay':
      return 'The forecast goes by stall days before and none is ticked, so nobody knows how many will be asked for. Tick a day that it rests on.';
    case 'noWeather':
      return 'No weather is told, so nobody knows how likely a bad day is. Name the weathers, or one for a stall under a roof.';
    case 'oneWeather':
      return 'The weathers of these days, in every order, are more than 64, so the plan takes one weather for all of them and looks riskier than it is. Name fewer weathers, or give days the same weight.';
    case 'chances':
      return `The chances of the weather add up to ${formatter.share(trouble.sum)}, so one day would count for more or less than one. Change them until they make 100 %.`;
    case 'noLeftoverShare':
      return 'What an unsold piece is still worth is not told, so bringing too many would cost nothing. Say it with the goods.';
    case 'noDays':
      return 'No day of selling is set, so the plan is for no day. Set it.';
    case 'sameDay':
      return `The date of day ${trouble.at + 1} stands there already, so nobody could tell of which day a sale is. ${sameDayMend}`;
    case 'noChannel':
      return 'No way of selling is chosen, so tax and fees are not known. Choose it.';
    case 'channelLacks':
      return `The way of selling does not say ${lacking[trouble.what]}, so what a sale leaves is not known. Say it in the workshop.`;
    case 'costUnknown':
      return `“${trouble.what}” has no amount, so what the day costs is not known. Type it, or take it out.`;
    case 'wageUnknown':
      return 'Your pay an hour is not told, so what the day leaves you is not known. Say it in the workshop.';
    case 'travelRateUnknown':
      return 'What driving costs is not told, so the drive cannot be reckoned. Say it in the workshop.';
    case 'stockBelowZero':
      return `By what was noted ${formatter.number(trouble.pieces)} × ${trouble.design}${trouble.goods.size === '' ? '' : ` in ${trouble.goods.size}`} lie at home, fewer than none, so as many are made as if nothing were there. Count them.`;
    case 'otherCurrency':
      return `${trouble.jobName} is in another currency, so its costs cannot be added up. Take it out, or change its currency.`;
    default:
      return trouble satisfies never;
  }
}

// Helpers

const lacking: Readonly<Record<Extract<StallTrouble, { kind: 'channelLacks' }>['what'], string>> = {
  tax: 'how prices hold tax',
  cardFee: 'what cards cost',
  cardFixedFee: 'what a card ticket costs',
  cardShare: 'how much comes by card',
  piecesPerTicket: 'how many pieces are on a ticket',
  commission: 'what commission is taken',
};
