import type { SaveFailure } from '@/app/_backend/saveFailure';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';

/** How far the issuing of a paper is. */
export type IssueState =
  | { readonly kind: 'none' }
  /** `isOvertaken`: another tab was given the number meanwhile, and it is made again. */
  | { readonly kind: 'issuing'; readonly isOvertaken: boolean }
  | { readonly kind: 'issued'; readonly lost: number }
  /** Asked for while something stood in the way. */
  | { readonly kind: 'refused' }
  | { readonly kind: 'overtaken' }
  /** Another tab issued one of its kind while this one was made. */
  | { readonly kind: 'anotherWasFirst' }
  | { readonly kind: 'notKept'; readonly why: SaveFailure }
  /** `why` is null where the part of the app that writes papers could not be fetched. */
  | { readonly kind: 'notWritten'; readonly why: string | null };

/** @returns what is said beside the button that issues; null where there is nothing to say. */
export function issueWords(state: IssueState): string | null {
  switch (state.kind) {
    case 'none':
      return null;
    case 'issuing':
      return state.isOvertaken
        ? 'Another tab was given this number meanwhile. The paper is made again for the next.'
        : 'It is being made and kept.';
    case 'issued':
      return state.lost === 0
        ? 'It is kept with its file. Send or save it below.'
        : `It is kept with its file; ${state.lost === 1 ? 'a picture' : `${state.lost} pictures`} could not be shown, so the place is empty. Take the picture in again and issue the next version.`;
    case 'refused':
      return 'It is not issued: see what stands in the way.';
    case 'overtaken':
      return 'It is not issued: other tabs were given its number each time. Close them, and try again.';
    case 'anotherWasFirst':
      return 'It is not issued, and no number is used: another tab was first. See below what went out, and issue it again if it is still wanted.';
    case 'notKept':
      // Paper, file and number are kept together or not at all, so that no number is lost.
      return `It is not issued, and no number is used. ${saveFailureWords[state.why]}`;
    case 'notWritten':
      return `It is not issued, and no number is used: ${
        state.why === null
          ? 'the part of the app that writes papers could not be fetched. Try again once there is a network.'
          : `the file could not be written (${state.why}). Try again.`
      }`;
    default:
      return state satisfies never;
  }
}

/** What is told of pictures that a paper has no file of, before it goes out. */
export const lostPicturesWords = (count: number): string =>
  count === 0
    ? ''
    : `${count === 1 ? 'One picture' : `${count} pictures`} cannot be shown on it: the place stays empty, with its name. Take the picture in again, as PNG or JPEG.`;
