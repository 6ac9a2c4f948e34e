import type { Change } from '@/shared/finding';
import type { Workshop } from '@/shared/schemas/workshop';
import type { Question, QuestionId } from './question';

/**
 * What nobody has told about the workshop yet. It is asked once and for all jobs; a job has no finding for it until
 * there is an answer, and none where that is good.
 *
 * @returns one entry for each thing not yet told, in the order in which it is asked
 */
export function workshopQuestions(workshop: Workshop): readonly Question[] {
  const { room, circuit, habits, printers } = workshop;
  return [
    ...(room.ventilated === null ? [yesNo('ventilated', ['room', 'ventilated'], true, false)] : []),
    ...(circuit === null && habits.ownCircuit === null
      ? [yesNo('ownCircuit', ['habits', 'ownCircuit'], true, false)]
      : []),
    // Straight into the wall is no lead.
    ...(habits.extensionLead === null ? [yesNo('intoWall', ['habits', 'extensionLead'], false, true)] : []),
    ...printers.flatMap(({ name, printedSide }, index): readonly Question[] =>
      printedSide === null ? [sideOf(name, ['printers', index, 'printedSide'])] : [],
    ),
    ...(habits.sewnLabel === null ? [yesNo('sewnLabel', ['habits', 'sewnLabel'], 'kept', 'removed')] : []),
    ...(habits.safetySheets === null ? [yesNo('safetySheets', ['habits', 'safetySheets'], true, false)] : []),
    ...(habits.humidity === null && habits.humidityFits === null
      ? [yesNo('humidity', ['habits', 'humidityFits'], true, false)]
      : []),
  ];
}

const change = (path: Change['path'], value: unknown): readonly Change[] => [
  { document: 'workshop', path, value },
];

const yesNo = (id: QuestionId, path: Change['path'], yes: unknown, no: unknown): Question => ({
  id,
  of: '',
  yes: change(path, yes),
  no: change(path, no),
  unsure: null,
});

/** Not knowing the side is an answer: the check then says how to find out. */
const sideOf = (of: string, path: Change['path']): Question => ({
  id: 'printedSide',
  of,
  yes: change(path, 'up'),
  no: change(path, 'down'),
  unsure: change(path, 'unsure'),
});
