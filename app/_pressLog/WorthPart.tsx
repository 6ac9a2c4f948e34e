'use client';

import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useTypedNumber } from '@/app/_fields/useTyped';
import { formatterFor } from '@/app/_words/formatter';
import { worthWords } from '@/app/_words/press/testWords';
import { testAskedSchema, testWorth } from '@/lib/pressing/testWorth';
import { numberLimits } from '@/shared/limits';

const form = { orderId: 'press-log', name: 'test worth', isErased: false };

/** Whether a test press pays: what it saves on average against what it costs. */
export function WorthPart() {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const doubt = useTypedNumber(form, 'doubt', 0.2);
  const pieces = useTypedNumber(form, 'pieces', 5);
  const loss = useTypedNumber(form, 'loss');
  const cost = useTypedNumber(form, 'cost');
  const isTyped = doubt.value !== null && pieces.value !== null && loss.value !== null && cost.value !== null;
  const worth = isTyped
    ? testWorth({
        ...{ doubt: doubt.value ?? 0, piecesAtRisk: pieces.value ?? 0 },
        ...{ lossEach: loss.value ?? 0, cost: cost.value ?? 0 },
      })
    : null;
  return (
    <>
      <FieldGroup>
        <MeasureField
          label="Chance that the recipe is wrong"
          kind="share"
          {...numberLimits(testAskedSchema, ['doubt'])}
          {...doubt}
        />
        <NumberField
          label="Pieces pressed before you would notice"
          {...numberLimits(testAskedSchema, ['piecesAtRisk'])}
          {...pieces}
        />
        <NumberField
          label="Lost with one of them"
          unit={context.currency}
          {...numberLimits(testAskedSchema, ['lossEach'])}
          {...loss}
        />
        <NumberField
          label="Cost of the test: sheet, cloth, minutes"
          unit={context.currency}
          {...numberLimits(testAskedSchema, ['cost'])}
          {...cost}
        />
      </FieldGroup>
      <p>
        {worth === null
          ? 'Fill in all four.'
          : worthWords(formatter.money(worth.saves), formatter.money(cost.value ?? 0), worth.isWorth)}
      </p>
    </>
  );
}
