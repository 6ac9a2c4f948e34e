import type { StoreStatus } from '@/app/_store/documentsState';

type Why = Extract<StoreStatus, { status: 'failed' }>['why'];

/** Why nothing can be opened, and what to do. */
export const storeFailedWords: Readonly<Record<Why, string>> = {
  newerStore:
    'What is kept here was written by a newer version of the app. Reload the page to get it; nothing is overwritten.',
  diskFull:
    'The device has no room left to open what is kept. Nothing is lost: free some space, then try again.',
  cannotOpen:
    'The browser did not open what is kept on this device. Nothing is lost: close other tabs of this page, then try again.',
  schemasMissing:
    'A part of the app that reads what is kept could not be fetched. Nothing is lost: try again once there is a network.',
  examplesMissing:
    'The examples that a first visit starts with could not be fetched. Try again once there is a network.',
};
