import type { Coverage } from '@/shared/schemas/artwork';
import { totalShare } from './generateBlack';

/** @returns the channels of a typed coverage added, 0–4: it is as typed for whatever printer. */
export const coverageTotal = (coverage: Coverage): number =>
  coverage.kind === 'total' ? coverage.total : totalShare(coverage);
