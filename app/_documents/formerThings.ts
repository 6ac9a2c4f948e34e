'use client';

import { createContext, useCallback, useEffect, useMemo, useState } from 'react';
import type { NameOf } from '@/app/_words/formatter';
import { isPlainObject } from '@/lib/merging/sameValue';
import { claimedName } from '@/lib/stored/claimedName';
import { WORKSHOP_ID } from './documentsByKind';
import { type FormerPart, formerParts, missingParts, partLists } from './formerParts';
import type { Workspace } from './useWorkspace';

/** What things are called that are here or were here, and how what was removed comes back. */
interface FormerThings {
  readonly nameOf: NameOf;
  /** Null where the thing is here, or nobody has it any more. */
  readonly bringBack: (
    kind: string,
    id: string,
  ) => { readonly label: string; readonly onBack: () => void } | null;
}

export const FormerThingsContext = createContext<FormerThings>({ nameOf: () => null, bringBack: () => null });

const none: readonly FormerPart[] = [];

/** Knows removed documents from memory; removed parts of the workshop are looked up in the history once missed. */
export function useFormerThings(workspace: Workspace): FormerThings {
  const { workshop, jobs, documents, removed, unreadable, formerBodies, edit, setField } = workspace;
  const [former, setFormer] = useState(none);
  const missing = useMemo(
    () =>
      workshop === null
        ? []
        : missingParts(
            workshop,
            jobs.map(({ job }) => job),
          ),
    [workshop, jobs],
  );
  // By content: every edit of a job makes a new list that says the same.
  const wanted = missing.map(({ kind, id }) => `${kind} ${id}`).join(', ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: `wanted` stands for `missing`
  useEffect(() => {
    if (missing.length === 0) return setFormer(none);
    let isStale = false;
    const lost = unreadable.flatMap(({ id, raw }) =>
      id === WORKSHOP_ID && isPlainObject(raw) ? [raw.body] : [],
    );
    void formerBodies('workshop', WORKSHOP_ID).then((bodies) => {
      if (!isStale) setFormer(formerParts(missing, [...bodies, ...lost]));
    });
    return () => {
      isStale = true;
    };
  }, [wanted, unreadable, formerBodies]);
  const names = useSteadyNames(documents, removed);
  const nameOf = useCallback<NameOf>(
    (kind, id) =>
      names.has(keyOf(kind, id))
        ? (names.get(keyOf(kind, id)) ?? null)
        : (partOf(former, kind, id)?.name ?? claimedName(unreadable.find(isIt(kind, id))?.raw)),
    [names, unreadable, former],
  );
  return useMemo(
    () => ({
      nameOf,
      bringBack: (kind, id) => {
        const document = removed.find(isIt(kind, id));
        if (document !== undefined) {
          const label = `Bring “${claimedName(document) ?? kind}” back`;
          return { label, onBack: () => edit(label, [{ do: 'restore', kind: document.kind, id }]) };
        }
        const part = partOf(former, kind, id);
        if (part === undefined || workshop === null) return null;
        const label = `Bring “${part.name}” back`;
        const list = partLists[part.kind];
        return {
          label,
          onBack: () => setField({ kind: 'workshop' }, label, [list], [...workshop[list], part.part]),
        };
      },
    }),
    [nameOf, workshop, removed, former, edit, setField],
  );
}

// Helpers

type Named = Workspace['documents'][number];

/** The names of all documents; the same object while none has another: what only says names is not drawn with each edit. */
function useSteadyNames(
  documents: readonly Named[],
  removed: readonly Named[],
): ReadonlyMap<string, string | null> {
  const named = useMemo(
    () =>
      // Of two that claim the same, the first counts.
      [...documents, ...removed]
        .map((one) => [keyOf(one.kind, one.id), claimedName(one)] as const)
        .toReversed(),
    [documents, removed],
  );
  const said = JSON.stringify(named);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `said` is all that `named` says
  return useMemo(() => new Map(named), [said]);
}

const keyOf = (kind: string, id: string): string => `${kind} ${id}`;

const partOf = (former: readonly FormerPart[], kind: string, id: string): FormerPart | undefined =>
  former.find((part) => part.kind === kind && part.id === id);

const isIt = (kind: string, id: string) => (one: { readonly kind: string | null; readonly id: string }) =>
  one.kind === kind && one.id === id;
