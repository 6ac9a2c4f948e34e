import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import type { Lesson } from '@/lib/learning/lesson';
import { type BodyOf, type LearningEdit, takeBack, takeOver } from '@/lib/learning/takeOver';
import type { Edit } from '@/lib/stored/prepareEdit';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';
import { setIn } from '@/shared/setIn';

/** Writes lessons into all their places, in one step with the entries that say so. */
export function noteTakenOver(
  workspace: ReadyWorkspace,
  lessons: readonly Lesson[],
  name: string,
  day: string,
) {
  const taken = lessons.map((lesson) => takeOver(lesson, bodyIn(workspace), day));
  return workspace.note(
    `Take over ${name}`,
    taken.map(({ body }) => ({ kind: 'rateTaken', body })),
    taken.flatMap(({ edits }) => edits.map(editOf)),
  );
}

/** Puts every place of what was taken over together back as it was; those changed by hand since are left and counted. */
export function noteTakenBack(
  workspace: ReadyWorkspace,
  entries: readonly { readonly id: string; readonly body: RateTaken }[],
  name: string,
): { readonly left: number; readonly outcome: ReturnType<ReadyWorkspace['note']> } {
  const back = entries.map(({ body }) => takeBack(body, bodyIn(workspace)));
  const outcome = workspace.note(
    `Take back ${name}`,
    entries.map(({ id }) => ({ kind: 'takeBack', body: { entryId: id } })),
    back.flatMap(({ edits }) => edits.map(editOf)),
  );
  return { left: back.reduce((sum, { left }) => sum + left.length, 0), outcome };
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
