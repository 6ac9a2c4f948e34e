'use client';

import { useEffect, useRef, useState } from 'react';
import { appArtwork } from '@/app/_artwork/appArtwork';
import type { PictureNews } from '@/app/_artwork/artworkService';
import { pictureOfReading } from '@/app/_artwork/pictureOfReading';
import { appPreviews } from '@/app/_artwork/previews';
import type { JobWorkspace } from '@/app/_docket/common/useJob';
import { pictureProblemWords } from '@/app/_words/docket/pictureProblemWords';
import { type Wording, wording } from '@/app/_words/findings/wording';
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

type ReadNews = Extract<PictureNews, { kind: 'read' }>;

interface IntakeOptions {
  readonly workspace: JobWorkspace;
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
    read(new File([kept.content], picture.fileName), (_, { reading }) => {
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
          return keepIt(file, news);
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
  const keep = (file: File, { reading, file: { sha256, content }, preview }: ReadNews) => {
    const picture = pictureOfReading(reading, {
      fileId: sha256,
      fileName: shortName(file.name),
      bytes: file.size,
    });
    if (preview !== null) appPreviews().give(picture.fileId, preview);
    const outcome = workspace.editWithFiles(
      `Picture of ${name}`,
      [{ do: 'change', kind: 'artwork', id: artworkId, to: (body) => takePicture(body, picture, approved) }],
      [{ id: picture.fileId, name: picture.fileName, content }],
    );
    shown(file.name, outcome);
  };
  const shown = (fileName: string, { state }: ReturnType<JobWorkspace['editWithFiles']>) => {
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
