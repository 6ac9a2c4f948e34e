import type { VersionPaper } from '@/app/_documents/issuedVersions';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { paperNumberText } from '@/app/_words/paperNumberText';

/** Takes a version out of force. The paper stays kept, and its number stays used. */
export function withdrawVersion({ withdraw }: ReadyWorkspace, { id, number }: VersionPaper): void {
  withdraw(`Withdraw version ${paperNumberText(number)}`, id);
}

/** Puts a version that was withdrawn into force again, as it went out. */
export function bringVersionBack({ note }: ReadyWorkspace, { id, number }: VersionPaper): void {
  note(`Version ${paperNumberText(number)} in force again`, [{ kind: 'issuing', body: { paperId: id } }]);
}
