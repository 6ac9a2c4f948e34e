import type { Job } from '@/shared/schemas/job';

/** A thing a job can stand on. */
export interface UsedThing {
  readonly kind: 'printer' | 'press' | 'sheet' | 'packaging' | 'channel' | 'blank' | 'artwork';
  readonly id: string;
}

/** @returns the jobs that name the thing, which its removal would stop. */
export const jobsUsing = (jobs: readonly Job[], thing: UsedThing): readonly Job[] =>
  jobs.filter((job) => uses(job, thing));

function uses(job: Job, { kind, id }: UsedThing): boolean {
  const placements = job.lines.flatMap((line) => line.placements);
  switch (kind) {
    case 'printer':
      return job.printerId === id;
    case 'sheet':
      return job.sheetId === id;
    case 'channel':
      return job.channelId === id;
    case 'packaging':
      return job.lines.some(({ packagingId }) => packagingId === id);
    case 'blank':
      return job.lines.some(({ blankId }) => blankId === id);
    case 'press':
      return placements.some(({ pressId }) => pressId === id);
    case 'artwork':
      return placements.some(({ artworkId }) => artworkId === id);
    default:
      return kind satisfies never;
  }
}
