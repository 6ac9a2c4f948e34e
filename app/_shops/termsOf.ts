import { termsMissing } from '@/app/_words/stall/shopWords';
import type { ShopTerms } from '@/lib/stall/shops/statementDue';
import type { Shop } from '@/shared/schemas/shop';
import type { Workshop } from '@/shared/schemas/workshop';

/** @returns how a shop settles, or the sentence that says what is missing. */
export function termsOf(
  shop: Pick<Shop, 'channelId' | 'commissionShare' | 'commissionBase' | 'bears'>,
  { channels, currency }: Pick<Workshop, 'channels' | 'currency'>,
):
  | { readonly terms: ShopTerms; readonly missing?: undefined }
  | { readonly terms?: undefined; readonly missing: string } {
  const channel = channels.find(({ id }) => id === shop.channelId);
  if (channel === undefined) return { missing: termsMissing.channel };
  const { taxMode, tax, commission } = channel;
  if (taxMode === null || (taxMode !== 'none' && tax === null)) return { missing: termsMissing.tax };
  const commissionShare = shop.commissionShare ?? commission?.value ?? null;
  if (commissionShare === null) return { missing: termsMissing.commission };
  return {
    terms: {
      ...{ commissionShare, taxMode, currency },
      commissionBase: shop.commissionBase ?? channel.commissionBase,
      tax: taxMode === 'none' ? 0 : (tax?.value ?? 0),
      bears: shop.bears,
    },
  };
}
