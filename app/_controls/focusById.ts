/** Takes the focus to an element that stays, before the one that had it goes. */
export function focusById(id: string): void {
  document.getElementById(id)?.focus({ preventScroll: true });
}
