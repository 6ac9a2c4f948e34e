'use client';

import { Button } from '../_shell/Button';

/** Prints the paper, or saves it as PDF, by the browser's own print. */
export function PrintButton({ blockedBy }: Readonly<{ blockedBy: string | undefined }>) {
  return (
    <Button blockedBy={blockedBy} onPress={() => window.print()}>
      Print or save as PDF
    </Button>
  );
}
