'use client';

import { Fieldset } from '@/app/_docket/common/Fieldset';
import { Fieldsets } from '@/app/_docket/common/Fieldsets';
import { useJob } from '@/app/_docket/common/useJob';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { RateField } from '@/app/_fields/RateField';
import { TextField } from '@/app/_fields/TextField';
import { jobChoices } from '@/app/_words/docket/choiceWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { jobSchema } from '@/shared/schemas/job';
import { otherTypicals } from '@/shared/tables/typicalRates';

/** The fields of the job that are folded away here. */
export const jobMoreFields = [
  'customer',
  'madeFor',
  'printerId',
  'sheetId',
  'gang',
  'channelId',
  'wantedOn',
  'piecesPerSession',
  'freightIn',
  'deliveryKm',
  'cardPayments',
  'sewnLabel',
] as const;

/** What is said once for the whole job. */
export function JobMore() {
  const { input, field } = useJob();
  const { job, workshop } = input;
  const of = (label: string, key: (typeof jobMoreFields)[number]) => field(label, [key]);
  const listed = (list: readonly Readonly<{ id: string; name: string }>[], id: string) => ({
    value: list.some((one) => one.id === id) ? id : null,
    choices: list.map((one) => ({ value: one.id, label: one.name })),
  });
  return (
    <Fieldsets>
      <Fieldset name="For whom">
        <TextField
          {...of('Customer', 'customer')}
          value={job.customer}
          {...textLimits(jobSchema, ['customer'])}
        />
        <ChoiceField {...of('Made', 'madeFor')} value={job.madeFor} choices={jobChoices.madeFor} />
        <DateField {...of('Wanted on', 'wantedOn')} value={job.wantedOn} />
        <ChoiceField
          {...of('Way of selling', 'channelId')}
          {...listed(workshop.channels, job.channelId)}
          hint="Its tax and fees stand in the workshop."
        />
        <NumberField
          {...of('Card payments', 'cardPayments')}
          value={job.cardPayments}
          needed
          {...numberLimits(jobSchema, ['cardPayments'])}
          hint="How many settle the order. A stall counts tickets instead."
        />
      </Fieldset>
      <Fieldset name="How it is made">
        <ChoiceField {...of('Printer', 'printerId')} {...listed(workshop.printers, job.printerId)} />
        <ChoiceField {...of('Sheet', 'sheetId')} {...listed(workshop.sheets, job.sheetId)} />
        <ChoiceField
          {...of('Prints on a sheet', 'gang')}
          value={job.gang}
          choices={jobChoices.gang}
          hint="Shared sheets can save paper; the prints are cut apart before they are pressed."
        />
        <NumberField
          {...of('Pieces in one session', 'piecesPerSession')}
          value={job.piecesPerSession}
          {...numberLimits(jobSchema, ['piecesPerSession'])}
          hint="Empty where one session carries all."
        />
        <ChoiceField
          {...of('The sewn label with the fibres', 'sewnLabel')}
          value={job.sewnLabel}
          choices={jobChoices.sewnLabel}
          hint="Rules on labels differ: ask your local authority."
        />
      </Fieldset>
      <Fieldset name="Coming and going">
        <RateField
          {...of('Freight in', 'freightIn')}
          rate={job.freightIn}
          units={['money/order']}
          limits={numberLimits(jobSchema, ['freightIn', 'value'])}
          typical={otherTypicals.freightIn.typical}
          hint="What it costs to have the blanks sent; 0 where it comes free."
        />
        <MeasureField
          {...of('Delivery, there and back', 'deliveryKm')}
          kind="distance"
          value={job.deliveryKm}
          {...numberLimits(jobSchema, ['deliveryKm'])}
          hint="0 where nobody drives; left empty, its minutes are not counted either."
        />
      </Fieldset>
    </Fieldsets>
  );
}
