/** Id of the part of the screen where papers are made. */
export const PAPERS_ID = 'order-papers';

/** Brings the papers into sight and takes the focus there. */
export function goToPapers(): void {
  const papers = document.getElementById(PAPERS_ID);
  papers?.scrollIntoView({ block: 'start' });
  papers?.focus({ preventScroll: true });
}
