import { lazy } from '@/app/_network/lazy';

/** What is folded away beneath a closed day, fetched when it is opened. */
export const laterParts = {
  late: lazy(() => import('@/app/_stallCar/BringCount').then(({ BringCount }) => BringCount)),
  note: lazy(() => import('@/app/_stallDay/day/NoteFields').then(({ NoteFields }) => NoteFields)),
} as const;
