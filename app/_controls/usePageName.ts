import { useEffect } from 'react';

/**
 * Names the browser's tab, and so its history and what is saved of it, after what is open. Not taken back: the page that
 * follows has a name of its own.
 */
export function usePageName(name: string): void {
  useEffect(() => {
    document.title = name;
  }, [name]);
}
