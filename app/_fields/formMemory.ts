import { deviceMemory, tabMemory } from '@/app/_tab/browserMemory';
import { z } from '@/shared/schemas/z';

/** A form of an order whose fields are entered together. */
export interface OrderForm {
  readonly orderId: string;
  /** Where it stands and what is noted by it, so that each is remembered for itself. */
  readonly name: string;
  /** The customer was erased: nothing that is typed about them is remembered any more. */
  readonly isErased: boolean;
  /** It takes long to fill in, so that it is kept on the device; left out, in the tab. */
  readonly outlivesTab?: true;
}

/** A text that is no value yet: kept beside the value before it. */
export interface HalfTyped {
  readonly recall: () => string | null;
  readonly remember: (text: string | null) => void;
}

/** What is typed in forms of orders and stall days and not entered yet, a field at a time. */
export const formMemory = {
  /** @returns undefined where nothing was typed in the field */
  recall: (form: OrderForm, field: string): unknown => fieldsOf(form)[field],
  /** @param value undefined forgets it */
  remember(form: OrderForm, field: string, value: unknown): void {
    if (form.isErased) return;
    const { [field]: _, ...others } = fieldsOf(form);
    const fields = value === undefined ? others : { ...others, [field]: value };
    memoryOf(form).remember(keyOf(form), Object.keys(fields).length === 0 ? null : fields);
  },
  forget(form: Pick<OrderForm, 'orderId' | 'name'>): void {
    for (const memory of memories) memory.remember(keyOf(form), null);
  },
  /** @returns names of the forms of an order in which something was typed, of those that begin so */
  begun: (orderId: string, beginning: string): readonly string[] => {
    const start = keyOf({ orderId, name: beginning });
    return memories.flatMap(({ keysOf }) => keysOf(start)).map((key) => key.slice(start.length));
  },
  /** Forgets all that is typed in forms of orders or stall days. */
  forgetOrders(orderIds: readonly string[]): void {
    for (const orderId of orderIds) {
      for (const name of formMemory.begun(orderId, '')) formMemory.forget({ orderId, name });
    }
  },
};

export const halfTyped = (form: OrderForm, field: string): HalfTyped => ({
  recall: () => z.string().safeParse(formMemory.recall(form, `${field} half`)).data ?? null,
  remember: (text) => formMemory.remember(form, `${field} half`, text ?? undefined),
});

// Helpers

const memories = [tabMemory, deviceMemory];

const memoryOf = ({ outlivesTab }: Pick<OrderForm, 'outlivesTab'>) =>
  outlivesTab === true ? deviceMemory : tabMemory;

const keyOf = ({ orderId, name }: Pick<OrderForm, 'orderId' | 'name'>): string =>
  `pressminute-form ${orderId} ${name}`;

const fieldsSchema = z.record(z.string(), z.unknown());

const fieldsOf = (form: OrderForm): Readonly<Record<string, unknown>> =>
  form.isErased ? {} : (fieldsSchema.safeParse(memoryOf(form).recall(keyOf(form))).data ?? {});
