import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { numberLimits, textLimits } from '@/shared/limits';
import { type Discount, orderSchema } from '@/shared/schemas/order';
import { currencyDigits } from '@/shared/tables/currencies';
import type { OrderFields } from './orderFields';

type DiscountFieldsProps = Readonly<{ of: OrderOnPaper; fields: OrderFields }>;

/** What is taken off before tax: a share, or an amount as prices are written. */
export function DiscountFields({ of, fields }: DiscountFieldsProps) {
  const { discount } = fields.order;
  const { currency } = of.workspace.workshop;
  const set = (to: Discount | null) => fields.set('Discount', 'discount', to);
  const why = discount?.why ?? '';
  return (
    <FieldGroup>
      <ChoiceField
        id="quote-discount"
        label="Discount"
        value={discount?.kind ?? 'none'}
        choices={[
          { value: 'none', label: 'None' },
          { value: 'share', label: 'A share' },
          { value: 'amount', label: 'An amount' },
        ]}
        onCommit={(kind) => {
          if (kind === discount?.kind) return;
          if (kind === 'share') set({ kind, share: 0, why });
          else if (kind === 'amount') set({ kind, amount: 0, why });
          else set(null);
        }}
      />
      {discount?.kind === 'share' && (
        <MeasureField
          label="How much"
          kind="share"
          value={discount.share}
          {...numberLimits(orderSchema, ['discount', 'share'])}
          needed
          onCommit={(share) => share !== null && set({ ...discount, share })}
        />
      )}
      {discount?.kind === 'amount' && (
        <NumberField
          label="How much"
          unit={currency}
          value={discount.amount}
          {...numberLimits(orderSchema, ['discount', 'amount'])}
          minDecimals={currencyDigits(currency) ?? 0}
          needed
          onCommit={(amount) => amount !== null && set({ ...discount, amount })}
        />
      )}
      {discount !== null && (
        <TextField
          label="Why, as the customer reads it"
          value={discount.why}
          longest={textLimits(orderSchema, ['discount', 'why']).longest}
          onCommit={(to) => set({ ...discount, why: to })}
        />
      )}
    </FieldGroup>
  );
}
