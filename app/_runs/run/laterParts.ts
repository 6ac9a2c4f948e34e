import { lazy } from '@/app/_network/lazy';

/** What stands further down or is folded away, fetched behind what is seen first. */
export const laterParts = {
  troubles: lazy(() => import('./Troubles').then(({ Troubles }) => Troubles)),
  mirror: lazy(() => import('@/app/_runBook/MirrorNote').then(({ MirrorNote }) => MirrorNote)),
  late: lazy(() => import('./begun/BegunLate').then(({ BegunLate }) => BegunLate)),
  causes: lazy(() => import('@/app/_runBook/MissingCauses').then(({ MissingCauses }) => MissingCauses)),
  clock: lazy(() => import('@/app/_runBook/RunClock').then(({ RunClock }) => RunClock)),
  kept: lazy(() => import('@/app/_openWork/KeptByOthers').then(({ KeptByOthers }) => KeptByOthers)),
  begin: lazy(() => import('./BeginRun').then(({ BeginRun }) => BeginRun)),
  works: lazy(() => import('./sections/WorksFields').then(({ WorksFields }) => WorksFields)),
  sizes: lazy(() => import('./sections/SizeOrder').then(({ SizeOrder }) => SizeOrder)),
  blocks: lazy(() => import('./sections/BlockFields').then(({ BlockFields }) => BlockFields)),
  waits: lazy(() => import('./sections/WaitFields').then(({ WaitFields }) => WaitFields)),
  pace: lazy(() => import('./sections/PaceSection').then(({ PaceSection }) => PaceSection)),
  checks: lazy(() => import('./sections/ChecksSection').then(({ ChecksSection }) => ChecksSection)),
  goods: lazy(() => import('./sections/GoodsSection').then(({ GoodsSection }) => GoodsSection)),
  paper: lazy(() => import('@/app/_runSheet/RunSheetSection').then(({ RunSheetSection }) => RunSheetSection)),
  away: lazy(() => import('./PutAway').then(({ PutAway }) => PutAway)),
} as const;
