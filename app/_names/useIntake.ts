'use client';

import { useEffect, useState } from 'react';
import { type IntakeLook, intakeMemory } from './intakeMemory';

/** What is being taken in at a place, kept in the tab as it changes. */
export function useIntake(place: string) {
  const [recalled] = useState(() => intakeMemory.recall(place));
  const [text, setText] = useState(recalled.text);
  const [look, setLook] = useState<IntakeLook | null>(recalled.look);
  const [isKept, setKept] = useState(true);
  useEffect(() => setKept(intakeMemory.remember(place, { text, look })), [place, text, look]);
  return { text, setText, look, setLook, isKept };
}
