import { type DocumentBodies, kinds } from '@/lib/kinds/kinds';
import type { Registry } from '@/lib/stored/registry';

export type { DocumentBodies };

/** The kinds of document that the app's own store keeps: all there are. */
export const documentRegistry: Registry<DocumentBodies> = kinds;
