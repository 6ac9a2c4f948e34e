'use client';

import { useState } from 'react';
import { languageSchema } from '@/shared/schemas/customer';
import { ChoiceField } from './ChoiceField';
import { languageChoices } from './languageChoices';
import { TextField } from './TextField';

const OWN = 'own';
const OTHER = 'other';

type LanguageFieldProps = Readonly<{
  label: string;
  /** Null for what `none` says. */
  value: string | null;
  /** What stands first in the list for no language of its own; left out where there is always one. */
  none?: string | undefined;
  /** Languages that are used besides. */
  inUse?: readonly string[];
  hint?: string | undefined;
  onCommit: (language: string | null) => void;
  id?: string | undefined;
}>;

/** A language by its name, or any other by its tag. */
export function LanguageField(props: LanguageFieldProps) {
  const { label, value, none, inUse = [], hint, onCommit, id } = props;
  const [isOther, setOther] = useState(false);
  const [tag, setTag] = useState('');
  const isBroken = tag.trim() !== '' && !isLanguage(tag.trim());
  const choices = [
    ...(none === undefined ? [] : [{ value: OWN, label: none }]),
    ...languageChoices(value === null ? inUse : [...inUse, value]),
    { value: OTHER, label: 'Another language…' },
  ];
  return (
    <>
      <ChoiceField
        label={label}
        id={id}
        value={isOther ? OTHER : (value ?? OWN)}
        choices={choices}
        hint={hint}
        onCommit={(chosen) => {
          setOther(chosen === OTHER);
          if (chosen === OTHER) setTag('');
          else onCommit(chosen === OWN ? null : chosen);
        }}
      />
      {isOther && (
        <TextField
          label="Its tag"
          width="narrow"
          value={tag}
          hint="Such as ca for Catalan or pt-BR for Portuguese as in Brazil."
          issue={isBroken ? 'No language has this tag. The one before stays in force.' : undefined}
          onCommit={(typed) => {
            setTag(typed);
            if (isLanguage(typed.trim())) onCommit(typed.trim());
          }}
        />
      )}
    </>
  );
}

// Helpers

/** Of the right form, and one that formatting understands. */
function isLanguage(tag: string): boolean {
  if (!languageSchema.safeParse(tag).success) return false;
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}
