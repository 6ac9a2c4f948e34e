import type { LostStore } from '@/app/_store/lostStore';

/** That the browser deleted what was kept while the page was open, and what it cost. */
export const lostStoreWords = ({ files }: LostStore): string =>
  `The browser deleted what was kept here while this page was open. All that the page held has been kept again${
    files === 0
      ? ''
      : `, but ${files === 1 ? 'one file is lost: choose it again, or bring it' : `${files} files are lost: choose them again, or bring them`} back from a copy`
  }. What you did before can no longer be undone. Make a copy now.`;
