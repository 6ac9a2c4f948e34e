import type { Job } from '@/shared/schemas/job';

/** What a job names by id: documents, and parts of the workshop. */
export interface JobLink {
  readonly to: 'printer' | 'press' | 'sheet' | 'packaging' | 'channel' | 'blank' | 'artwork';
  readonly id: string;
  /** Where in the job it is named. */
  readonly path: readonly (string | number)[];
}

/** @returns all that a job names, in the order of the job. */
export const jobLinks = ({ printerId, sheetId, channelId, lines }: Job): readonly JobLink[] => [
  { to: 'printer', id: printerId, path: ['printerId'] },
  { to: 'sheet', id: sheetId, path: ['sheetId'] },
  { to: 'channel', id: channelId, path: ['channelId'] },
  ...lines.flatMap(({ blankId, packagingId, placements }, line): readonly JobLink[] => [
    { to: 'blank', id: blankId, path: ['lines', line, 'blankId'] },
    ...(packagingId === null
      ? []
      : [{ to: 'packaging' as const, id: packagingId, path: ['lines', line, 'packagingId'] }]),
    ...placements.flatMap(({ artworkId, pressId }, place): readonly JobLink[] => [
      { to: 'artwork', id: artworkId, path: ['lines', line, 'placements', place, 'artworkId'] },
      { to: 'press', id: pressId, path: ['lines', line, 'placements', place, 'pressId'] },
    ]),
  ]),
];
