'use client';

import { ErrorScreen } from '@/app/_frame/ErrorScreen';

/** In place of a screen that failed; the frame around it stays. */
export default function ScreenError({ reset }: Readonly<{ error: Error; reset: () => void }>) {
  return <ErrorScreen onRetry={reset} />;
}
