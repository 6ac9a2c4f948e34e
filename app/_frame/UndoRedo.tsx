'use client';

import styles from './UndoRedo.module.css';

type UndoRedoProps = Readonly<{
  /** What undoing takes back, in words; null when there is nothing to take back. */
  undo: string | null;
  redo: string | null;
  onUndo: () => void;
  onRedo: () => void;
}>;

/** Takes the last edit back, or makes it again. */
export function UndoRedo({ undo, redo, onUndo, onRedo }: UndoRedoProps) {
  return (
    <div className={styles.pair}>
      <Step
        name="Undo"
        what={undo}
        onStep={onUndo}
        path="M6.5 3 3 6.5 6.5 10M3.5 6.5h6a3.5 3.5 0 0 1 0 7H7"
      />
      <Step
        name="Redo"
        what={redo}
        onStep={onRedo}
        path="M9.5 3 13 6.5 9.5 10M12.5 6.5h-6a3.5 3.5 0 0 0 0 7H9"
      />
    </div>
  );
}

// Helpers

type StepProps = Readonly<{ name: string; what: string | null; onStep: () => void; path: string }>;

/** Never `disabled`: the key that undid the last step keeps the focus, so redoing is one Tab away. */
function Step({ name, what, onStep, path }: StepProps) {
  const off = what === null;
  return (
    <button
      className={styles.step}
      type="button"
      aria-disabled={off || undefined}
      title={what ?? undefined}
      onClick={off ? undefined : onStep}
    >
      <svg className={styles.arrow} viewBox="0 0 16 16" aria-hidden="true" focusable="false">
        <path d={path} />
      </svg>
      <span className={styles.name}>{name}</span>
      {what !== null && <span className="visuallyHidden">: {what}</span>}
    </button>
  );
}
