/**
 * Has the browser ask before the page is closed or left. Only while that is needed: some browsers do not keep a page
 * for the way back that listens for this.
 */
export function holdPage(isHeld: boolean): void {
  if (typeof window === 'undefined') return;
  if (isHeld) window.addEventListener('beforeunload', ask);
  else window.removeEventListener('beforeunload', ask);
}

function ask(event: BeforeUnloadEvent): void {
  event.preventDefault();
  // Browsers before 2024 ask by this alone.
  event.returnValue = true;
}
