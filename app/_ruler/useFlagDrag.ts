'use client';

import { type PointerEvent, useState } from 'react';
import { nearestStep } from './moveFlag';
import { type RulerBounds, ratioOnRuler } from './rulerMark';

/** A finger is about this wide: what lands within it means the flag. */
const reachPx = 28;

interface FlagDrag {
  readonly value: number;
  readonly bounds: RulerBounds;
  readonly step: number;
  readonly onMove: (value: number) => void;
  readonly onRest?: (() => void) | undefined;
  /** Whether a place so far from the flag, px to the right, lies on what is drawn of it. */
  readonly isOnFlag?: ((fromFlagPx: number) => boolean) | undefined;
}

interface Grip {
  readonly pointer: number;
  readonly offsetPx: number;
  readonly bounds: RulerBounds;
}

/** Lets the flag be dragged. A mouse may also press the bar; a finger must take the flag, as it scrolls there too. */
export function useFlagDrag({ value, bounds, step, onMove, onRest, isOnFlag }: FlagDrag) {
  // The bounds of the moment the flag was taken hold while it moves, so the bar does not run away from it.
  const [grip, setGrip] = useState<Grip | null>(null);

  const moveTo = (event: PointerEvent<Element>, taken: Grip) => {
    const box = event.currentTarget.getBoundingClientRect();
    const ratio = Math.min(
      1,
      Math.max(0, (event.clientX - box.left - taken.offsetPx) / Math.max(1, box.width)),
    );
    const next = nearestStep(taken.bounds.min + ratio * (taken.bounds.max - taken.bounds.min), step);
    if (next !== value) onMove(next);
  };

  return {
    dragging: grip !== null,
    bounds: grip?.bounds ?? bounds,
    handlers: {
      onPointerDown: (event: PointerEvent<Element>) => {
        if (event.button !== 0) return;
        const box = event.currentTarget.getBoundingClientRect();
        const fromFlag = event.clientX - box.left - ratioOnRuler(value, bounds) * box.width;
        const near = Math.abs(fromFlag) <= reachPx || isOnFlag?.(fromFlag) === true;
        if (!near && event.pointerType === 'touch') return;
        event.currentTarget.setPointerCapture(event.pointerId);
        const taken = { pointer: event.pointerId, offsetPx: near ? fromFlag : 0, bounds };
        setGrip(taken);
        if (!near) moveTo(event, taken);
      },
      onPointerMove: (event: PointerEvent<Element>) => {
        if (grip?.pointer === event.pointerId) moveTo(event, grip);
      },
      onPointerUp: () => release(),
      onPointerCancel: () => release(),
    },
  } as const;

  function release() {
    if (grip === null) return;
    setGrip(null);
    onRest?.();
  }
}
