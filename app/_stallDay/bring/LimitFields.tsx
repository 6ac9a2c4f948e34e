'use client';

import { stallFieldId } from '@/app/_documents/fieldAddress';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { numberLimits } from '@/shared/limits';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import { currencyDigits } from '@/shared/tables/currencies';

/** What there is room, money and time for; table and cash trim the advice, hours only warn. */
export function LimitFields({ on }: Readonly<{ on: StallOnScreen }>) {
  const { stallDay, set, reader } = on;
  const { tablePieces, cash, benchHours } = stallDay.limits;
  return (
    <FieldGroup>
      <NumberField
        label="Pieces on table and rail"
        id={stallFieldId(['limits', 'tablePieces'])}
        unit="pieces"
        value={tablePieces}
        {...numberLimits(stallDaySchema, ['limits', 'tablePieces'])}
        whenEmpty="As many as you like have room."
        hint="The advice leaves out the piece least likely to sell first."
        onCommit={(to) => set('Pieces on the table', ['limits', 'tablePieces'], to)}
      />
      <NumberField
        label="Cash before the first sale"
        id={stallFieldId(['limits', 'cash'])}
        unit={reader.currency}
        minDecimals={currencyDigits(reader.currency) ?? 0}
        value={cash}
        {...numberLimits(stallDaySchema, ['limits', 'cash'])}
        whenEmpty="No limit is set."
        hint="Materials, bags, and of the day’s costs what is not paid yet."
        onCommit={(to) => set('Cash before the first sale', ['limits', 'cash'], to)}
      />
      <NumberField
        label="Hours at the bench until then"
        id={stallFieldId(['limits', 'benchHours'])}
        unit="h"
        value={benchHours}
        {...numberLimits(stallDaySchema, ['limits', 'benchHours'])}
        whenEmpty="No limit is set."
        hint="Where the pieces take longer, the plan says so; the advice stays as it is."
        onCommit={(to) => set('Hours at the bench', ['limits', 'benchHours'], to)}
      />
    </FieldGroup>
  );
}
