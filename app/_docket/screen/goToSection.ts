/**
 * Brings a section into sight, or what stands in its place, and takes the focus to its heading.
 *
 * @returns false where neither is there yet
 */
export function goToSection(id: string): boolean {
  for (const shown of [id, `${id}-waits`]) {
    const section = document.getElementById(shown);
    if (section === null || section.closest('[hidden]') !== null) continue;
    section.scrollIntoView({ block: 'start' });
    document.getElementById(`${shown}-heading`)?.focus({ preventScroll: true });
    return true;
  }
  return false;
}
