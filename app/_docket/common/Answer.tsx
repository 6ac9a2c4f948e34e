import type { AnswerWords } from '@/app/_words/docket/answerWords';

/** The answer line of a section, its key figure bold. */
export function Answer({ words }: Readonly<{ words: AnswerWords }>) {
  const { before = '', key, after = '' } = words;
  return (
    <>
      {before}
      <strong>{key}</strong>
      {after}
    </>
  );
}
