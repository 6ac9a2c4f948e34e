import type { JobInput } from '@/shared/schemas/request';
import { clubEventDay } from './clubEventDay';
import { clubOrder } from './clubOrder';
import { fairMugs, fairShirts } from './fairJobs';

/** The day the files of public/examples speak of; they name it themselves, so their answers do not age. */
export const FILE_DAY = '2026-11-25';

/** @returns the example requests by file name. */
export const exampleFiles = (): Readonly<Record<string, JobInput>> => ({
  'club-order.json': clubOrder(FILE_DAY, clubEventDay(FILE_DAY)),
  'fair-shirts.json': fairShirts(FILE_DAY),
  'fair-mugs.json': fairMugs(FILE_DAY),
});
