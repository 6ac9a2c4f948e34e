'use client';

import Link from 'next/link';
import { useContext } from 'react';
import { Button } from '@/app/_controls/Button';
import { FindingRow } from '@/app/_controls/FindingRow';
import { fieldIdOf } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { fieldAddress } from '@/app/_documents/fieldAddress';
import { FormerThingsContext } from '@/app/_documents/formerThings';
import { useTextContext } from '@/app/_fields/useTextContext';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { Finding } from '@/shared/finding';
import styles from './FindingItem.module.css';
import { PassedStop } from './PassedStop';
import { WaiveForm } from './WaiveForm';

type FindingItemProps = Readonly<{
  finding: Finding;
  /** Told with the words on the button, by which undo will name it. */
  onFix: (label: string) => void;
}>;

/** A finding of the job: its sentence leads to the field, its button mends it, a stop may be passed with a reason. */
export function FindingItem({ finding, onFix }: FindingItemProps) {
  const { input, show } = useJob();
  const { sentence, detail, fixLabel } = findingWords(finding, useTextContext());
  const { bringBack } = useContext(FormerThingsContext);
  const back = finding.id === 'DOC-02' ? bringBack(finding.facts.kind, finding.facts.id) : null;
  const fieldId = fieldIdOf(finding.where, input.job);
  const address = fieldAddress(finding.where);
  const isPassed = finding.waivedBecause !== undefined;
  return (
    <FindingRow
      severity={finding.severity}
      sentence={
        fieldId !== null && finding.where.path.length > 0 ? (
          <button className={styles.sentence} type="button" onClick={() => show(fieldId)}>
            {sentence}
          </button>
        ) : address !== null ? (
          <Link className={styles.sentence} href={address}>
            {sentence}
          </Link>
        ) : (
          sentence
        )
      }
      detail={detail}
      fix={fixLabel === null || isPassed ? undefined : { label: fixLabel, onFix: () => onFix(fixLabel) }}
    >
      {back !== null && <Button onPress={back.onBack}>{back.label}</Button>}
      {isPassed ? <PassedStop finding={finding} /> : finding.waivable && <WaiveForm finding={finding} />}
    </FindingRow>
  );
}
