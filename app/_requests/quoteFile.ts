import type { Quote } from '@/shared/schemas/orderPapers';

/**
 * The place where a quote becomes a file.
 *
 * @returns the bytes of a PDF; null while no writer of papers is here
 */
export const quoteFile = async (_quote: Quote): Promise<Uint8Array | null> => null;
