'use client';

import { memo, useId } from 'react';
import { classes } from '@/app/_controls/classes';
import { describedBy } from '@/app/_fields/describedBy';
import { useNumberText } from '@/app/_fields/useNumberText';
import { wholePieces } from '@/app/_numbers/wholePieces';
import { MOST_BROUGHT } from '@/app/_words/stall/bringWords';
import { notedBringWords } from '@/app/_words/stall/notedWords';
import type { StallGoods } from '@/shared/schemas/stallDay';
import styles from './HeldField.module.css';

type HeldFieldProps = Readonly<{
  /** A size, or a design of goods without sizes. */
  label: string;
  /** True where the label stands above on a wide screen too, and not only on a phone. */
  isNamed: boolean;
  /** The maker's number; null where none is held, and the advice stands in its place. */
  held: number | null;
  advised: number;
  /** What was noted at the last fair; null where nothing was. */
  noted: number | null;
  jobId: string;
  lineId: string;
  size: string;
  /** What undo calls it: “Fern in L”. */
  name: string;
  /** The same function for as long as the grid stands. */
  onHold: (goods: StallGoods, name: string, to: number | null) => void;
}>;

/** A count in two halves: what the maker brings, typed, and what is advised, tinted where they differ. */
export const HeldField = memo(function HeldField(props: HeldFieldProps) {
  const { label, isNamed, held, advised, noted, jobId, lineId, size, name, onHold } = props;
  const id = useId();
  const { input, problem, waiting } = useNumberText({
    ...wholePieces,
    value: held,
    min: 0,
    max: MOST_BROUGHT,
    onCommit: (to) => onHold({ jobId, lineId, size }, name, to),
    whenEmpty: `The ${advised} advised are brought.`,
  });
  const isWrong = problem !== null && !waiting;
  const differs = held !== null && held !== advised;
  return (
    <div className={styles.field}>
      <div className={styles.size}>
        <label className={classes(styles.label, !isNamed && styles.phoneLabel)} htmlFor={id}>
          {label}
        </label>
        {noted !== null && <p className={styles.noted}>{notedBringWords(noted)}</p>}
        <div className={classes(styles.box, isWrong && styles.wrong, held === null && styles.followed)}>
          <input
            {...input}
            className={styles.mine}
            id={id}
            placeholder={String(advised)}
            aria-describedby={describedBy(id, { hint: 'advised', issue: problem ?? undefined })}
          />
          <span className={classes(styles.advised, differs && styles.differs)} id={`${id}-hint`}>
            <span className="visuallyHidden">advised </span>
            {advised}
            {noted !== null && <span className="visuallyHidden">, {notedBringWords(noted)}</span>}
          </span>
        </div>
      </div>
      <p className={classes(styles.issue, waiting && styles.waiting)} id={`${id}-issue`} aria-live="polite">
        {problem !== null && `${label}: ${problem}`}
      </p>
    </div>
  );
});
