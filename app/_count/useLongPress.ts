'use client';

import { type PointerEvent, useCallback, useEffect, useRef } from 'react';

const LONG_MS = 500;
/** A thumb never lies quite still, CSS px. */
const STILL_PX = 12;

/**
 * Tells a long press from a tap. The key and the button that ask for a menu do the same, as a long press does by itself
 * on some phones; then it is told once.
 */
export function useLongPress(onTap: () => void, onLong: () => void) {
  const press = useRef<Press>({ timer: null, isDown: false, wasLong: false, x: 0, y: 0 });
  const stop = useCallback(() => {
    const { timer } = press.current;
    if (timer !== null) clearTimeout(timer);
    press.current.timer = null;
  }, []);
  useEffect(() => stop, [stop]);
  const long = () => {
    stop();
    press.current.wasLong = press.current.isDown;
    onLong();
  };
  const lift = () => {
    stop();
    press.current.isDown = false;
  };
  return {
    onPointerDown: ({ button, clientX, clientY }: PointerEvent) => {
      stop();
      const timer = button === 0 ? setTimeout(long, LONG_MS) : null;
      press.current = { timer, isDown: true, wasLong: false, x: clientX, y: clientY };
    },
    onPointerMove: ({ clientX, clientY }: PointerEvent) => {
      const { x, y } = press.current;
      if (Math.hypot(clientX - x, clientY - y) > STILL_PX) stop();
    },
    onPointerUp: lift,
    onPointerCancel: lift,
    onPointerLeave: lift,
    onContextMenu: (event: { preventDefault: () => void }) => {
      event.preventDefault();
      const { isDown, wasLong } = press.current;
      if (!isDown || !wasLong) long();
    },
    onClick: ({ detail }: { detail: number }) => {
      // A key presses no pointer: there is no press before it that could have been long.
      const wasLong = press.current.wasLong && detail > 0;
      press.current.wasLong = false;
      if (!wasLong) onTap();
    },
  };
}

// Helpers

interface Press {
  timer: ReturnType<typeof setTimeout> | null;
  isDown: boolean;
  /** The pointer that is down, or was last, has been held. */
  wasLong: boolean;
  x: number;
  y: number;
}
