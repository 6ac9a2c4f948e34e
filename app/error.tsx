'use client';

import { Trouble } from './_frame/Trouble';

/** In place of a screen that failed; the frame around it stays. */
export default function ScreenError({ reset }: Readonly<{ error: Error; reset: () => void }>) {
  return <Trouble onRetry={reset} />;
}
