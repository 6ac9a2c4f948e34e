'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { basePriceWords } from '@/app/_words/stall/shopWords';
import { commissionBaseWords } from '@/app/_words/workshop/workshopWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { type Shop, shopSchema } from '@/shared/schemas/shop';
import type { Channel } from '@/shared/schemas/workshop';
import type { FieldPath } from '@/shared/setIn';
import type { ShopOnScreen } from './shopOnScreen';

/** What was agreed with a shop. */
export function TermsFields({ on }: Readonly<{ on: ShopOnScreen }>) {
  const { workspace, shopId, shop, formatter } = on;
  const { channels } = workspace.workshop;
  const set = (label: string, path: FieldPath, value: unknown) =>
    void workspace.setField({ kind: 'shop', id: shopId }, label, path, value);
  const channel = channels.find(({ id }) => id === shop.channelId) ?? null;
  const usual = channel?.commission ?? null;
  const price = keptOfWords(shop, channel);
  return (
    <FieldGroup>
      <ChoiceField<string>
        label="Way of selling"
        id="shop-channel"
        value={shop.channelId}
        choices={channels.map(({ id, name }) => ({ value: id, label: name }))}
        hint="Says tax and the usual commission."
        onCommit={(channelId) => set('Way of selling of a shop', ['channelId'], channelId)}
      />
      <MeasureField
        kind="share"
        label="The shop keeps"
        id="shop-commission"
        value={shop.commissionShare}
        {...numberLimits(shopSchema, ['commissionShare'])}
        hint={
          usual === null
            ? `Of ${price}.`
            : `Of ${price}. Empty takes the usual ${formatter.share(usual.value)}.`
        }
        onCommit={(share) => set('Commission of a shop', ['commissionShare'], share)}
      />
      {channel?.taxMode !== 'none' && (
        <ChoiceField
          label="That is a share of the"
          id="shop-base"
          value={shop.commissionBase ?? FOLLOWS}
          choices={[
            { value: FOLLOWS, label: followsWords(channel) },
            ...(['withoutTax', 'withTax'] as const).map((value) => ({
              value,
              label: commissionBaseWords[value],
            })),
          ]}
          hint="As usual is as the way of selling says."
          onCommit={(base) =>
            set('What the share of a shop is of', ['commissionBase'], base === FOLLOWS ? null : base)
          }
        />
      )}
      <ChoiceField
        label="What is missing is borne by"
        id="shop-bears"
        value={shop.bears}
        unchosen="Not agreed"
        choices={[
          { value: 'maker', label: 'You' },
          { value: 'shop', label: 'The shop' },
        ]}
        hint={shop.bears === null ? 'Until it is agreed you bear it.' : undefined}
        onCommit={(bears) => set('Who bears losses', ['bears'], bears)}
      />
      <DateField
        label="Fetch the rest by"
        id="shop-fetch"
        value={shop.fetchBy}
        onCommit={(day) => set('Day to fetch', ['fetchBy'], day)}
      />
      <NumberField
        label="A statement every"
        unit="days"
        id="shop-days"
        value={shop.statementDays}
        {...numberLimits(shopSchema, ['statementDays'])}
        onCommit={(days) => set('Days between statements', ['statementDays'], days)}
      />
      <TextField
        label="Whom to ask"
        id="shop-contact"
        value={shop.contact}
        {...textLimits(shopSchema, ['contact'])}
        onCommit={(contact) => set('Contact of a shop', ['contact'], contact)}
      />
      <TextField
        label="Note"
        id="shop-note"
        width="full"
        rows={3}
        value={shop.note}
        {...textLimits(shopSchema, ['note'])}
        onCommit={(note) => set('Note on a shop', ['note'], note)}
      />
    </FieldGroup>
  );
}

// Helpers

/** Stands for the way of selling, which says it then. */
const FOLLOWS = 'follows';

function keptOfWords({ commissionBase }: Shop, channel: Channel | null): string {
  const base = commissionBase ?? channel?.commissionBase ?? null;
  return base === null ? 'its price' : basePriceWords(base, channel?.taxMode ?? null);
}

const followsWords = (channel: Channel | null): string =>
  channel === null ? 'Price, as usual' : `${commissionBaseWords[channel.commissionBase]}, as usual`;
