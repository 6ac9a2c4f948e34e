'use client';

import { useEffect, useState } from 'react';
import { type IntakeLook, intakeMemory, untouched } from './intakeMemory';

/**
 * What is being taken in at a place, kept in the tab as it changes.
 *
 * @param isErased whether its customer was erased, in this tab or in another: what stands here goes then, and what comes
 *   after is not kept
 */
export function useIntake(place: string, isErased: boolean) {
  const [recalled] = useState(() => (isErased ? untouched : intakeMemory.recall(place)));
  const [text, setText] = useState(recalled.text);
  const [look, setLook] = useState<IntakeLook | null>(recalled.look);
  const [isKept, setKept] = useState(true);
  const [wasErased, setWasErased] = useState(isErased);
  if (isErased !== wasErased) {
    setWasErased(isErased);
    if (isErased) {
      setText(untouched.text);
      setLook(untouched.look);
    }
  }
  useEffect(() => {
    const isRemembered = intakeMemory.remember(place, isErased ? untouched : { text, look });
    setKept(isRemembered && (!isErased || (text === '' && look === null)));
  }, [place, isErased, text, look]);
  return { text, setText, look, setLook, isKept };
}
