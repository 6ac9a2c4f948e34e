'use client';

import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import type { VersionPaper } from '@/app/_documents/issuedVersions';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import { focusPaper } from './focusPaper';
import styles from './PriceLists.module.css';
import { bringVersionBack } from './withdrawing';

type WithdrawnVersionsProps = Readonly<{
  papers: readonly VersionPaper[];
  workspace: ReadyWorkspace;
  /** Shows a version that is in force or not. */
  onShow: (id: string) => void;
}>;

/** Versions that were taken out of force, folded away; each can still be looked at. */
export function WithdrawnVersions({ papers, workspace, onShow }: WithdrawnVersionsProps) {
  const formatter = formatterFor(workspace.workshop);
  if (papers.length === 0) return null;
  return (
    <Fold summary="Withdrawn" line={formatter.count(papers.length, 'version')}>
      <p className={styles.words}>They count no more. They stay kept, and their numbers stay used.</p>
      <ul className={styles.items}>
        {papers.map((paper) => {
          const number = paperNumberText(paper.number);
          return (
            <li key={paper.id} className={styles.itemHead}>
              <span>
                Version {number}, {formatter.day(paper.body.issuedOn)}
              </span>
              <span>
                <Button kind="quiet" spoken={`Show version ${number}`} onPress={() => onShow(paper.id)}>
                  Show
                </Button>{' '}
                <Button
                  kind="quiet"
                  spoken={`Put in force again version ${number}`}
                  onPress={() => {
                    bringVersionBack(workspace, paper);
                    onShow(paper.id);
                    focusPaper();
                  }}
                >
                  Put in force again
                </Button>
              </span>
            </li>
          );
        })}
      </ul>
    </Fold>
  );
}
