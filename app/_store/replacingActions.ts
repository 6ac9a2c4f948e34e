import { readBackup } from '@/lib/stored/readBackup';
import { type Bodies, neededDocuments, type Registry } from '@/lib/stored/registry';
import { arriving } from './arriving';
import type { DocumentActions } from './documentStore';
import type { ReplaceOutcome } from './documentsState';
import { newDocuments } from './newDocuments';
import type { Replacement } from './replaceAll';

interface ReplacingOptions {
  readonly registry: Registry;
  readonly now: () => number;
  readonly replace: (replacement: Omit<Replacement, 'tab' | 'at'>) => Promise<ReplaceOutcome>;
}

/** What puts whole documents in the place of others, each as one step to undo. */
export const replacingActions = <Kinds extends Bodies>({
  registry,
  now,
  replace,
}: ReplacingOptions): Pick<DocumentActions<Kinds>, 'putBeside' | 'importAll'> => ({
  putBeside: (label, documents) =>
    replace({
      label,
      documents: newDocuments(documents, registry, now()).map(arriving),
      unreadable: [],
      files: [],
      staying: 'all',
    }),
  importAll: async (label, file, how = { partly: false }) => {
    const backup = readBackup(file, registry, how);
    if (!backup.ok) return { state: 'refused', findings: backup.problem };
    return replace({
      label,
      documents: backup.value.documents.map(arriving),
      unreadable: backup.value.unreadable,
      files: backup.value.files,
      staying: neededDocuments(registry).map(({ id }) => id),
    });
  },
});
