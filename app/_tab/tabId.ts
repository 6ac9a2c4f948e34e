const KEY = 'pressminute-tab';

/** Names this tab, the same again after a reload, so that undo goes on with the edits made here. */
export function tabId(): string {
  const fresh = crypto.randomUUID();
  try {
    const known = sessionStorage.getItem(KEY);
    if (known !== null && /^[0-9a-f-]{36}$/.test(known)) return known;
    sessionStorage.setItem(KEY, fresh);
  } catch {
    // Forbidden or full: the name then lasts until the page is left, and undo takes over the older steps.
  }
  return fresh;
}
