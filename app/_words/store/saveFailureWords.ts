import type { SaveFailure } from '@/app/_backend/saveFailure';

/** Why an edit is on the screen but not on the device, and what to do; by what the store reports. */
export const saveFailureWords: Readonly<Record<SaveFailure, string>> = {
  fileGone: 'The file was moved or changed since it was chosen. Nothing was taken in; choose it again.',
  diskFull: 'The device has no room left. What you typed stays here; free some space and try again.',
  diskFailed:
    'The device’s store failed. What you typed stays here; try again, and keep a copy of your work.',
  noStorage: 'This browser keeps nothing on the device. What you typed is gone when this page closes.',
  storageForbidden:
    'The browser forbids keeping anything, as private windows do. Open the page in a normal window.',
  newerTabOpen: 'A newer version of this page is open in another tab. Go on there, or reload this one.',
  newerStore:
    'What is kept here was written by a newer version of the app. Reload to get it; nothing is overwritten.',
  newerDocument: 'This was changed by a newer version of the app. Reload to get it; nothing is overwritten.',
  unreadableDocument: 'What is kept of this cannot be read, so nothing is written over it.',
  connectionLost: 'The browser closed its store. What you typed stays here; try again.',
  brokenText:
    'A sign in the text is broken, as half of an emoji is when it is cut apart. Type the text again without it.',
  writeRefused: 'The browser refused to keep it and did not say why. What you typed stays here; try again.',
};
