'use client';

import { useId } from 'react';
import type { Origin } from '@/app/_controls/OriginMark';
import { describedBy } from './describedBy';
import { FieldFrame } from './FieldFrame';
import styles from './NumberField.module.css';
import { type NumberText, useNumberText } from './useNumberText';

type NumberFieldProps = NumberText &
  Readonly<{
    label: string;
    hint?: string | undefined;
    /** A finding about the value in force, as a sentence. */
    issue?: string | undefined;
    caution?: string | undefined;
    /** Where the value comes from; shown as a mark and by the line under the number. */
    origin?: Origin | undefined;
    /** How many runs a measured value rests on. */
    count?: number | undefined;
    /** True where a label for the id stands elsewhere, beside the field. */
    labelled?: boolean | undefined;
    width?: 'narrow' | 'normal' | 'full' | undefined;
    id?: string | undefined;
  }>;

/** One number with its unit after it; validates what is typed and never changes it. */
export function NumberField(props: NumberFieldProps) {
  const { label, unit, hint, caution, origin, count, labelled, width } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const { input, problem, waiting } = useNumberText(props);
  const issue = problem ?? props.issue;
  return (
    <FieldFrame {...{ id, label, unit, hint, caution, origin, count, labelled, width, issue, waiting }}>
      <input
        {...input}
        className={styles.number}
        id={id}
        aria-invalid={input['aria-invalid'] ?? (props.issue ? true : undefined)}
        aria-describedby={describedBy(id, { unit, hint, caution: issue ? undefined : caution, issue })}
      />
    </FieldFrame>
  );
}
