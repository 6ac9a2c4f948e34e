'use client';

import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { PageHead } from '@/app/_controls/PageHead';
import { useGoToHash } from '@/app/_controls/useGoToHash';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import styles from './WorkshopParts.module.css';
import { workshopFields } from './workshopFields';
import { workshopSections } from './workshopSections';

/** Everything every job's price stands on, on one slip. */
export function WorkshopScreen() {
  return <WithWorkspace>{(workspace) => <WorkshopParts workspace={workspace} />}</WithWorkspace>;
}

// Helpers

function WorkshopParts({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  useGoToHash();
  const fields = workshopFields(workspace);
  return (
    <>
      <PageHead
        title={workspace.workshop.name}
        line="What every price stands on. A value is typical until you type your own."
      />
      <div className={styles.room}>
        <nav className={styles.contents} aria-label="Parts of the workshop">
          <ol>
            {workshopSections.map(({ id, heading }, index) => (
              <li key={id}>
                <a href={`#${id}`}>
                  <span className={styles.number} aria-hidden="true">
                    {index + 1}
                  </span>
                  {heading}
                </a>
              </li>
            ))}
          </ol>
        </nav>
        <Card>
          {workshopSections.map(({ id, heading, line, body }, index) => (
            <CardSection key={id} id={id} numeral={index + 1} heading={heading} answer={line}>
              {body(fields)}
            </CardSection>
          ))}
        </Card>
      </div>
    </>
  );
}
