import { tabMemory } from '@/app/_tab/browserMemory';
import { type EnquiryDraft, enquiryDraftSchema } from './enquiryDraft';

const KEY = 'pressminute-enquiry';

/** An enquiry that is typed in this tab and not noted yet, so that a reload finds it again. */
export const enquiryMemory = {
  /** @returns null where none was begun. */
  recall: (): EnquiryDraft | null => enquiryDraftSchema.safeParse(tabMemory.recall(KEY)).data ?? null,
  remember(draft: EnquiryDraft | null): void {
    tabMemory.remember(KEY, draft);
  },
};
