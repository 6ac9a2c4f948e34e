import type { OrderGate } from '@/shared/schemas/orderEvents';
import { type AgreedSale, agreedSale } from './agreedSale';
import { type ApprovedVersions, approvalHolds } from './approvals';
import { isOnCredit } from './bills';
import { type Ledger, totalMinor } from './ledger';
import type { ArtworkVersion, OutOf } from './orderFacts';

/** How a gate stands: open by what it asks for, by an override alone, or shut. */
export type GateState = 'open' | 'overridden' | 'shut';

/** A gate that was gone through without what it asks for. */
interface Override {
  readonly gate: OrderGate;
  readonly sale: SaleInView;
}

/** The quote that was accepted last and what was chosen of it; before that the one that is out, whatever is chosen. */
interface SaleInView {
  /** Null where nothing is quoted, or its quote is not here. */
  readonly quoteId: string | null;
  readonly choice: { readonly alternativeId: string | null } | 'open';
}

/** What is known of an order after some of what happened. */
export interface KnownSoFar {
  /** What was accepted last; null where nothing was, or its quote is not here. */
  readonly agreed: AgreedSale | null;
  readonly isAccepted: boolean;
  /** The quote in force that went out last: its deposit is asked where acceptance itself was overridden. */
  readonly offered: OutOf<'quote'> | null;
  readonly approved: ApprovedVersions;
  readonly ledger: Ledger;
  readonly overrides: readonly Override[];
  /** Versions of pictures that were gone on with unapproved. */
  readonly passed: readonly ArtworkVersion[];
  readonly creditDays: number | null;
}

/** @returns what is noted by going on without what a gate asks for. */
export const overrideOf = (gate: OrderGate, known: Pick<KnownSoFar, 'agreed' | 'offered'>): Override => ({
  gate,
  sale: saleInView(known),
});

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

/**
 * Without its money a sale is gone on with, and never another that is agreed later; without approval only what was
 * looked at, never a later version of a picture.
 */
function isOverridden(known: KnownSoFar, gate: OrderGate, versions: readonly ArtworkVersion[]): boolean {
  const passed = known.overrides.filter((one) => one.gate === gate);
  if (gate === 'deposit' || gate === 'balance')
    return passed.some(({ sale }) => isOfSale(sale, saleInView(known)));
  if (passed.length === 0) return false;
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
      return isPaid(known) || isOnCredit(ledger.papers, ledger.receivedMinor) || (creditDays ?? 0) > 0;
    default:
      return gate satisfies never;
  }
}

const saleInView = ({ agreed, offered }: Pick<KnownSoFar, 'agreed' | 'offered'>): SaleInView =>
  agreed === null
    ? { quoteId: offered?.id ?? null, choice: 'open' }
    : { quoteId: agreed.quote.id, choice: { alternativeId: agreed.alternativeId } };

/** What was gone on with before anybody chose holds for each choice of that quote. */
const isOfSale = (passed: SaleInView, now: SaleInView): boolean =>
  passed.quoteId === now.quoteId &&
  (passed.choice === 'open' ||
    (now.choice !== 'open' && passed.choice.alternativeId === now.choice.alternativeId));
