import { holdInSight } from './holdInSight';

/**
 * Brings a section into sight, or what stands in its place, and takes the focus to its heading; also when it comes
 * later.
 *
 * @returns what ends the waiting for it
 */
export function goToSection(id: string): () => void {
  let ledTo: HTMLElement | null = null;
  return holdInSight(() => {
    const section = shownSection(id);
    if (section === null) return;
    section.scrollIntoView({ block: 'start' });
    const heading = document.getElementById(`${section.id}-heading`);
    if (heading === null || heading === ledTo) return;
    ledTo = heading;
    heading.focus({ preventScroll: true });
  });
}

// Helpers

function shownSection(id: string): HTMLElement | null {
  const places = [id, `${id}-waits`].map((one) => document.getElementById(one));
  return places.find((one) => one !== null && one.closest('[hidden]') === null) ?? null;
}
