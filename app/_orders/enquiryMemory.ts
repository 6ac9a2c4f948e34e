import { type EnquiryDraft, enquiryDraftSchema } from './enquiryDraft';

const KEY = 'pressminute-enquiry';

/** An enquiry that is typed in this tab and not noted yet, so that a reload finds it again. */
export const enquiryMemory = {
  /** @returns null where none was begun. */
  recall(): EnquiryDraft | null {
    try {
      const kept: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
      return enquiryDraftSchema.safeParse(kept).data ?? null;
    } catch {
      // Forbidden by the browser, or not ours; then the form begins anew.
      return null;
    }
  },
  remember(draft: EnquiryDraft | null): void {
    try {
      if (draft === null) sessionStorage.removeItem(KEY);
      else sessionStorage.setItem(KEY, JSON.stringify(draft));
    } catch {
      // As above.
    }
  },
};
