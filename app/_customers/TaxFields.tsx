'use client';

import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { typing } from '@/app/_documents/typing';
import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { LanguageField } from '@/app/_fields/LanguageField';
import { languageName } from '@/app/_fields/languageChoices';
import { TextField } from '@/app/_fields/TextField';
import { expiredWords } from '@/app/_words/customers/customerWords';
import { formatterFor } from '@/app/_words/formatter';
import { textLimits } from '@/shared/limits';
import { customerSchema } from '@/shared/schemas/customer';
import styles from './Customers.module.css';
import type { CustomerFields } from './customerFields';
import { ExemptionProof } from './ExemptionProof';

/** What papers for a customer are written in, and whether tax is taken. */
export function TaxFields({ fields }: Readonly<{ fields: CustomerFields }>) {
  const { workspace, customer, set } = fields;
  const { workshop } = workspace;
  const { exemption } = customer;
  const today = useToday();
  const own = languageName(workshop.locale.split('-')[0] ?? 'en');
  const until = exemption?.validUntil ?? null;
  const ended = until !== null && until < today ? expiredWords(until, formatterFor(workshop)) : undefined;
  const named = (number: string) => {
    if (exemption !== null) set('Number of a certificate', ['exemption', 'number'], number);
    else if (number.trim() !== '')
      set('Number of a certificate', ['exemption'], { number, validUntil: null, proof: null });
  };
  const end = () => {
    typing.ends();
    set('Remove the exemption', ['exemption'], null);
  };
  return (
    <>
      <FieldGroup>
        <LanguageField
          label="Language of their papers"
          id="customer-language"
          value={customer.language}
          none={`Yours: ${own}`}
          inUse={workshop.papers.words.map(({ language }) => language)}
          hint="Words of papers in other languages are yours to write, under Workshop, Papers."
          onCommit={(language) => set('Language of their papers', ['language'], language)}
        />
        <TextField
          label="Their tax number"
          id="customer-tax-number"
          value={customer.taxNumber}
          {...textLimits(customerSchema, ['taxNumber'])}
          hint="Empty where papers need none."
          onCommit={(taxNumber) => set('Tax number of a customer', ['taxNumber'], taxNumber)}
        />
      </FieldGroup>
      <h3 className={styles.sub}>Exempt from tax</h3>
      <p className={styles.words}>
        What counts as proof your local authority says. Only orders that say so themselves are written without
        tax.
      </p>
      <FieldGroup>
        <TextField
          label="Number of their certificate"
          id="customer-exemption"
          value={exemption?.number ?? ''}
          needed={exemption !== null}
          {...textLimits(customerSchema, ['exemption', 'number'])}
          hint={exemption === null ? 'Empty where tax is taken.' : undefined}
          onCommit={named}
        />
        {exemption !== null && (
          <DateField
            label="Valid until"
            id="customer-exemption-until"
            value={until}
            hint={until === null ? 'Empty where it has no end.' : undefined}
            issue={ended}
            onCommit={(day) => set('Last day of a certificate', ['exemption', 'validUntil'], day)}
          />
        )}
      </FieldGroup>
      {exemption !== null && (
        <>
          <ExemptionProof fields={fields} proof={exemption.proof} />
          <Button kind="quiet" onPress={end}>
            They are not exempt any more
          </Button>
        </>
      )}
    </>
  );
}
