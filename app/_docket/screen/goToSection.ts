/** Brings a section into sight, or what stands in its place, and takes the focus to its heading. */
export function goToSection(id: string): void {
  for (const shown of [id, `${id}-waits`]) {
    const section = document.getElementById(shown);
    if (section === null || section.closest('[hidden]') !== null) continue;
    section.scrollIntoView({ block: 'start' });
    document.getElementById(`${shown}-heading`)?.focus({ preventScroll: true });
    return;
  }
}
