import type { PressFault } from '@/shared/tables/faults';

/** One thing that is changed against a fault. */
export type FaultMove =
  | 'dwellLonger'
  | 'hotter'
  | 'measurePlaten'
  | 'checkProfileAndSide'
  | 'pressurePadSeams'
  | 'edgeAllowance'
  | 'dwellShorter'
  | 'cooler'
  | 'lessPressure'
  | 'drierPaper'
  | 'lowerInkLimit'
  | 'coolFaster'
  | 'tapeCoolLift'
  | 'pressPillow'
  | 'retapeTighter'
  | 'lintPadPaper'
  | 'roomDampness'
  | 'preheatLonger'
  | 'storeSealed'
  | 'pillowAndTornEdges'
  | 'coolerLonger'
  | 'nozzleCheck'
  | 'realign'
  | 'mirrorCheck'
  | 'newProfile'
  | 'straightenFirst';

/** What is tried first, and what after that, one thing at a time; common practice. `other` is not known well enough. */
export const faultRules: Readonly<Record<PressFault, readonly FaultMove[]>> = {
  pale: ['dwellLonger', 'hotter', 'measurePlaten', 'checkProfileAndSide'],
  patchy: ['pressurePadSeams', 'measurePlaten', 'edgeAllowance'],
  scorched: ['dwellShorter', 'cooler', 'lessPressure'],
  blurred: ['dwellShorter', 'drierPaper', 'lowerInkLimit', 'coolFaster'],
  ghost: ['tapeCoolLift', 'pressPillow', 'retapeTighter'],
  specks: ['lintPadPaper', 'roomDampness'],
  steam: ['preheatLonger', 'drierPaper', 'storeSealed'],
  pressLines: ['pillowAndTornEdges', 'lessPressure', 'coolerLonger'],
  bands: ['nozzleCheck', 'realign'],
  reversed: ['mirrorCheck'],
  shade: ['newProfile'],
  crooked: ['straightenFirst'],
  other: [],
};
