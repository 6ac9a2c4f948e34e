'use client';

import type { DocumentBodies } from '@/lib/kinds/kinds';
import { appDocuments } from './appDocuments';
import { type Documents, useDocumentStore } from './useDocumentStore';

/** The maker's documents. */
export const useDocuments = (): Documents<DocumentBodies> => useDocumentStore(appDocuments());
