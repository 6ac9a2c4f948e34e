import { FileChooser } from '@/app/_files/FileChooser';
import type { Arriving } from './useArriving';

/** Kinds of file as a browser's field takes them: copies of today and of before. */
const COPY_TYPES = '.zip,.json,application/zip,application/json';

type BringInProps = Readonly<{
  arriving: Arriving;
  /** What the button says; it takes copies and carried drafts alike. */
  button: string;
  kind?: 'strong' | 'plain';
}>;

/** Where a copy or a carried file is chosen or dropped. */
export const BringIn = ({ arriving, button, kind = 'plain' }: BringInProps) => (
  <FileChooser
    button={button}
    kind={kind}
    place={arriving.chooser}
    label="Copy or carried file"
    accept={COPY_TYPES}
    onFiles={arriving.look}
  >
    A copy of everything, or a single thing carried from another device. You see what would come of it before
    anything changes.
  </FileChooser>
);
