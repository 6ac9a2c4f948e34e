import type { Question, QuestionId } from '@/lib/check/questions/question';

interface QuestionWords {
  readonly question: string;
  /** What hangs on it. */
  readonly why: string;
  readonly yes: string;
  readonly no: string;
  /** Null where there is no third answer. */
  readonly unsure: string | null;
}

type Wording = Pick<QuestionWords, 'question' | 'why'> &
  Partial<Pick<QuestionWords, 'yes' | 'no' | 'unsure'>>;

const words: { readonly [Id in QuestionId]: (of: string) => Wording } = {
  ventilated: () => ({
    question: 'Is the room aired while you press?',
    why: 'Hot dye and coatings give off fumes. For rules on fumes ask your local authority.',
  }),
  ownCircuit: () => ({
    question: 'Does the press hang on a circuit that bears it?',
    why: 'A press and a kettle on one breaker trip it in the middle of a press. Ask a licensed electrician.',
  }),
  intoWall: () => ({
    question: 'Is the press plugged straight into the wall?',
    why: 'Extension leads get hot under a press.',
  }),
  printedSide: (of) => ({
    question: `Does ${of} print the side of the paper that faces up in the tray?`,
    why: 'Only the coated side gives its dye away: a sheet laid in upside down is lost.',
    yes: 'Yes, up',
    no: 'No, down',
  }),
  sewnLabel: () => ({
    question: 'Do sewn labels stay in place and readable?',
    why: 'In many places fibres, origin, maker and care must stay readable on what is sold. Ask your local authority.',
  }),
  safetySheets: () => ({
    question: 'Do you keep the safety data sheets of your ink and coatings?',
    why: 'They say what to do about fumes, spills and skin. The seller of the ink has them.',
  }),
  humidity: () => ({
    question: 'Is the air in the room neither dry nor damp, between 35 and 65 %?',
    why: 'Dry air clogs nozzles and brings lint; damp paper bleeds. A cheap hygrometer tells.',
  }),
  taxInside: (of) => ({
    question: `Are your prices on ${of} with tax inside?`,
    why: 'Tax that nobody added comes out of your own pocket. Ask your local authority which holds for you.',
    yes: 'Inside',
    no: 'Added',
    unsure: 'No tax',
  }),
  pictureOwner: (of) => ({
    question: `Whose picture is ${of}?`,
    why: 'Crests, characters and pictures found online belong to somebody. Ask your local authority if unsure.',
    yes: 'Mine',
    no: 'With written permission',
    unsure: 'Not sure',
  }),
  freight: () => ({
    question: 'Does freight come on top of the blanks?',
    why: 'Yes counts a typical amount where there is one, which you can correct; no counts none.',
  }),
  delivery: () => ({
    question: 'Will you bring it to the customer?',
    why: 'Yes leads to the way there and back; no counts the minutes of delivering and no drive.',
    yes: 'Yes, type the way',
  }),
  forChildren: (of) => ({
    question: `Is ${of} meant for children?`,
    why: 'Goods for children have rules of their own. Ask your local authority.',
  }),
  lintRoll: () => ({
    question: 'Is the cloth rolled for lint before each press?',
    why: 'One fibre under the transfer leaves a coloured speck for good.',
  }),
  tapeEdges: () => ({
    question: 'Are all four edges of the transfer taped?',
    why: 'A shift of 1 mm leaves a second, pale picture beside the first.',
  }),
  coolInPlace: () => ({
    question: 'Does the cloth cool for 10 s or more before the transfer is peeled off?',
    why: 'Opened hot, the dye still moves and smears.',
  }),
  evenCooling: () => ({
    question: 'Are the pieces cooled by a fan, all round?',
    why: 'Hard goods hold their heat, and the picture goes on spreading in them.',
  }),
};

/** A question in words, with what its answers are called. */
export function questionWords({ id, of, unsure }: Question): QuestionWords {
  const wording = words[id](of);
  return { yes: 'Yes', no: 'No', unsure: unsure === null ? null : 'Not sure', ...wording };
}

/** @returns the heading over questions about the workshop. */
export const workshopQuestionsHeading = (count: number): string =>
  count === 1 ? 'One thing about your workshop' : `${count} things about your workshop`;

/** @returns the heading over questions about the blanks and recipes of a job. */
export const jobQuestionsHeading = (count: number): string =>
  count === 1 ? 'One thing about this job' : `${count} things about this job`;

/** @returns the button behind which the rest of them waits. */
export const moreQuestionsWords = (count: number): string =>
  count === 1 ? 'Ask the last one' : `Ask the other ${count}`;
