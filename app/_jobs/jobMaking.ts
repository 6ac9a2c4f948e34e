import { today } from '@/app/_clock/useToday';
import { newId } from '@/app/_documents/newId';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { copiedJob } from '@/lib/drafts/copiedJob';
import { freeName } from '@/lib/drafts/freeName';
import { newJob } from '@/lib/drafts/newJob';
import { measuredScrap } from '@/lib/learning/measuredScrap';
import type { Job } from '@/shared/schemas/job';
import { lastCopy } from './lastCopy';

/** The ways a job comes into being; each gives its id, or null where the store took nothing. */
interface JobMaking {
  readonly begin: () => string | null;
  readonly copy: (job: Job) => string | null;
}

/** @returns how new jobs are made from a maker's documents, each as one step to undo. */
export function jobMaking({ workshop, blanks, jobs, edit, entries: noted }: ReadyWorkspace): JobMaking {
  const names = jobs.map(({ job }) => job.name);
  return {
    begin: () => {
      const id = newId();
      const artworkId = newId();
      const last = jobs[0]?.job.lines[0]?.blankId;
      const entries = Object.entries(blanks);
      // Most makers go on with what they printed on last.
      const first = entries.find(([blankId]) => blankId === last) ?? entries[0];
      const { job, artwork } = newJob({
        name: freeName('New job', names),
        day: today(),
        workshop,
        blank: first === undefined ? null : { id: first[0], body: first[1] },
        artworkId,
        measuredScrap:
          first &&
          measuredScrap(
            noted.rateTaken.map(({ body }) => body),
            first[0],
          ),
      });
      const outcome = edit(job.name, [
        { do: 'add', kind: 'artwork', id: artworkId, body: artwork },
        { do: 'add', kind: 'job', id, body: job },
      ]);
      return outcome.state === 'shown' ? id : null;
    },
    copy: (original) => {
      const id = newId();
      const { job, leftOut } = copiedJob(original, names);
      const outcome = edit(job.name, [{ do: 'add', kind: 'job', id, body: job }]);
      if (outcome.state !== 'shown') return null;
      lastCopy.remember({ id, of: original.name, leftOut });
      return id;
    },
  };
}
