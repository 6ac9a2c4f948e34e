import type { Paper } from '@/shared/schemas/happened';
import { sha256OfValue } from './sha256';

/** @returns whether what a paper says is still what its checksum was made of when it went out. */
export const isAsIssued = ({ body, sha256 }: Pick<Paper, 'body' | 'sha256'>): boolean =>
  sha256OfValue(body) === sha256;
