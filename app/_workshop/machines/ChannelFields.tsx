'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { channelKindWords, commissionBaseWords, taxModeWords } from '@/app/_words/workshop/workshopWords';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { numberLimits, textLimits } from '@/shared/limits';
import { type Channel, channelSchema, taxModes } from '@/shared/schemas/workshop';
import type { FieldPath } from '@/shared/setIn';
import { channelRates } from './machineRates';
import { PartRates } from './PartRates';

type ChannelFieldsProps = Readonly<{
  fields: WorkshopFields;
  channel: Channel;
  path: FieldPath;
  kinds: readonly Channel['kind'][];
}>;

/** One way of selling: the question of tax asked plainly, then what the channel keeps. */
export function ChannelFields({ fields: { set, ...fields }, channel, path, kinds }: ChannelFieldsProps) {
  return (
    <>
      <FieldGroup>
        <TextField
          label="Name"
          id={workshopFieldId([...path, 'name'])}
          value={channel.name}
          needed
          {...textLimits(channelSchema, ['name'])}
          onCommit={(name) => set('Name of a way of selling', [...path, 'name'], name)}
        />
        <ChoiceField
          label="Kind"
          id={workshopFieldId([...path, 'kind'])}
          value={channel.kind}
          choices={kinds.map((value) => ({ value, label: channelKindWords[value] }))}
          onCommit={(kind) => set(`Kind of ${channel.name}`, [...path, 'kind'], kind)}
        />
        <ChoiceField
          label="Is tax inside the prices you write here?"
          id={workshopFieldId([...path, 'taxMode'])}
          value={channel.taxMode}
          unchosen="Not yet said"
          choices={taxModes.map((value) => ({ value, label: taxModeWords[value] }))}
          onCommit={(mode) => set(`Tax, ${channel.name}`, [...path, 'taxMode'], mode)}
        />
        <ChoiceField
          label="Commission is taken of the"
          id={workshopFieldId([...path, 'commissionBase'])}
          value={channel.commissionBase}
          choices={(['withoutTax', 'withTax'] as const).map((value) => ({
            value,
            label: commissionBaseWords[value],
          }))}
          onCommit={(base) => set(`Commission, ${channel.name}`, [...path, 'commissionBase'], base)}
        />
        <NumberField
          label="The money is there after"
          id={workshopFieldId([...path, 'cashInDays'])}
          width="narrow"
          unit="days"
          value={channel.cashInDays}
          {...numberLimits(channelSchema, ['cashInDays'])}
          hint="0 where it is paid at once."
          onCommit={(days) => set(`Days of ${channel.name}`, [...path, 'cashInDays'], days)}
        />
      </FieldGroup>
      <PartRates fields={{ set, ...fields }} part={channel} path={path} specs={channelRates(channel)} />
    </>
  );
}
