'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { LanguageField } from '@/app/_fields/LanguageField';
import { TextField } from '@/app/_fields/TextField';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { mostEntries, textLimits } from '@/shared/limits';
import { workshopSchema } from '@/shared/schemas/workshop';

const most = mostEntries(workshopSchema, ['papers', 'ownTerms']);
const path = ['papers', 'ownTerms'] as const;

type OwnTermsProps = Readonly<{
  fields: WorkshopFields;
  /** Languages that papers are written in. */
  inUse: readonly string[];
}>;

/** Terms of the workshop alone, after the others. */
export function OwnTerms({ fields, inUse }: OwnTermsProps) {
  const { workshop, workspace, set } = fields;
  const { ownTerms } = workshop.papers;
  const [removed, setRemoved] = useState<string | null>(null);
  const [added, setAdded] = useState<number | null>(null);
  useEffect(() => {
    if (added !== null) focusById(workshopFieldId([...path, added, 'heading']));
  }, [added]);
  const add = () => {
    typing.ends();
    set('Add a term', [...path, ownTerms.length], {
      ...{ id: newId(), language: null, heading: '', text: '' },
    });
    setAdded(ownTerms.length);
  };
  const remove = (id: string, name: string) => {
    typing.ends();
    set(
      `Remove ${name}`,
      path,
      ownTerms.filter((term) => term.id !== id),
    );
    setAdded(null);
    setRemoved(name);
  };
  return (
    <div className={styles.stack}>
      {ownTerms.map(({ id, language, heading, text }, index) => {
        const name = heading.trim() || 'the term without a heading';
        return (
          <div key={id} className={styles.stack}>
            <TextField
              label="Heading"
              id={workshopFieldId([...path, index, 'heading'])}
              value={heading}
              {...textLimits(workshopSchema, ['papers', 'ownTerms', 0, 'heading'])}
              onCommit={(to) => set('Heading of a term', [...path, index, 'heading'], to)}
            />
            <TextField
              label="Text"
              width="full"
              rows={3}
              value={text}
              {...textLimits(workshopSchema, ['papers', 'ownTerms', 0, 'text'])}
              caution={text.trim() === '' ? 'Left off papers while it is empty.' : undefined}
              onCommit={(to) => set('Text of a term', [...path, index, 'text'], to)}
            />
            <LanguageField
              label="On papers in"
              value={language}
              none="Every language"
              inUse={inUse}
              hint={
                language === null
                  ? 'It is printed as it is written here, whatever the language of the paper.'
                  : 'Papers in other languages go without it. Add it in theirs as well.'
              }
              onCommit={(to) => set('Language of a term', [...path, index, 'language'], to)}
            />
            <div>
              <Button kind="quiet" spoken={`Remove ${name}`} onPress={() => remove(id, name)}>
                Remove
              </Button>
            </div>
          </div>
        );
      })}
      <RemovedNote
        what={workspace.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void workspace.undo()}
      />
      <div>
        <Button
          blockedBy={ownTerms.length >= most ? `${most} is the most there can be.` : undefined}
          onPress={add}
        >
          Add a term
        </Button>
      </div>
    </div>
  );
}
