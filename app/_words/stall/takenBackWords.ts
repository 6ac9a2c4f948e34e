/** That a plan still counts though it was taken back. */
export const takenBackWords =
  'This plan was taken back, but sales were counted by it, so it still counts and none is lost. To count by another one, fix that one.';
