'use client';

import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { SureBench } from '@/app/_orderBook/useBench';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import type { OrderPlace } from '@/app/_words/orders/orderPlaces';
import type { PaperTab } from '@/app/_words/orders/papers/paperTabWords';
import { CareCardTab } from './following/CareCardTab';
import { ConfirmationTab } from './following/ConfirmationTab';
import { CreditNoteTab } from './following/CreditNoteTab';
import { DeliveryNoteTab } from './following/DeliveryNoteTab';
import { InvoiceTab } from './following/InvoiceTab';
import { ProofTab } from './following/ProofTab';
import type { PaperChoices } from './following/paperChoices';
import { ReceiptTab } from './following/ReceiptTab';
import { RequestTab } from './following/RequestTab';
import { usePaperChoices } from './following/usePaperChoices';
import styles from './OrderPapers.module.css';
import { type OrderOnPaper, orderOnPaper } from './orderOnPaper';
import { PaperTabs } from './PaperTabs';
import { QuoteTab } from './quote/QuoteTab';
import { tabsNow } from './tabsNow';

type OrderPapersProps = Readonly<{
  workspace: ReadyWorkspace;
  book: OrderBook;
  /** All that was accepted: a quote promises only days that are left beside it. */
  bench: SureBench;
  orderId: string;
  /** The one that was chosen; null shows the next that is to be written. */
  tab: PaperTab | null;
  onTab: (tab: PaperTab) => void;
  /** Leads to a place of the order beside its papers. */
  onRoom: (place: OrderPlace) => void;
}>;

/** The papers of an order: what can go out now, and what went out. */
export function OrderPapers({ workspace, book, bench, orderId, tab, onTab, onRoom }: OrderPapersProps) {
  const found = book.of(orderId);
  const customer = workspace.customers[found?.facts.order.customerId ?? ''];
  const [choices, choose] = usePaperChoices(orderId, (customer?.erasedOn ?? null) !== null);
  if (found === null) return null;
  const { first, more, next } = tabsNow(found);
  const shown = tab ?? next;
  const of = orderOnPaper(workspace, book, found);
  return (
    <section className={styles.papers} aria-labelledby="papers-heading">
      {/* Takes the focus of whoever is sent here. */}
      <h2 className={styles.heading} id="papers-heading" tabIndex={-1}>
        Papers
      </h2>
      <PaperTabs {...{ first, more, shown }} onShow={onTab}>
        <ShownTab
          {...{ of, book, bench, shown, choices, onRoom }}
          isNext={shown === next}
          onChoose={choose}
        />
      </PaperTabs>
    </section>
  );
}

// Helpers

type ShownTabProps = Readonly<{
  of: OrderOnPaper;
  book: OrderBook;
  bench: SureBench;
  shown: PaperTab;
  isNext: boolean;
  choices: PaperChoices;
  onChoose: (change: Partial<PaperChoices>) => void;
  onRoom: (place: OrderPlace) => void;
}>;

function ShownTab({ of, book, bench, shown, isNext, choices, onChoose, onRoom }: ShownTabProps) {
  const tab = { of, isNext, choices, onChoose };
  switch (shown) {
    case 'quote':
      return <QuoteTab {...{ of, book, bench, isNext, onRoom }} />;
    case 'confirmation':
      return <ConfirmationTab {...tab} />;
    case 'proof':
      return <ProofTab {...tab} />;
    case 'paymentRequest':
      return <RequestTab {...tab} />;
    case 'invoice':
      return <InvoiceTab {...tab} />;
    case 'receipt':
      return <ReceiptTab {...tab} />;
    case 'creditNote':
      return <CreditNoteTab {...tab} />;
    case 'deliveryNote':
      return <DeliveryNoteTab {...tab} />;
    case 'careCard':
      return <CareCardTab of={of} />;
    default:
      return shown satisfies never;
  }
}
