import { today } from '@/app/_clock/useToday';
import { saveFile } from '@/app/_files/saveFile';
import type { FullBackup } from '@/app/_store/fullBackup';

/**
 * Hands the maker everything as one file, pictures included.
 *
 * @returns what to say of pictures that are not in it; null where all are
 */
export async function saveEverything(exportWithFiles: () => Promise<FullBackup>): Promise<string | null> {
  const { backup, leftOut } = await exportWithFiles();
  saveFile(`pressminute-${today()}.json`, backup);
  if (leftOut === 0) return null;
  const which = leftOut === 1 ? 'One picture’s file is' : `${leftOut} pictures’ files are`;
  return `${which} not in the copy, too large for one file or no longer here. Their figures are; keep the pictures themselves elsewhere.`;
}
