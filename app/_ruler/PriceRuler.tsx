'use client';

import { type KeyboardEvent, useId, useRef } from 'react';
import { classes } from '@/app/_controls/classes';
import { moveFlag } from './moveFlag';
import styles from './PriceRuler.module.css';
import { RulerDrawing } from './RulerDrawing';
import type { RulerBounds, RulerMark } from './rulerMark';
import { useFlagDrag } from './useFlagDrag';
import { useWidth } from './useWidth';

type PriceRulerProps = Readonly<{
  /** What the flag sets, for a screen reader: "Price of a shirt". */
  label: string;
  marks: readonly RulerMark[];
  flag: Readonly<{ value: number; onMove: (value: number) => void; onRest?: (() => void) | undefined }>;
  bounds: RulerBounds;
  /** The smallest move, in the currency's main unit. */
  step: number;
  /** What the price means, in words: "margin 40.5 %, pays you 56.25 an hour". */
  meaning: string;
  format: (value: number) => string;
  /** Left of this you pay to work; null while it is not known. */
  payToWorkBelow: number | null;
  /** slim has no words and fits at the thumb; fit is slim on a phone and wide elsewhere. */
  size?: 'wide' | 'slim' | 'fit';
  /** Words for old prices shown while a stop withholds new ones: "last good price". */
  stale?: string | undefined;
}>;

/** Money from left to right on a bar from cold to hot: the marks as ticks, the chosen price as a flag to move. */
export function PriceRuler(props: PriceRulerProps) {
  const { label, marks, flag, bounds, step, meaning, format, payToWorkBelow, size = 'fit', stale } = props;
  const box = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(box, 640);
  const listId = useId();
  const drag = useFlagDrag({ value: flag.value, bounds, step, onMove: flag.onMove, onRest: flag.onRest });
  const still = stale !== undefined;

  const keyed = (event: KeyboardEvent) =>
    event.altKey || event.ctrlKey || event.metaKey
      ? null
      : moveFlag(event.key, event.shiftKey, { value: flag.value, step, bounds });
  const keyDown = (event: KeyboardEvent) => {
    const next = keyed(event);
    if (next === null) return;
    event.preventDefault();
    if (next !== flag.value) flag.onMove(next);
  };

  const price = `${format(flag.value)}, ${meaning}`;
  return (
    <div className={classes(styles.ruler, styles[size], still && styles.stale)} ref={box}>
      <div
        className={classes(styles.hold, drag.dragging && styles.dragging)}
        role="slider"
        tabIndex={0}
        aria-label={label}
        aria-valuemin={Math.min(bounds.min, flag.value)}
        aria-valuemax={Math.max(bounds.max, flag.value)}
        aria-valuenow={flag.value}
        aria-valuetext={still ? `${format(flag.value)}, ${stale}` : price}
        aria-disabled={still || undefined}
        aria-describedby={listId}
        onKeyDown={still ? undefined : keyDown}
        onKeyUp={still ? undefined : (event) => keyed(event) !== null && flag.onRest?.()}
        {...(still ? {} : drag.handlers)}
      />
      <RulerDrawing
        {...{ marks, format, payToWorkBelow, widthPx }}
        bounds={drag.bounds}
        flagValue={flag.value}
        stale={stale}
      />
      <p className="visuallyHidden" id={listId}>
        {marks.map((mark) => `${mark.label} ${format(mark.value)}`).join('; ')}
        {payToWorkBelow !== null && `; below ${format(payToWorkBelow)} you pay to work`}
      </p>
    </div>
  );
}
