import { type AskedWorker, askWorker } from '@/app/_workers/askWorker';
import type { StudyRequest } from './studies';

/** What is null where the job cannot be costed, and else typed by the name of the study on both sides of the thread. */
type StudyWorker = AskedWorker<StudyRequest, unknown>;

/** Between two questions of one section nobody may hold the worker; it is not stopped for so short a time. */
const LINGER_MS = 2000;
/** A maker who types is not asked for between the keys. */
const PAUSE_MS = 350;

let shared: StudyWorker | null = null;
let holders = 0;

/** The one study worker of the page: started for the first who needs it, stopped a while after the last. */
export function shareStudyWorker(): { readonly worker: StudyWorker; readonly giveBack: () => void } {
  holders += 1;
  shared ??= askWorker({ start, pauseMs: PAUSE_MS });
  return {
    worker: shared,
    giveBack() {
      holders -= 1;
      setTimeout(() => {
        if (holders > 0) return;
        shared?.stop();
        shared = null;
      }, LINGER_MS);
    },
  };
}

const start = () => new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module' });
