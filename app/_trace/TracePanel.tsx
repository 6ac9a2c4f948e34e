'use client';

import { useEffect, useId, useRef, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { type FigureRef, traceFigure } from '@/lib/grid/traceFigure';
import { type FigureNames, figureName, figurePlace } from './figureName';
import { figureWords } from './figureWords';
import { TraceFormula } from './TraceFormula';
import styles from './TracePanel.module.css';
import { TraceTrail } from './TraceTrail';
import { TypedFigure } from './TypedFigure';

type TracePanelProps = Readonly<{
  id: string;
  names: FigureNames;
  /** The figure that was pressed. */
  root: FigureRef;
  /** What is to be said of the pressed figure as it was shown. */
  note?: string | undefined;
  onClose: () => void;
}>;

/** A figure opened to its sum, and onward, chip by chip, down to what was typed. Escape closes it. */
export function TracePanel({ id, names, root, note, onClose }: TracePanelProps) {
  const [way, setWay] = useState<readonly FigureRef[]>([root]);
  const headingId = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  const context = useTextContext();
  const ref = way[way.length - 1] ?? root;
  const trace = traceFigure(names.sheet, ref);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the focus follows each step of the way, and nothing else
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.parentElement?.scrollIntoView?.({ block: 'nearest' });
  }, [way]);

  const steps = way.map((step) => ({ step, name: nameOf(names, step) }));
  return (
    <section
      className={styles.panel}
      id={id}
      aria-labelledby={headingId}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        onClose();
      }}
    >
      {way.length > 1 && (
        <TraceTrail
          names={steps.map(({ name }) => name)}
          onBack={(index) => setWay(way.slice(0, index + 1))}
        />
      )}
      <h3 className={styles.heading} id={headingId} ref={heading} tabIndex={-1}>
        {nameOf(names, ref)}
        {placed(names, ref)}
        {trace !== null && (
          <>
            : <span className={styles.value}>{figureWords(trace.value, trace.unit, context)}</span>
          </>
        )}
      </h3>
      {trace === null ? (
        <p className={styles.says}>This figure is no longer part of the job.</p>
      ) : (
        <>
          <p className={styles.says}>
            {trace.says}
            {way.length === 1 && note !== undefined && ` ${note}`}
          </p>
          {trace.kind === 'typed' ? (
            <TypedFigure {...{ trace, names }} />
          ) : (
            <TraceFormula key={way.length} {...{ trace, names }} onOpen={(next) => setWay([...way, next])} />
          )}
        </>
      )}
      <div className={styles.close}>
        <Button kind="quiet" onPress={onClose}>
          Close
        </Button>
      </div>
    </section>
  );
}

// Helpers

function nameOf(names: FigureNames, ref: FigureRef): string {
  const row = names.sheet.rows.find(({ id }) => id === ref.rowId);
  return figureName(names, ref, row?.label ?? ref.rowId);
}

function placed(names: FigureNames, ref: FigureRef): string {
  const place = figurePlace(names, ref);
  return place === '' ? '' : `, ${place}`;
}
