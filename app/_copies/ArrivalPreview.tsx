'use client';

import { type RefObject, useId, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { happenedWords, takeWords } from '@/app/_words/store/arrivalWords';
import { lacksWords, newerRecordsWords } from '@/app/_words/store/copyFileWords';
import { arrivingIn } from '@/app/_words/store/fateWords';
import { onlyHereWords, recountedWords } from '@/app/_words/store/recountedWords';
import type { ArrivalPlan, Choice } from '@/lib/copies/arrival';
import { arrivalGroups, type Choices } from '@/lib/copies/arrivalGroups';
import { allCounted } from '@/lib/copies/entryCounts';
import { ArrivalGroupRow } from './ArrivalGroupRow';
import styles from './ArrivalPreview.module.css';
import { ArrivalSides } from './ArrivalSides';
import { DraftChoices } from './DraftChoices';
import { headlineOf } from './headlineOf';
import { isReadWhole } from './isReadWhole';
import { ReplaceOffer } from './ReplaceOffer';

type ArrivalPreviewProps = Readonly<{
  plan: ArrivalPlan;
  chosen: Choices;
  isBusy: boolean;
  /** What is here could not be saved whole before it makes way. */
  isUnsaved: boolean;
  level: 2 | 3;
  /** Takes the focus when the preview comes. */
  heading: RefObject<HTMLHeadingElement | null>;
  onChoose: (id: string, choice: Choice) => void;
  onTake: () => void;
  onReplace: () => void;
  onLeave: () => void;
}>;

/** A copy, or what was carried, looked at before it is taken: what would come of it, draft by draft where asked. */
export function ArrivalPreview(props: ArrivalPreviewProps) {
  const { plan, chosen, isBusy, level, onTake, onReplace, onLeave } = props;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const [isUnfolded, setUnfolded] = useState(false);
  const id = useId();
  const Heading = level === 2 ? 'h2' : 'h3';
  const isWhole = plan.copy.of === 'everything';
  const groups = arrivalGroups(plan, chosen);
  // What else is here has nothing to do with one job that was carried.
  const told = isWhole ? groups : groups.filter(({ fate }) => fate !== 'onlyHere');
  const headline = headlineOf(plan, groups, formatter);
  const newer = newerRecordsWords(plan.copy.unreadable, formatter);
  const { newPapers, newEntries } = plan.counts;
  const happened = happenedWords({ newPapers, newEntries });
  const happenedCount = newPapers + allCounted(newEntries);
  const recounted = recountedWords(plan.counts);
  const onlyHere = isWhole ? onlyHereWords(plan.counts.entriesOnlyHere, isReadWhole(plan)) : null;
  const brings = groups.some(({ isChange }) => isChange) || happened !== '' || recounted.length > 0;
  const lacks = [...lacksWords(plan.copy.lacks, brings, formatter), ...(newer === null ? [] : [newer])];
  const differing = plan.meetings.filter(({ state }) => state !== 'same');
  const busy = isBusy ? 'It is being brought in.' : undefined;
  return (
    <section className={styles.panel} aria-labelledby={id}>
      <div className={styles.head}>
        <p className={styles.what}>
          {isWhole
            ? 'A copy, looked at before it is taken'
            : 'What was carried, looked at before it is taken'}
        </p>
        <Heading className={styles.headline} id={id} ref={props.heading} tabIndex={-1}>
          <strong>
            <bdi>{headline.bold}</bdi>
          </strong>{' '}
          {headline.rest}
        </Heading>
      </div>
      {lacks.length > 0 && (
        <div className={styles.lacks}>
          {lacks.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      )}
      <ArrivalSides plan={plan} />
      <ul className={styles.groups}>
        {told.map((group) => (
          <ArrivalGroupRow key={group.fate} group={group} plan={plan} />
        ))}
        {happened !== '' && (
          <li className={classes(styles.group, styles.changes)}>
            <span className={styles.count}>{formatter.number(happenedCount)}</span>
            <p>
              {happenedCount === 1 ? 'comes in' : 'come in'}: {happened}
            </p>
          </li>
        )}
        {recounted.map(([count, words]) => (
          <li key={words} className={classes(styles.group, styles.changes)}>
            <span className={styles.count}>{formatter.number(count)}</span>
            <p>{words}</p>
          </li>
        ))}
        {onlyHere !== null && (
          <li className={styles.group}>
            <span className={styles.count}>{formatter.number(onlyHere[0])}</span>
            <p>{onlyHere[1]}</p>
          </li>
        )}
      </ul>
      <div className={styles.acts}>
        {brings && (
          <Button kind="strong" blockedBy={busy} onPress={onTake}>
            {takeWords(groups, happenedCount)}
          </Button>
        )}
        {differing.length > 0 && (
          <Button
            kind={isUnfolded ? 'quiet' : 'plain'}
            expanded={isUnfolded}
            onPress={() => setUnfolded(!isUnfolded)}
          >
            {isUnfolded ? 'Hide the differences' : 'Show each difference'}
          </Button>
        )}
        {isUnfolded && (
          <DraftChoices
            {...{ meetings: differing, chosen }}
            it={arrivingIn(plan.copy.of)}
            onChoose={props.onChoose}
          />
        )}
        <Button blockedBy={busy} onPress={onLeave}>
          Leave everything as it is
        </Button>
        <p className={styles.foot}>
          {brings && 'One press of Undo takes it all back. '}
          {plan.letterTaken &&
            'The other device numbers its papers with the same letter: this one takes another for its next. '}
        </p>
        {isWhole && <ReplaceOffer {...{ plan, busy, lacks, onReplace }} isUnsaved={props.isUnsaved} />}
      </div>
    </section>
  );
}
