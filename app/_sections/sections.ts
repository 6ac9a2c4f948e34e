/** A section of a long screen, by the id of its element. */
export interface Section<Id extends string = string> {
  readonly id: Id;
  readonly name: string;
}

/** What the index says of a section: one short figure, and whether something is to be done there. */
export interface SectionState {
  readonly text: string;
  readonly tone: 'plain' | 'todo' | 'stop';
  /** How many things are to be done; 0 where nothing is. */
  readonly count: number;
}
