import { stallFieldId, workshopFieldId } from '@/app/_documents/fieldAddress';
import type { StallTrouble } from '@/lib/stall/plan/stallPlanned';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';

/** Where a trouble is settled: a field of this screen, or another screen. */
type TroublePlace = { readonly field: string } | { readonly href: string };

export function troublePlace(
  trouble: StallTrouble,
  stallDay: StallDay,
  channels: Workshop['channels'],
): TroublePlace {
  const field = (...path: readonly (string | number)[]) => ({ field: stallFieldId(path) });
  const rangeField = (id: string | null, ...rest: readonly string[]) => {
    const at = stallDay.ranges.findIndex((range) => range.id === id);
    return at < 0 ? field('ranges') : field('ranges', at, ...rest);
  };
  const costField = (id: string) =>
    field(
      'costs',
      stallDay.costs.findIndex((cost) => cost.id === id),
      'amount',
    );
  switch (trouble.kind) {
    case 'noJobs':
    case 'jobMissing':
    case 'lineMissing':
      return field('ranges');
    case 'jobStopped':
    case 'otherCurrency':
      return { href: `/jobs/${trouble.jobId}` };
    case 'stockBelowZero':
      return field('atHome');
    case 'noPrice':
      return { href: `/jobs/${trouble.goods.jobId}` };
    case 'noForecast':
      return trouble.rangeId === null ? field('forecast') : rangeField(trouble.rangeId, 'pieces');
    case 'noShares':
      return rangeField(trouble.rangeId, 'designs');
    case 'noMix':
    case 'noSizes':
      return rangeField(trouble.rangeId, 'sizes');
    case 'noPastDay':
      return field('forecast');
    case 'noWeather':
    case 'oneWeather':
    case 'chances':
      return field('weathers');
    case 'noLeftoverShare':
      return field('leftoverShare');
    case 'noDays':
      return field('days');
    case 'sameDay':
      return field('days', trouble.at, 'day');
    case 'noChannel':
      return field('channelId');
    case 'channelLacks':
      return { href: `/workshop#${workshopFieldId(channelField(trouble.what, stallDay, channels))}` };
    case 'costUnknown':
      return costField(trouble.costId);
    case 'travelRateUnknown':
      return { href: `/workshop#${workshopFieldId(['rates', 'travelRate'])}` };
    case 'wageUnknown':
      return { href: `/workshop#${workshopFieldId(['rates', 'wage'])}` };
    default:
      return trouble satisfies never;
  }
}

// Helpers

/** The field of the way of selling itself: its fold opens by that. */
function channelField(
  what: Extract<StallTrouble, { kind: 'channelLacks' }>['what'],
  { channelId }: Pick<StallDay, 'channelId'>,
  channels: Workshop['channels'],
): readonly (string | number)[] {
  const at = channels.findIndex(({ id }) => id === channelId);
  const isUntaxed = what === 'tax' && (channels[at]?.taxMode ?? null) === null;
  return at < 0 ? ['channels'] : ['channels', at, isUntaxed ? 'taxMode' : what];
}
