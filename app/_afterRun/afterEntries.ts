import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import type { Lesson } from '@/lib/learning/lesson';
import { type BodyOf, type LearningEdit, takeBack, takeOver } from '@/lib/learning/takeOver';
import type { Edit } from '@/lib/stored/prepareEdit';
import type { RateTaken } from '@/shared/schemas/learnedEvents';
import { setIn } from '@/shared/setIn';

/** Writes a lesson into all its places, in one step with the entry that says so. */
export function noteTakenOver(workspace: ReadyWorkspace, lesson: Lesson, name: string, day: string) {
  const { edits, body } = takeOver(lesson, bodyIn(workspace), day);
  return workspace.note(`Take over ${name}`, [{ kind: 'rateTaken', body }], edits.map(editOf));
}

/** Puts every place of a lesson back as it was; those changed by hand since are left and counted. */
export function noteTakenBack(
  workspace: ReadyWorkspace,
  entry: { readonly id: string; readonly body: RateTaken },
  name: string,
): { readonly left: number; readonly outcome: ReturnType<ReadyWorkspace['note']> } {
  const { edits, left } = takeBack(entry.body, bodyIn(workspace));
  const outcome = workspace.note(
    `Take back ${name}`,
    [{ kind: 'takeBack', body: { entryId: entry.id } }],
    edits.map(editOf),
  );
  return { left: left.length, outcome };
}

// Helpers

const bodyIn =
  ({ workshop, jobs, blanks }: ReadyWorkspace): BodyOf =>
  (kind, id) => {
    if (kind === 'workshop') return workshop;
    return kind === 'job' ? jobs.find((one) => one.id === id)?.job : blanks[id];
  };

function editOf({ kind, id, path, value }: LearningEdit): Edit<DocumentBodies> {
  const to = <Body>(body: Body): Body => setIn(body, path, value);
  return { do: 'change', kind, id: kind === 'workshop' ? WORKSHOP_ID : id, to };
}
