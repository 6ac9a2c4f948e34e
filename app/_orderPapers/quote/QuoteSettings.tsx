'use client';

import Link from 'next/link';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { LanguageField } from '@/app/_fields/LanguageField';
import { languageName } from '@/app/_fields/languageChoices';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { ofWorkshopWords } from '@/app/_words/orders/quote/quoteAnswerWords';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import { numberLimits, textLimits } from '@/shared/limits';
import { orderSchema } from '@/shared/schemas/order';
import { DiscountFields } from './DiscountFields';
import { LinePrices } from './LinePrices';
import { orderFields } from './orderFields';
import { QuoteAlternatives } from './QuoteAlternatives';
import { QuoteCharges } from './QuoteCharges';
import { UnderCostField } from './UnderCostField';

type QuoteSettingsProps = Readonly<{
  of: OrderOnPaper;
  asked: QuoteAsked | null;
  /** Something of it goes out under cost as it is. */
  isUnderCost: boolean;
}>;

/** Everything that belongs to the order alone; quantities, prints and asked prices are typed in its jobs. */
export function QuoteSettings({ of, asked, isUnderCost }: QuoteSettingsProps) {
  const { workspace, customer, formatter, goods } = of;
  const fields = orderFields(of);
  const { order, set } = fields;
  const { quoting, channels, papers, locale } = workspace.workshop;
  const ownLanguage = locale.split('-')[0] ?? 'en';
  const jobChannel = goods.jobs[0]?.input.job.channelId;
  const usualChannel = channels.find(({ id }) => id === jobChannel)?.name;
  return (
    <div className={styles.settings}>
      <h3 className={styles.sub}>Prices</h3>
      <ChoiceField
        id="quote-channel"
        label="Way of selling"
        value={order.channelId ?? ''}
        choices={[
          {
            value: '',
            label: usualChannel === undefined ? 'As the first job' : `As the first job: ${usualChannel}`,
          },
          ...channels.map(({ id, name }) => ({ value: id, label: name })),
        ]}
        hint="It decides tax and fees."
        onCommit={(id) => set('Way of selling', 'channelId', id === '' ? null : id)}
      />
      <LinePrices {...{ of, fields }} />
      <h3 className={styles.sub}>Beside the pieces</h3>
      <QuoteCharges {...{ of, fields }} />
      <DiscountFields {...{ of, fields }} />
      <CheckField
        id="quote-exempt"
        label="No tax is taken, on the customer’s proof"
        checked={order.exempt}
        hint={
          customer?.exemption == null
            ? 'The customer has given no certificate yet. What counts as one, your local authority says.'
            : `Certificate ${customer.exemption.number}`
        }
        onCommit={(exempt) => set('No tax', 'exempt', exempt)}
      />
      <h3 className={styles.sub}>Terms</h3>
      <FieldGroup pairs>
        <MeasureField
          id="quote-deposit"
          label="Deposit"
          kind="share"
          value={order.depositShare}
          {...numberLimits(orderSchema, ['depositShare'])}
          hint={`Empty: ${formatter.share(quoting.depositShare)}, as in the workshop.`}
          whenEmpty={ofWorkshopWords(formatter.share(quoting.depositShare))}
          onCommit={(share) => set('Deposit', 'depositShare', share)}
        />
        <NumberField
          id="quote-valid"
          label="Valid for"
          unit="days"
          value={order.validDays}
          {...numberLimits(orderSchema, ['validDays'])}
          hint={`Empty: ${quoting.validDays}, as in the workshop.`}
          whenEmpty={ofWorkshopWords(formatter.count(quoting.validDays, 'day'))}
          onCommit={(days) => set('Valid for', 'validDays', days)}
        />
        <NumberField
          id="quote-lead"
          label="Lead time"
          unit="working days"
          value={order.leadDays}
          {...numberLimits(orderSchema, ['leadDays'])}
          hint="From the later of approval and deposit. Empty: as the bench is free."
          whenEmpty="Until then it is as the bench is free."
          onCommit={(days) => set('Lead time', 'leadDays', days)}
        />
        <NumberField
          id="quote-revisions"
          label="Rounds of changes included"
          value={order.revisionsIncluded}
          {...numberLimits(orderSchema, ['revisionsIncluded'])}
          hint={`Empty: ${quoting.revisionsIncluded}, as in the workshop.`}
          whenEmpty={ofWorkshopWords(formatter.count(quoting.revisionsIncluded, 'round'))}
          onCommit={(rounds) => set('Rounds of changes', 'revisionsIncluded', rounds)}
        />
      </FieldGroup>
      <p className={styles.quiet}>
        <Link href="/workshop#papers">Terms and words of papers</Link> are written in the workshop.
      </p>
      <LanguageField
        id="quote-language"
        label="Language of its papers"
        value={order.language}
        none={`As the customer reads: ${languageName(customer?.language ?? ownLanguage)}`}
        inUse={papers.words.map(({ language }) => language)}
        hint="Words of papers in other languages are yours to write, under Workshop, Papers."
        onCommit={(language) => set('Language of the papers', 'language', language)}
      />
      <TextField
        id="quote-agreed"
        label="Agreed beside the terms"
        rows={3}
        width="full"
        value={order.agreed}
        longest={textLimits(orderSchema, ['agreed']).longest}
        isTrimmed={false}
        onCommit={(agreed) => set('Agreed', 'agreed', agreed)}
      />
      <UnderCostField {...{ fields }} isAsked={isUnderCost} />
      <h3 className={styles.sub}>Alternatives beside what was asked</h3>
      <QuoteAlternatives {...{ of, fields, asked }} />
    </div>
  );
}
