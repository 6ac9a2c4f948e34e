import { lazy } from '@/app/_network/lazy';

/** Parts of the count that are fetched behind what sells. */
export const laterParts = {
  more: lazy(() => import('./more/MorePanel').then(({ MorePanel }) => MorePanel)),
  asked: lazy(() => import('./more/AskedPanel').then(({ AskedPanel }) => AskedPanel)),
  piece: lazy(() => import('./more/PiecePanel').then(({ PiecePanel }) => PiecePanel)),
  notKept: lazy(() => import('./more/NotKept').then(({ NotKept }) => NotKept)),
} as const;
