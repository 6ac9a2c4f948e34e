import { type Wording, wording } from '@/app/_words/findings/wording';
import type { Formatter } from '@/app/_words/formatter';
import { bytesWords } from '@/app/_words/store/bytesWords';
import type { Attachment } from '@/shared/schemas/keptFile';

/** What a kept file shows or proves, as the list of choices says it. */
export const purposeWords: Readonly<Record<Attachment['purpose'], string>> = {
  permission: 'Permission to use a picture or a name',
  approval: 'Approved proof',
  sample: 'Photo of a sample',
  receipt: 'Receipt',
  exemption: 'Tax exemption',
  other: 'Something else',
};

export type PurposeWords = typeof purposeWords;

/** @returns the line under a file: “Receipt · 1.2 MB · Nov 26, 2026” */
export const attachmentWords = (
  { purpose, bytes, addedOn }: Attachment,
  formatter: Pick<Formatter, 'number' | 'day'>,
  words: PurposeWords = purposeWords,
): string => `${words[purpose]} · ${bytesWords(bytes, formatter)} · ${formatter.day(addedOn)}`;

type Refusal =
  | { readonly code: 'tooLarge'; readonly bytes: number; readonly most: number }
  | { readonly code: 'empty' | 'notReadable' | 'alreadyHere' | 'notAdded' };

/** @returns why a file was not taken in, and what to do */
export function refusedFileWords(name: string, why: Refusal, formatter: Pick<Formatter, 'number'>): Wording {
  switch (why.code) {
    case 'tooLarge':
      return wording(
        `“${name}” has ${bytesWords(why.bytes, formatter)}; a file here may have ${bytesWords(why.most, formatter)}.`,
        'No copy could hold it. Make it smaller, or keep it elsewhere and note where.',
      );
    case 'empty':
      return wording(
        `“${name}” is empty.`,
        'Look whether it was written or sent whole, and choose it again.',
      );
    case 'notReadable':
      return wording(
        `“${name}” could not be read.`,
        'It may have been moved, or be a folder. Choose the file itself.',
      );
    case 'alreadyHere':
      return wording(`“${name}” is here already.`, 'It was not added a second time.');
    case 'notAdded':
      return wording(
        `“${name}” could not be added.`,
        'The list may be full, or changed meanwhile. Remove what is not needed and choose the file again.',
      );
    default:
      return why satisfies never;
  }
}

/** Said where a file is named and the browser no longer has it. */
export const lostFileWords = (name: string): string =>
  `“${name}” is not on this device any more. Bring in a copy that has it, or add the file again.`;
