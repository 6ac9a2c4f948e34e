'use client';

import './globals.css';
import { ErrorScreen } from '@/app/_frame/ErrorScreen';
import { fontClasses } from '@/app/_frame/fonts';
import styles from '@/app/_frame/Shell.module.css';

/** In place of everything, where even the frame failed. */
export default function FrameError({ reset }: Readonly<{ error: Error; reset: () => void }>) {
  return (
    <html lang="en" className={fontClasses}>
      <body>
        <title>Something failed · Pressminute</title>
        <main className={styles.main}>
          <ErrorScreen onRetry={reset} />
        </main>
      </body>
    </html>
  );
}
