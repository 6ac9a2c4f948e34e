export const PAPER_HEADING = 'paper-heading';

/** Takes the focus to the paper that is looked at, once the parts have changed places and what was pressed is gone. */
export function focusPaper(): void {
  requestAnimationFrame(() => document.getElementById(PAPER_HEADING)?.focus());
}
