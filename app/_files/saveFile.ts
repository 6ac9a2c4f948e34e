import { saveBytes } from './saveBytes';

/** Hands the maker a file of readable JSON. */
export function saveFile(name: string, content: unknown): void {
  saveBytes(name, new TextEncoder().encode(JSON.stringify(content, null, 2)), 'application/json');
}
