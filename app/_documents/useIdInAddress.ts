'use client';

import { usePathname } from 'next/navigation';

/**
 * Which document is opened, as the address says: the server sends the same page for all of them. For what is shown once
 * the documents are open; on the server the address may be another's.
 *
 * @param folder such as `/jobs/`
 * @returns an empty text at an address of another folder
 */
export function useIdInAddress(folder: string): string {
  return idInAddress(usePathname(), folder);
}

export function idInAddress(path: string, folder: string): string {
  const [id = ''] = path.startsWith(folder) ? path.slice(folder.length).split('/') : [];
  try {
    return decodeURIComponent(id);
  } catch {
    // A percent sign that stands for no letter: no document has such an id, and the screen says so.
    return id;
  }
}
