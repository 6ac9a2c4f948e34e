'use client';

import { useState } from 'react';
import { type EnquiryDraft, freshEnquiry, isUntouched } from './enquiryDraft';
import { enquiryMemory } from './enquiryMemory';

interface EnquiryTyped {
  readonly draft: EnquiryDraft;
  readonly isOpen: boolean;
  /** Counts how often it was asked for: each time, the hand goes into its first field. */
  readonly asked: number;
  readonly open: () => void;
  /** What is typed stays. */
  readonly close: () => void;
  readonly change: (draft: EnquiryDraft) => void;
  readonly forget: () => void;
}

/** What is typed of an enquiry, kept in the tab until it is noted; where something was typed the form opens with it. */
export function useEnquiryDraft(): EnquiryTyped {
  const [draft, setDraft] = useState<EnquiryDraft>(() => enquiryMemory.recall() ?? freshEnquiry);
  const [isOpen, setOpen] = useState(() => !isUntouched(draft));
  const [asked, setAsked] = useState(0);
  const change = (to: EnquiryDraft) => {
    setDraft(to);
    enquiryMemory.remember(isUntouched(to) ? null : to);
  };
  return {
    draft,
    isOpen,
    asked,
    open: () => {
      setOpen(true);
      setAsked(asked + 1);
    },
    close: () => setOpen(false),
    change,
    forget: () => change(freshEnquiry),
  };
}
