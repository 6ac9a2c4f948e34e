import type { StoreCore } from '@/app/_store/storeCore';
import type { CopyActions } from './copyActions';
import type { makeCopy } from './makeCopy';
import type { takeCopy } from './takeCopy';

type Copying = Pick<Parameters<typeof makeCopy>[1], 'readFile'> &
  Pick<Parameters<typeof takeCopy>[3], 'arrive'> & {
    /** Ends once what earlier builds left is settled: until then pictures lie under names that no copy knows. */
    readonly opened: () => Promise<void>;
  };

/** Copies are made and read by code that is fetched when it is first asked for. */
export const copying = (core: StoreCore, { readFile, arrive, opened }: Copying): CopyActions => ({
  makeCopy: async (what, madeOn = null) => {
    await opened();
    return (await import('./makeCopy')).makeCopy(what, { core, readFile, madeOn });
  },
  lookAtCopy: async (file) => {
    await opened();
    return (await import('./takeCopy')).lookAtCopy(file, core);
  },
  takeCopy: async (label, look, how) =>
    (await import('./takeCopy')).takeCopy(label, look, how, { core, arrive }),
});
