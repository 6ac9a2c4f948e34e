import { deviceMemory } from '@/app/_tab/browserMemory';
import { z } from '@/shared/schemas/z';

const KEY = 'pressminute-year';
const settingSchema = z.strictObject({ firstMonth: z.int().min(1).max(12) });

/** In which month the maker's year begins; kept on the device until another is chosen. */
export const yearSetting = {
  /** @returns 1 for January to 12 for December; January where nobody chose */
  firstMonth: (): number => settingSchema.safeParse(deviceMemory.recall(KEY)).data?.firstMonth ?? 1,
  keepFirstMonth: (firstMonth: number): void => {
    deviceMemory.remember(KEY, { firstMonth });
  },
};
