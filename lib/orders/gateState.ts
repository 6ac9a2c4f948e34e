import type { OrderGate } from '@/shared/schemas/orderEvents';
import { type AgreedSale, agreedSale } from './agreedSale';
import { type ApprovedVersions, approvalHolds } from './approvals';
import { type Ledger, totalMinor } from './ledger';
import type { ArtworkVersion, OutOf } from './orderFacts';

/** How a gate stands: open by what it asks for, by an override alone, or shut. */
export type GateState = 'open' | 'overridden' | 'shut';

/** What is known of an order after some of what happened. */
export interface KnownSoFar {
  /** What was accepted last; null where nothing was, or its quote is not here. */
  readonly agreed: AgreedSale | null;
  readonly isAccepted: boolean;
  /** The quote in force that went out last: its deposit is asked where acceptance itself was overridden. */
  readonly offered: OutOf<'quote'> | null;
  readonly approved: ApprovedVersions;
  readonly ledger: Ledger;
  readonly overrides: ReadonlySet<OrderGate>;
  /** Versions of pictures that were gone on with unapproved. */
  readonly passed: readonly ArtworkVersion[];
  readonly creditDays: number | null;
}

/** @param versions of the pictures in question */
export const gateState = (
  known: KnownSoFar,
  gate: OrderGate,
  versions: readonly ArtworkVersion[],
): GateState =>
  isOpen(known, gate, versions) ? 'open' : isOverridden(known, gate, versions) ? 'overridden' : 'shut';

/** @returns whether all that is owed so far has come; not where nobody knows how much that is. */
export function isPaid({ ledger, agreed }: Pick<KnownSoFar, 'ledger' | 'agreed'>): boolean {
  const owed = totalMinor(ledger, agreed);
  return owed !== null && ledger.receivedMinor >= owed;
}

/** Without approval only what was looked at is gone on with, never a later version of a picture. */
function isOverridden(known: KnownSoFar, gate: OrderGate, versions: readonly ArtworkVersion[]): boolean {
  if (!known.overrides.has(gate)) return false;
  return (
    gate !== 'approval' ||
    versions.every(
      ({ artworkId, version }) =>
        known.approved.get(artworkId) === version ||
        known.passed.some((one) => one.artworkId === artworkId && one.version === version),
    )
  );
}

function isOpen(known: KnownSoFar, gate: OrderGate, versions: readonly ArtworkVersion[]): boolean {
  const { agreed, isAccepted, offered, approved, ledger, creditDays } = known;
  switch (gate) {
    case 'acceptance':
      return isAccepted;
    case 'deposit': {
      const sale = agreed ?? (offered === null ? null : agreedSale(offered, null));
      return sale !== null && ledger.receivedMinor >= sale.depositMinor;
    }
    case 'approval':
      return approvalHolds(approved, versions);
    case 'balance':
      return isPaid(known) || ledger.isOnCredit || (creditDays ?? 0) > 0;
    default:
      return gate satisfies never;
  }
}
