import { appDocuments } from '@/app/_store/appDocuments';
import { saveEverything } from './saveEverything';

/**
 * Saves everything of this device as a file, from wherever it is called.
 *
 * @returns what is wrong, as a sentence; null where it was saved
 */
export const saveWorkshop = () => saveEverything(appDocuments().actions.exportWithFiles);
