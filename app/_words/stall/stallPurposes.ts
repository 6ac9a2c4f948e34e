import { type PurposeWords, purposeWords } from '@/app/_words/attachments/attachmentWords';

/** What permits a stall is kept under the purpose of a permission: older devices read no further one. */
export const stallPurposes: PurposeWords = { ...purposeWords, permission: 'Permit or proof of insurance' };
