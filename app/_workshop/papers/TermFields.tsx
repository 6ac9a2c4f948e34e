'use client';

import { Button } from '@/app/_controls/Button';
import { typing } from '@/app/_documents/typing';
import { TextField } from '@/app/_fields/TextField';
import { askAuthority, termCaution } from '@/app/_words/workshop/paperWords';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { starterTerms, termFigures } from '@/lib/papers/terms/starterTerms';
import { labelsFor, ofLanguage } from '@/lib/papers/words/labelsFor';
import { textLimits } from '@/shared/limits';
import { type TermKey, termKeys } from '@/shared/schemas/seller';
import { workshopSchema } from '@/shared/schemas/workshop';
import { ownText, withoutLanguage, withText } from './paperTexts';

type TermFieldsProps = Readonly<{ fields: WorkshopFields; language: string }>;

/** The terms under quotes and confirmations: ours to begin with, to be written anew. */
export function TermFields({ fields: { workshop, set }, language }: TermFieldsProps) {
  const { terms, words } = workshop.papers;
  const labels = labelsFor(language, words);
  const put = (key: TermKey, text: string | null) =>
    set(
      `Term “${labels[starterTerms[key].heading]}”`,
      ['papers', 'terms'],
      withText(terms, { language, key }, text === null ? null : { language, key, text }),
    );
  return (
    <>
      <p className={styles.words}>
        Figures of the order go in by {termFigures.map((figure) => `{${figure}}`).join(', ')}. A sentence
        whose figure is not known is left out; headings stand among the words.
      </p>
      <div className={styles.stack}>
        {termKeys.map((key) => {
          const own = ownText(terms, language, key);
          const others = ofLanguage(language, withoutLanguage(terms, language));
          const starter = others.findLast((one) => one.key === key)?.text ?? starterTerms[key].text;
          const text = own ?? starter;
          return (
            <div key={key}>
              <TextField
                label={labels[starterTerms[key].heading]}
                width="full"
                rows={3}
                value={text}
                {...textLimits(workshopSchema, ['papers', 'terms', 0, 'text'])}
                hint={starterTerms[key].askLocally ? askAuthority : undefined}
                caution={
                  text.trim() === '' ? 'Left off papers in this language.' : termCaution(text, termFigures)
                }
                onCommit={(typed) => put(key, typed === starter ? null : typed)}
              />
              {own === undefined ? (
                <p className={styles.mark}>our wording</p>
              ) : (
                <p className={styles.mark}>
                  your wording{' '}
                  <Button
                    kind="quiet"
                    spoken={`Take our wording again for ${labels[starterTerms[key].heading]}`}
                    onPress={() => {
                      typing.ends();
                      put(key, null);
                    }}
                  >
                    Take our wording again
                  </Button>
                </p>
              )}
            </div>
          );
        })}
      </div>
    </>
  );
}
