'use client';

import { useEffect } from 'react';

/** Ctrl or Cmd + Z takes back, with Shift (or Ctrl + Y) makes again; inside a text that is being typed, the text's own. */
export function useUndoKeys(undo: () => Promise<unknown>, redo: () => Promise<unknown>): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      void (key === 'y' || event.shiftKey ? redo() : undo());
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [undo, redo]);
}

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
