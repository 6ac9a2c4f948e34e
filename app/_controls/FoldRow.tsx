'use client';

import { type ReactNode, useContext, useState } from 'react';
import styles from './FoldRow.module.css';
import { openFolds } from './openFolds';
import { isHeldBy, RevealContext } from './reveal';

/** Something folded away behind a few words. */
export interface FoldOfRow {
  /** Unique on the page; with `place` it is remembered on this device. */
  readonly id: string;
  /** The id of its button, where that names a place that may move to another fold. */
  readonly fieldId?: string;
  readonly name: ReactNode;
  /** Ids, or beginnings of ids, of the fields inside: the fold opens when one is to be shown. */
  readonly holds?: readonly string[];
  /** Called on the first opening, so that what nobody looks at is not built. */
  readonly body: () => ReactNode;
}

type FoldRowProps = Readonly<{
  /** What the folds belong to, as the id of a job: each remembers its own. */
  place: string;
  folds: readonly FoldOfRow[];
  /** Buttons at the end of the row. */
  after?: ReactNode;
}>;

/** The reasons under an answer, folded side by side; what is opened stands beneath, in the same order. */
export function FoldRow({ place, folds, after }: FoldRowProps) {
  const reveal = useContext(RevealContext);
  const [turn, setTurn] = useState(0);
  const [open, setOpen] = useState<readonly string[]>(() =>
    folds.flatMap(({ id }) => (openFolds.isOpen(`${place} ${id}`) ? [id] : [])),
  );
  const [opened, setOpened] = useState<readonly string[]>(open);
  const toggle = (id: string, wanted: boolean) => {
    setOpen((now) => [...now.filter((one) => one !== id), ...(wanted ? [id] : [])]);
    // Once opened it stays: a half-typed text is not thrown away by folding.
    if (wanted) setOpened((now) => [...now.filter((one) => one !== id), id]);
    openFolds.remember(`${place} ${id}`, wanted);
  };
  if (reveal.turn !== turn) {
    setTurn(reveal.turn);
    const found = folds.find(({ holds = [] }) => isHeldBy(reveal.id, holds));
    if (found !== undefined) {
      setOpen((now) => [...now.filter((one) => one !== found.id), found.id]);
      setOpened((now) => [...now.filter((one) => one !== found.id), found.id]);
    }
  }
  // One alone is named by its button; of several nothing else says which is which.
  const isNamed = folds.filter(({ id }) => open.includes(id)).length > 1;
  return (
    <div className={styles.room}>
      <div className={styles.row}>
        {folds.map(({ id, fieldId = id, name }) => (
          <button
            key={id}
            id={fieldId}
            className={styles.toggle}
            type="button"
            aria-expanded={open.includes(id)}
            aria-controls={opened.includes(id) ? `${fieldId}-body` : undefined}
            onClick={() => toggle(id, !open.includes(id))}
          >
            {name}
          </button>
        ))}
        {after !== undefined && <div className={styles.after}>{after}</div>}
      </div>
      {folds
        .filter(({ id }) => opened.includes(id))
        .map(({ id, fieldId = id, name, body }) => (
          <div className={styles.body} key={id} id={`${fieldId}-body`} hidden={!open.includes(id)}>
            {isNamed && <p className={styles.name}>{name}</p>}
            {body()}
          </div>
        ))}
    </div>
  );
}
