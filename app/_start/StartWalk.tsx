'use client';

import { useRouter } from 'next/navigation';
import { type FormEvent, useEffect, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { OriginMark } from '@/app/_controls/OriginMark';
import { RateField } from '@/app/_fields/RateField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { missingRateWords } from '@/app/_words/fields/missingRateWords';
import { OWN_JOB_ID } from '@/lib/examples/ownWorkshop';
import styles from './Start.module.css';
import { StartProgress } from './StartProgress';
import { startQuestions } from './startQuestions';

type StartWalkProps = Readonly<{
  workspace: ReadyWorkspace;
  place: number;
  /** Null when the walk is over. */
  onGo: (place: number | null) => void;
}>;

const FIELD = 'start-figure';

/** One figure a screen: what is typical, what it changes, and room to type one's own. */
export function StartWalk({ workspace, place, onGo }: StartWalkProps) {
  const router = useRouter();
  const heading = useRef<HTMLHeadingElement>(null);
  const steps = startQuestions(workspace);
  const at = Math.min(place, steps.length - 1);
  const step = steps[at];
  const isLast = at === steps.length - 1;
  // biome-ignore lint/correctness/useExhaustiveDependencies: every new figure takes the focus
  useEffect(() => {
    // A phone would cover half the screen with its keys before the sentence has been read.
    const field = matchMedia('(pointer: fine)').matches ? document.getElementById(FIELD) : null;
    (field ?? heading.current)?.focus();
  }, [at]);
  if (step === undefined) return null;
  const finish = () => {
    router.push(`/jobs/${OWN_JOB_ID}`);
    onGo(null);
  };
  const goOn = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const field = event.currentTarget.querySelector<HTMLInputElement>('input[aria-invalid="true"]');
    // What is typed and not taken would be lost with the field; an empty one may wait.
    if (field !== null && field.value.trim() !== '') field.focus();
    else if (isLast) finish();
    else onGo(at + 1);
  };
  const { label, changes, units, typical, rate, onCommit } = step;
  return (
    <div className={styles.walk}>
      <StartProgress place={at + 1} of={steps.length} />
      <form className={styles.slip} onSubmit={goOn}>
        <h1 ref={heading} className={styles.title} tabIndex={-1}>
          <label htmlFor={FIELD}>{label}</label>
        </h1>
        <p className={styles.changes}>{changes}</p>
        <div className={styles.field}>
          {rate && <OriginMark origin={rate.origin} count={rate.count} />}
          <RateField
            key={label}
            id={FIELD}
            {...{ label, units, typical, rate, onCommit }}
            labelled
            width="full"
            whenMissing={missingRateWords(units[0], workspace.workshop.currency, at === 0)}
          />
        </div>
        <div className={styles.ways}>
          <Button kind="strong" type="submit">
            {rate?.origin === 'typical' ? 'Leave it typical' : 'Go on'}
            {isLast && ', to your first job'}
          </Button>
          {at > 0 && (
            <Button kind="plain" onPress={() => onGo(at - 1)}>
              Back
            </Button>
          )}
        </div>
      </form>
      <p className={styles.quiet}>
        Everything is kept as you type it, and you find it under Workshop and Blanks.{' '}
        {!isLast && (
          <button className={styles.skip} type="button" onClick={finish}>
            Leave the rest typical and open your first job
          </button>
        )}
      </p>
    </div>
  );
}
