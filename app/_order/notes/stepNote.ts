import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { OrderStep } from '@/shared/schemas/orderEvents';
import type { OpenForm } from './useOpenForm';

/** What can be noted by hand; an enquiry and a quote are noted where they are made. */
export type NotedStep = Exclude<OrderStep['what'], 'enquired' | 'quoted' | 'override'>;

export type StepNoteProps = Readonly<{
  on: OrderOnScreen;
  /** What is typed in it is remembered under this name. */
  form: OpenForm;
  /** It was noted. */
  onDone: () => void;
  onLeave: () => void;
}>;
