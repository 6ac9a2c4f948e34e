import { type StudyService, startStudyService } from './studyService';

/** Between two questions of one section nobody may hold the worker; it is not stopped for so short a time. */
const LINGER_MS = 2000;

let shared: StudyService | null = null;
let holders = 0;

/** The one study worker of the page: started for the first who needs it, stopped a while after the last. */
export function shareStudyService(): { readonly service: StudyService; readonly giveBack: () => void } {
  holders += 1;
  shared ??= startStudyService();
  return {
    service: shared,
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
