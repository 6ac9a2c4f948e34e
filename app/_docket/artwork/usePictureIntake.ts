'use client';

import { useEffect, useRef, useState } from 'react';
import { appArtwork } from '@/app/_artwork/appArtwork';
import { pictureOfReading } from '@/app/_artwork/pictureOfReading';
import { nextTask } from '@/app/_clock/nextTask';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { EditOutcome } from '@/app/_store/documentsState';
import { pictureProblemWords } from '@/app/_words/docket/pictureProblemWords';
import { type Wording, wording } from '@/app/_words/findings/wording';
import { sha256InSlices } from '@/lib/stored/sha256InSlices';
import { textLimits } from '@/shared/limits';
import { type Picture, pictureSchema } from '@/shared/schemas/picture';
import { readAgain, takePicture } from './takePicture';

/** How far a picture has come that the maker brought in. */
type Intake =
  | { readonly state: 'idle' }
  | {
      readonly state: 'reading';
      readonly name: string;
      readonly stage: 'reading' | 'decoding' | 'measuring';
      readonly share: number;
    }
  /** What reads pictures could not be fetched yet; a new object with every failure. */
  | { readonly state: 'waiting'; readonly name: string; readonly isGone: boolean; readonly again: () => void }
  | { readonly state: 'told'; readonly wording: Wording; readonly isRefusal: boolean };

interface IntakeOptions {
  readonly workspace: Workspace;
  readonly artworkId: string;
  readonly name: string;
  /** Version of it that the customer approved; null where none is. */
  readonly approved: number | null;
  readonly printWidthMm: number;
  readonly locale: string;
}

/** Reads pictures into an artwork, one at a time. Whatever goes wrong, the artwork stays as it was. */
export function usePictureIntake({
  workspace,
  artworkId,
  name,
  approved,
  printWidthMm,
  locale,
}: IntakeOptions) {
  const [intake, setIntake] = useState<Intake>({ state: 'idle' });
  const cancel = useRef<(() => void) | null>(null);
  useEffect(() => () => cancel.current?.(), []);

  const tell = (words: Wording, isRefusal = true) => setIntake({ state: 'told', wording: words, isRefusal });
  const take = (file: File) => read(file, keep);
  const again = async (picture: Picture) => {
    const kept = await workspace.readFile(picture.fileId);
    if (kept === null) {
      return tell(
        wording(
          `The file “${picture.fileName}” is not on this device.`,
          'Choose the picture once more, and it is read anew.',
        ),
      );
    }
    read(new File([kept.content], picture.fileName), async (_, reading) => {
      const { fileId, fileName, bytes } = picture;
      const anew = pictureOfReading(reading, { fileId, fileName, bytes });
      shown(
        picture.fileName,
        workspace.changeArtwork(artworkId, `Picture of ${name}, read again`, (body) => readAgain(body, anew)),
      );
    });
  };
  const read = (file: File, keepIt: typeof keep) => {
    setIntake({ state: 'reading', name: file.name, stage: 'reading', share: 0 });
    const running = appArtwork().read(file, { printWidthMm, crop: null }, (news) => {
      switch (news.kind) {
        case 'progress':
          return setIntake({ state: 'reading', name: file.name, stage: news.stage, share: news.share });
        case 'notStarted':
          return setIntake({ state: 'waiting', name: file.name, isGone: news.isGone, again: news.again });
        case 'read': {
          cancel.current = null;
          return void keepIt(file, news.reading);
        }
        case 'refused':
          return tell(pictureProblemWords(news.problem, locale));
        case 'cancelled':
          return tell(
            wording(`“${file.name}” was not taken in.`, 'You stopped it; nothing was changed.'),
            false,
          );
        case 'failed':
          return tell(
            wording(
              `“${file.name}” could not be read.`,
              `The fault is in the app, not in the file: ${news.why}.`,
            ),
          );
        default:
          return news satisfies never;
      }
    });
    cancel.current = running.cancel;
  };
  const keep = async (file: File, reading: Parameters<typeof pictureOfReading>[0]) => {
    const content = new Uint8Array(await file.arrayBuffer());
    const fileId = await sha256InSlices(content, nextTask);
    const picture = pictureOfReading(reading, {
      fileId,
      fileName: shortName(file.name),
      bytes: file.size,
    });
    const outcome = workspace.editWithFiles(
      `Picture of ${name}`,
      [{ do: 'change', kind: 'artwork', id: artworkId, to: (body) => takePicture(body, picture, approved) }],
      [{ id: picture.fileId, name: picture.fileName, content }],
    );
    shown(file.name, outcome);
  };
  const shown = (fileName: string, { state }: EditOutcome) => {
    if (state === 'shown') setIntake({ state: 'idle' });
    else
      tell(wording(`“${fileName}” could not be put into the artwork.`, 'Open the job anew and try again.'));
  };
  return { intake, take, again, tell, cancel: () => cancel.current?.() };
}

// Helpers

/** Keeps the ending, which says what it is. */
function shortName(name: string): string {
  const plain = name.trim() || 'picture';
  return plain.length <= textLimits(pictureSchema, ['fileName']).longest
    ? plain
    : `${plain.slice(0, 150)}…${plain.slice(-40)}`;
}
