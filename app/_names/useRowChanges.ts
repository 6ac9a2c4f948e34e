'use client';

import { useCallback, useEffect, useRef } from 'react';
import type { NameRow } from '@/shared/schemas/order';
import type { NamesWorkspace } from './namesWorkspace';
import { type ChangeOfNames, type NamedLine, namesEdits } from './orderNames';

type Part = 'name' | 'size' | 'number';

const partNames: Readonly<Record<Part, string>> = { name: 'Name', size: 'Size', number: 'Number' };

/** @returns what can be done to single rows; always the same functions, so that a row is drawn anew only where it changed. */
export function useRowChanges(workspace: NamesWorkspace, orderId: string, named: NamedLine) {
  const latest = useRef({ named, edit: workspace.edit });
  useEffect(() => {
    latest.current = { named, edit: workspace.edit };
  });
  const change = useCallback(
    (what: string, to: ChangeOfNames, key?: string) => {
      const now = latest.current;
      now.edit(`${what} ${now.named.line.name}`, namesEdits(orderId, now.named, to), key);
    },
    [orderId],
  );
  const changePart = useCallback(
    (id: string, part: Part, text: string, act: number) =>
      change(
        `${partNames[part]} for`,
        (now) => now.map((one) => (one.id === id ? { ...one, [part]: text } : one)),
        `${orderId} ${id} ${part} ${act}`,
      ),
    [change, orderId],
  );
  const add = useCallback((row: NameRow) => change('A name for', (now) => [...now, row]), [change]);
  /** @param what it is called in the step */
  const remove = useCallback(
    (id: string, what: string) => change(`Remove ${what} from`, (now) => now.filter((one) => one.id !== id)),
    [change],
  );
  return { changePart, add, remove };
}
