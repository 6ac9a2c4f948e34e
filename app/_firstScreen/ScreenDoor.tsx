'use client';

import { type ComponentType, type ReactNode, useSyncExternalStore } from 'react';
import { type Lazy, lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import styles from './ScreenDoor.module.css';

/** What a page was sent with, which its screen is given as well; null where it has nothing to show yet. */
export interface Sent {
  /** The head of what is about to be shown. */
  readonly sent: ReactNode;
  /** What stands over that head. */
  readonly band: ReactNode;
}

/** A screen whose code is asked for at once and comes beside the first script, not in it. */
export function lazyScreen(load: () => Promise<ComponentType<Sent>>): Lazy<ComponentType<Sent>> {
  const screen = lazy(load);
  // Asked for before anything is drawn; one that fails is asked for again where it is shown, which says so.
  if (typeof window !== 'undefined') screen.fetch().catch(() => undefined);
  return screen;
}

type ScreenDoorProps = Sent & Readonly<{ lazy: Lazy<ComponentType<Sent>> }>;

/** Shows what the page was sent with until its screen is here. */
export function ScreenDoor({ lazy: screen, sent, band }: ScreenDoorProps) {
  const fetched = useLazy(screen);
  // The page takes over what the server wrote, so its first look has to be the same.
  const hasTakenOver = useSyncExternalStore(nothingChanges, yes, no);
  if (hasTakenOver && fetched.kind === 'missing')
    return <PartMissing what="Your workshop" missing={fetched} />;
  if (hasTakenOver && fetched.kind === 'here') {
    const Screen = fetched.value;
    return <Screen sent={sent} band={band} />;
  }
  if (sent !== null)
    return (
      <>
        {band}
        {sent}
      </>
    );
  return (
    <p className={styles.opening} role="status">
      Opening your workshop…
    </p>
  );
}

// Helpers

const nothingChanges = () => () => undefined;
const yes = () => true;
const no = () => false;
