import { lazy } from '@/app/_network/lazy';

/** Parts of an order that are fetched behind what is seen first. */
export const laterParts = {
  papers: lazy(() => import('@/app/_orderPapers/OrderPapers').then(({ OrderPapers }) => OrderPapers)),
  names: lazy(() => import('@/app/_names/NamesPart').then(({ NamesPart }) => NamesPart)),
  stepNote: lazy(() => import('./notes/StepNote').then(({ StepNote }) => StepNote)),
  override: lazy(() => import('./notes/OverrideNote').then(({ OverrideNote }) => OverrideNote)),
  payment: lazy(() => import('./money/PaymentNote').then(({ PaymentNote }) => PaymentNote)),
  payout: lazy(() => import('./money/PayoutNote').then(({ PayoutNote }) => PayoutNote)),
  expense: lazy(() => import('./money/ExpenseNote').then(({ ExpenseNote }) => ExpenseNote)),
  rush: lazy(() => import('./bench/RushLine').then(({ RushLine }) => RushLine)),
  calendar: lazy(() =>
    import('./bench/CalendarFileButton').then(({ CalendarFileButton }) => CalendarFileButton),
  ),
  billTroubles: lazy(() => import('./waits/BillTroubles').then(({ BillTroubles }) => BillTroubles)),
  exposure: lazy(() => import('./money/ExposureDrawing').then(({ ExposureDrawing }) => ExposureDrawing)),
  blanksToBuy: lazy(() => import('./waits/BlanksToBuy').then(({ BlanksToBuy }) => BlanksToBuy)),
  blanksAhead: lazy(() => import('./money/BlanksAhead').then(({ BlanksAhead }) => BlanksAhead)),
  addJob: lazy(() => import('./jobs/AddJob').then(({ AddJob }) => AddJob)),
} as const;
