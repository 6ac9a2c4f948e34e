'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Finder } from '@/app/_fields/Finder';
import { TextField } from '@/app/_fields/TextField';
import { formatterFor } from '@/app/_words/formatter';
import { bracesCaution, labelName } from '@/app/_words/workshop/paperWords';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { foldedText, isFound } from '@/lib/drafts/jobSearch';
import { englishLabels, type LabelKey } from '@/lib/papers/words/englishLabels';
import { labelKeys, labelsFor } from '@/lib/papers/words/labelsFor';
import { mostEntries, textLimits } from '@/shared/limits';
import { workshopSchema } from '@/shared/schemas/workshop';
import { ownText, withoutLanguage, withText } from './paperTexts';

type PaperWordsProps = Readonly<{ fields: WorkshopFields; language: string }>;

/** As many boxes as are drawn at once without a halt. */
const AT_ONCE = 30;
const most = mostEntries(workshopSchema, ['papers', 'words']);

/** The words of papers in one language: those the maker wrote, and all others to be found. */
export function PaperWords({ fields: { workshop, set }, language }: PaperWordsProps) {
  const { words } = workshop.papers;
  const formatter = formatterFor(workshop);
  const [search, setSearch] = useState('');
  const [isAll, setAll] = useState(false);
  const [shown, setShown] = useState(AT_ONCE);
  // What is emptied stays in sight while the maker is at it.
  const [touched, setTouched] = useState<ReadonlySet<LabelKey>>(new Set());
  const ours = labelsFor(language, [...withoutLanguage(words, language)]);
  const isSearching = search.trim() !== '';
  const found = labelKeys.filter((key) => {
    const own = ownText(words, language, key);
    if (isSearching) return isFound(foldedText(`${englishLabels[key]}\n${ours[key]}\n${own ?? ''}`), search);
    return isAll || own !== undefined || touched.has(key);
  });
  const write = (key: LabelKey, text: string) => {
    setTouched((before) => new Set([...before, key]));
    const one = { language, key, text };
    set(
      `“${labelName(key, englishLabels)}” on papers`,
      ['papers', 'words'],
      withText(words, one, text.trim() === '' ? null : one),
    );
  };
  return (
    <>
      <p className={styles.words}>
        A box you leave empty says what stands in it in grey. What is in braces is put in by the app.
      </p>
      <div className={styles.finder}>
        <Finder
          id="paper-words-search"
          label="Find a word of papers"
          text={search}
          onText={(text) => {
            setSearch(text);
            setShown(AT_ONCE);
          }}
          result={
            isSearching &&
            (found.length === 0 ? 'No word found' : `${formatter.count(found.length, 'word')} found`)
          }
        />
      </div>
      {!isSearching && found.length === 0 && (
        <p className={styles.words}>None of yours in this language yet.</p>
      )}
      {words.length >= most && (
        <p className={styles.wrong}>
          {formatter.number(most)} words are the most there can be. Empty one first.
        </p>
      )}
      <div className={styles.stack}>
        {found.slice(0, shown).map((key) => {
          const own = ownText(words, language, key) ?? '';
          return (
            <TextField
              key={key}
              label={labelName(key, englishLabels)}
              width="full"
              rows={ours[key].length > 80 ? 4 : 1}
              value={own}
              placeholder={ours[key]}
              {...textLimits(workshopSchema, ['papers', 'words', 0, 'text'])}
              caution={own === '' ? undefined : bracesCaution(own, englishLabels[key])}
              onCommit={(text) => {
                if (own !== '' || words.length < most) write(key, text);
              }}
            />
          );
        })}
      </div>
      <div className={styles.below}>
        {found.length > shown ? (
          <Button onPress={() => setShown(shown + AT_ONCE)}>
            Show more, {formatter.number(found.length - shown)} are left
          </Button>
        ) : (
          !isSearching &&
          !isAll && (
            <Button onPress={() => setAll(true)}>Show all {formatter.count(labelKeys.length, 'word')}</Button>
          )
        )}
      </div>
    </>
  );
}
