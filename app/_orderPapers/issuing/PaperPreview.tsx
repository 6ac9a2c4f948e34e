'use client';

import { useMemo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { PaperSheet } from '@/app/_papers/sheet/PaperSheet';
import { usePictureAddresses } from '@/app/_papers/sheet/usePictureAddresses';
import { type PaperSource, paperOf } from '@/lib/papers/paperOf';
import { picturesOf } from '@/lib/papers/picturesOf';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import styles from './PaperPreview.module.css';

type PaperPreviewProps = Readonly<{
  source: PaperSource;
  words: OrderOnPaper['workspace']['workshop']['papers']['words'];
  readFile: OrderOnPaper['workspace']['readFile'];
}>;

/** What will stand on a paper: on a phone its upper part until the whole is asked for. */
export function PaperPreview({ source, words, readFile }: PaperPreviewProps) {
  const [isWhole, setWhole] = useState(false);
  const paper = useMemo(() => paperOf(source, labelsFor(source.body.language, words)), [source, words]);
  const pictures = usePictureAddresses(picturesOf(paper), readFile);
  return (
    <div className={styles.preview}>
      {/* Before the paper, so that it stays under the finger while the paper grows. */}
      <div className={styles.toggle}>
        <Button expanded={isWhole} onPress={() => setWhole(!isWhole)}>
          Show the whole paper
        </Button>
      </div>
      <div className={classes(!isWhole && styles.upper)}>
        <PaperSheet {...{ paper, pictures }} />
      </div>
    </div>
  );
}
