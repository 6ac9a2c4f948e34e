import { bodyOfKinds, takenEdits } from '@/app/_documents/takenEdits';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Lesson } from '@/lib/learning/lesson';
import { takeBack, takeOver } from '@/lib/learning/takeOver';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';

/** Writes lessons into all their places, in one step with the entries that say so. */
export function noteTakenOver(
  workspace: ReadyWorkspace,
  lessons: readonly Lesson[],
  name: string,
  day: string,
) {
  const taken = lessons.map((lesson) => takeOver(lesson, bodyOfKinds(workspace), day));
  return workspace.note(
    `Take over ${name}`,
    taken.map(({ body }) => ({ kind: 'rateTaken', body })),
    takenEdits(taken.flatMap(({ edits }) => edits)),
  );
}

/** Puts every place of what was taken over together back as it was; those changed by hand since are left and counted. */
export function noteTakenBack(
  workspace: ReadyWorkspace,
  entries: readonly { readonly id: string; readonly body: RateTaken }[],
  name: string,
): { readonly left: number; readonly outcome: ReturnType<ReadyWorkspace['note']> } {
  const back = entries.map(({ body }) => takeBack(body, bodyOfKinds(workspace)));
  const outcome = workspace.note(
    `Take back ${name}`,
    entries.map(({ id }) => ({ kind: 'takeBack', body: { entryId: id } })),
    takenEdits(back.flatMap(({ edits }) => edits)),
  );
  return { left: back.reduce((sum, { left }) => sum + left.length, 0), outcome };
}
