'use client';

import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { focusById } from '@/app/_controls/focusById';
import { Answer } from '@/app/_docket/common/Answer';
import { LaterPart } from '@/app/_network/LaterPart';
import { useOpenForm } from '@/app/_order/notes/useOpenForm';
import { entriesAnswer } from '@/app/_words/year/listWords';
import { EntryList } from './EntryList';
import { laterParts } from './laterParts';
import styles from './Year.module.css';
import type { YearSection } from './yearSection';

/** Under which what is typed in forms of the year is remembered. */
const FORMS = { orderId: 'year', customer: null } as const;
const ID = 'year-entries';

type EntriesSectionProps = Readonly<{ on: YearSection /** Of the year. */; name: string }>;

/** Where expenses of the workshop and hours are noted, found and taken back, and handed to whoever keeps the books. */
export function EntriesSection({ on, name }: EntriesSectionProps) {
  const { workspace, today, formatter, standing } = on;
  const { open, show, formOf } = useOpenForm(FORMS, 'noted');
  const close = () => {
    show(null);
    focusById(`${ID}-heading`);
  };
  const toggle = (form: string) => show(open === form ? null : form);
  const noting = { workspace, today, formatter };
  return (
    <CardSection
      numeral={2}
      heading="Expenses and hours noted"
      id={ID}
      answer={<Answer words={entriesAnswer(standing, formatter)} />}
    >
      <div className={styles.acts}>
        <Button kind="strong" expanded={open === 'expense'} onPress={() => toggle('expense')}>
          Money spent
        </Button>
        <Button kind="strong" expanded={open === 'hours'} onPress={() => toggle('hours')}>
          Hours worked
        </Button>
        <LaterPart part={laterParts.csv} what="The file for the books" props={{ on, name }} />
      </div>
      {open === 'expense' && (
        <LaterPart
          part={laterParts.expense}
          what="The form"
          props={{
            ...{ on: noting, orderId: null, currency: workspace.workshop.currency, isAnyCurrency: true },
            ...{ form: formOf('expense'), onDone: close, onLeave: close },
          }}
        />
      )}
      {open === 'hours' && (
        <LaterPart
          part={laterParts.hours}
          what="The form"
          props={{ on, form: formOf('hours'), onDone: close, onLeave: close }}
        />
      )}
      <EntryList on={on} />
    </CardSection>
  );
}
