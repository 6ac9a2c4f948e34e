'use client';

import { type KeyboardEvent, useId, useRef } from 'react';
import { classes } from '@/app/_controls/classes';
import { isOnCloth } from './flagCloth';
import { labelRoom } from './labelRoom';
import { moveFlag } from './moveFlag';
import styles from './PriceRuler.module.css';
import { RulerDrawing } from './RulerDrawing';
import { RulerList } from './RulerList';
import { RulerTouch } from './RulerTouch';
import { type RulerBounds, type RulerMark, ratioOnRuler } from './rulerMark';
import { useFlagDrag } from './useFlagDrag';
import { useTextScale } from './useTextScale';
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
  /** slim has no words and fits at the thumb or in a bar. */
  size?: 'full' | 'slim';
}>;

/** Money from left to right on a bar from cold to hot: the marks as ticks, the chosen price as a flag to move. */
export function PriceRuler(props: PriceRulerProps) {
  const { label, flag, bounds, step, meaning, format, payToWorkBelow, size = 'full' } = props;
  const box = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(box, 640);
  const scale = useTextScale(box);
  const listId = useId();
  const drag = useFlagDrag({
    value: flag.value,
    bounds,
    step,
    onMove: flag.onMove,
    onRest: flag.onRest,
    // The plate with the price is wider than a finger, and at the ends of the bar it hangs to one side.
    isOnFlag:
      size === 'full'
        ? (fromFlagPx) =>
            isOnCloth(fromFlagPx, {
              ratio: ratioOnRuler(flag.value, bounds),
              text: format(flag.value),
              widthPx,
              scale,
            })
        : undefined,
  });
  const marks = props.marks.toSorted((a, b) => a.value - b.value);
  const room = labelRoom(marks, { bounds: drag.bounds, format, widthPx, scale });

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

  return (
    <div className={classes(styles.ruler, styles[size])} ref={box}>
      <div
        className={classes(styles.hold, drag.dragging && styles.dragging)}
        role="slider"
        tabIndex={0}
        aria-label={label}
        aria-valuemin={Math.min(bounds.min, flag.value)}
        aria-valuemax={Math.max(bounds.max, flag.value)}
        aria-valuenow={flag.value}
        aria-valuetext={`${format(flag.value)}, ${meaning}`}
        aria-describedby={listId}
        onKeyDown={keyDown}
        onKeyUp={(event) => keyed(event) !== null && flag.onRest?.()}
        {...drag.handlers}
      />
      <RulerDrawing
        {...{ marks, format, payToWorkBelow, widthPx, scale, size }}
        bounds={drag.bounds}
        flagValue={flag.value}
        middles={room.kind === 'named' ? room.middles : null}
      />
      {size === 'full' && room.kind === 'figures' && <RulerTouch {...{ marks, format }} />}
      {size === 'full' && room.kind === 'list' && <RulerList {...{ marks, format }} />}
      <p className="visuallyHidden" id={listId}>
        {props.marks.map((mark) => `${mark.label} ${format(mark.value)}`).join('; ')}
        {payToWorkBelow !== null && `; below ${format(payToWorkBelow)} you pay to work`}
      </p>
    </div>
  );
}
