'use client';

import { useState } from 'react';
import { Disclosure } from '@/app/_controls/Disclosure';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { LanguageField } from '@/app/_fields/LanguageField';
import { languageName } from '@/app/_fields/languageChoices';
import { formatterFor } from '@/app/_words/formatter';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { ownTermsIn } from '@/lib/papers/terms/termTexts';
import { OwnTerms } from './OwnTerms';
import { PaperWords } from './PaperWords';
import { TermFields } from './TermFields';

const pages = [
  { value: 'usual', label: 'As usual where you are' },
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'Letter' },
] as const;

/** How papers of orders are written: their page, their words in each language, the terms. */
export function PaperFields({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, workspace, set } = fields;
  const { papers, locale } = workshop;
  const [language, setLanguage] = useState(locale.split('-')[0] ?? 'en');
  const formatter = formatterFor(workshop);
  const name = languageName(language);
  const inUse = [
    ...[...papers.words, ...papers.terms, ...papers.ownTerms].flatMap((one) => one.language ?? []),
    ...Object.values(workspace.customers).flatMap((customer) => customer.language ?? []),
  ];
  const yours = (texts: readonly { readonly language: string }[]) =>
    texts.filter((one) => one.language.toLowerCase() === language.toLowerCase()).length;
  return (
    <>
      <FieldGroup>
        <ChoiceField
          label="Page"
          id={workshopFieldId(['papers', 'page'])}
          value={papers.page ?? 'usual'}
          choices={pages}
          onCommit={(page) => set('Page of papers', ['papers', 'page'], page === 'usual' ? null : page)}
        />
        <LanguageField
          label="Words below are for papers in"
          value={language}
          inUse={inUse}
          hint="A customer’s papers are in the language chosen at the customer, else in yours."
          onCommit={(chosen) => setLanguage(chosen ?? language)}
        />
      </FieldGroup>
      <div className={styles.below}>
        <Disclosure
          id={workshopFieldId(['papers', 'words'])}
          heading={`Words in ${name}`}
          line={`${formatter.count(yours(papers.words), 'word')} of yours, else ours in English`}
        >
          <PaperWords key={language} fields={fields} language={language} />
        </Disclosure>
        <Disclosure
          id={workshopFieldId(['papers', 'terms'])}
          heading={`Terms in ${name}`}
          line={`${formatter.number(yours(papers.terms))} in your words, else ours in English`}
        >
          <TermFields key={language} fields={fields} language={language} />
        </Disclosure>
        <Disclosure
          id={workshopFieldId(['papers', 'ownTerms'])}
          heading="Further terms of your own"
          line={`${formatter.count(papers.ownTerms.length, 'term')}, ${formatter.number(ownTermsIn(language, papers.ownTerms).length)} on papers in ${name}`}
        >
          <OwnTerms {...{ fields, inUse }} />
        </Disclosure>
      </div>
    </>
  );
}
