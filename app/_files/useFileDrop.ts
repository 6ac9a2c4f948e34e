'use client';

import { type DragEvent, useEffect, useState } from 'react';

/** @returns what a place needs so that files can be dropped on it, and whether some are held over it. */
export function useFileDrop(onFiles: (files: readonly File[]) => void) {
  const [isOver, setIsOver] = useState(false);
  useEffect(keepPageOnMissedDrop, []);
  const zone = {
    onDragOver: (event: DragEvent) => {
      if (!holdsFiles(event.dataTransfer)) return;
      event.preventDefault();
      setIsOver(true);
    },
    onDragLeave: ({ currentTarget, relatedTarget }: DragEvent) => {
      // Passing over what stands inside is no leaving.
      if (!(relatedTarget instanceof Node && currentTarget.contains(relatedTarget))) setIsOver(false);
    },
    onDrop: (event: DragEvent) => {
      const files = [...event.dataTransfer.files];
      setIsOver(false);
      if (files.length === 0) return;
      event.preventDefault();
      onFiles(files);
    },
  };
  return { isOver, zone };
}

// Helpers

/** Text dragged into a field is no affair of ours. */
const holdsFiles = (transfer: DataTransfer | null): boolean =>
  transfer !== null && [...(transfer.types ?? [])].includes('Files');

/** A file dropped beside its place would open in place of the app. */
function keepPageOnMissedDrop(): () => void {
  const stay = (event: globalThis.DragEvent) => {
    if (holdsFiles(event.dataTransfer)) event.preventDefault();
  };
  window.addEventListener('dragover', stay);
  window.addEventListener('drop', stay);
  return () => {
    window.removeEventListener('dragover', stay);
    window.removeEventListener('drop', stay);
  };
}
