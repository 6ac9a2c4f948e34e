'use client';

import { appDocuments } from './appDocuments';
import type { DocumentBodies } from './documentRegistry';
import { type Documents, useDocumentStore } from './useDocumentStore';

/** The maker's documents. */
export const useDocuments = (): Documents<DocumentBodies> => useDocumentStore(appDocuments());
