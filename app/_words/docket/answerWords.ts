/** What a section comes to in one line, with the figure that matters set apart. */
export interface AnswerWords {
  readonly before?: string;
  readonly key: string;
  readonly after?: string;
}
