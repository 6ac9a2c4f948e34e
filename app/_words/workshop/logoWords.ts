import { refusedFileWords } from '@/app/_words/attachments/attachmentWords';
import { pictureProblemWords } from '@/app/_words/docket/pictureProblemWords';
import { type Wording, wording } from '@/app/_words/findings/wording';
import type { Formatter } from '@/app/_words/formatter';
import { bytesWords } from '@/app/_words/store/bytesWords';
import type { PictureProblem } from '@/lib/picture/pictureProblem';

type Refusal =
  | { readonly why: 'file'; readonly refusal: Parameters<typeof refusedFileWords>[1] }
  | { readonly why: 'picture'; readonly problem: PictureProblem }
  | { readonly why: 'heavy'; readonly bytes: number; readonly most: number }
  | { readonly why: 'drawing' };

/** @returns why a file cannot stand at the head of papers, and what to do */
export function logoRefusalWords(
  name: string,
  refusal: Refusal,
  formatter: Pick<Formatter, 'number'>,
  locale: string,
): Wording {
  switch (refusal.why) {
    case 'file':
      return refusedFileWords(name, refusal.refusal, formatter);
    case 'picture':
      if (refusal.problem.kind === 'notAPicture' || refusal.problem.kind === 'otherFormat')
        return wording(
          `“${name}” is no picture that a paper can show.`,
          'Save it as PNG or JPEG and choose that.',
        );
      return pictureProblemWords(refusal.problem, locale);
    case 'heavy':
      return wording(
        `“${name}” has ${bytesWords(refusal.bytes, formatter)}; a picture at the head of papers may have ${bytesWords(refusal.most, formatter)}.`,
        'Every paper carries it whole. Save it with fewer pixels, 1,000 across are plenty, and choose it again.',
      );
    case 'drawing':
      return wording(
        `“${name}” is a drawing of lines, which a paper cannot show.`,
        'Save it as PNG, about 1,000 pixels across, and choose that.',
      );
    default:
      return refusal satisfies never;
  }
}
