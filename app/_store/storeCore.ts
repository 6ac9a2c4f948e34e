import type { BackendConnection } from '@/app/_backend/backendConnection';
import type { SaveFailure } from '@/app/_backend/saveFailure';
import type { StoreKinds } from '@/lib/stored/registry';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import type { SaveState } from './documentsState';
import type { absorb } from './readBackend';
import type { TabState } from './tabState';
import type { createWriteQueue } from './writeQueue';

/** What the parts of a store share: the state of the tab and the ways to change it. */
export interface StoreCore {
  readonly kinds: StoreKinds;
  readonly tab: string;
  readonly now: () => number;
  readonly connection: BackendConnection;
  readonly queue: ReturnType<typeof createWriteQueue>;
  readonly tabState: () => TabState;
  /** Documents as the screens have them. */
  readonly shown: () => ReadonlyMap<string, Stored>;
  /** Entries that count, as the screens have them. */
  readonly inForce: () => Readonly<Record<string, readonly Entry[]>>;
  readonly hold: (next: Partial<TabState>) => void;
  /** Shows that something is being written. */
  readonly keeping: () => void;
  readonly settledKept: (why: SaveFailure | null) => SaveState;
  /** Takes what was written into the tab's state and tells the other tabs. */
  readonly wrote: (written: WrittenHere, more?: Partial<TabState>) => void;
  /** Looks anew at everything, after much was written, and tells the other tabs. */
  readonly rereadAfter: (ids: readonly string[]) => Promise<void>;
}

type WrittenHere = Parameters<typeof absorb>[1] & {
  readonly entries: readonly Entry[];
  readonly papers?: readonly Paper[];
};
