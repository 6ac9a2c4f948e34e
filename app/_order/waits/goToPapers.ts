/** Of the part of the screen where papers are made. */
const HEADING_ID = 'papers-heading';

/** Brings the papers into sight and takes the focus there. */
export function goToPapers(): void {
  const heading = document.getElementById(HEADING_ID);
  heading?.scrollIntoView({ block: 'start' });
  heading?.focus({ preventScroll: true });
}
