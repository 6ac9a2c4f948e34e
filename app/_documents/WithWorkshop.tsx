'use client';

import type { ReactNode } from 'react';
import type { Workshop } from '@/shared/schemas/workshop';
import { Button } from '../_shell/Button';
import { storeFailedText } from '../_text/storeFailedText';
import { FormerThingsContext, useFormerThings } from './formerThings';
import { LostWorkshop } from './LostWorkshop';
import { type Maker, useMaker } from './useMaker';
import styles from './WithWorkshop.module.css';

/** The maker's documents once they are open, with a workshop among them. */
export type ReadyMaker = Maker & { readonly workshop: Workshop };

/** Shows a screen once the documents are open; until then says calmly how far they are. */
export function WithWorkshop({ children }: Readonly<{ children: (maker: ReadyMaker) => ReactNode }>) {
  const maker = useMaker();
  const { workshop } = maker;
  const former = useFormerThings(maker);
  switch (maker.status) {
    case 'opening':
      return (
        <p className={styles.opening} role="status">
          {maker.waitingFor === 'otherTab'
            ? 'Another tab holds an older version of this page. Close it, and your workshop opens here.'
            : 'Opening your workshop…'}
        </p>
      );
    case 'failed':
      return (
        <div className={styles.failed} role="alert">
          <h1>Your workshop cannot be opened</h1>
          <p>{storeFailedText[maker.why]}</p>
          <Button kind="strong" onPress={() => void maker.retry()}>
            Try again
          </Button>
        </div>
      );
    case 'ready':
      return (
        <FormerThingsContext value={former}>
          {workshop === null ? <LostWorkshop maker={maker} /> : children({ ...maker, workshop })}
        </FormerThingsContext>
      );
    default:
      return maker satisfies never;
  }
}
