'use client';

import { Docket } from '@/app/_controls/Card';
import { DocketSection } from '@/app/_controls/CardSection';
import { PageHead } from '@/app/_controls/PageHead';
import { useGoToHash } from '@/app/_controls/useGoToHash';
import { type ReadyMaker, WithWorkshop } from '@/app/_keeping/WithWorkspace';
import styles from './WorkshopParts.module.css';
import { workshopDesk } from './workshopForm';
import { workshopSections } from './workshopSections';

/** Everything every job's price stands on, on one slip. */
export function WorkshopRoom() {
  return <WithWorkshop>{(maker) => <Room maker={maker} />}</WithWorkshop>;
}

// Helpers

function Room({ maker }: Readonly<{ maker: ReadyMaker }>) {
  useGoToHash();
  const desk = workshopDesk(maker);
  return (
    <>
      <PageHead
        title={maker.workshop.name}
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
        <Docket>
          {workshopSections.map(({ id, heading, line, body }, index) => (
            <DocketSection key={id} id={id} numeral={index + 1} heading={heading} line={line}>
              {body(desk)}
            </DocketSection>
          ))}
        </Docket>
      </div>
    </>
  );
}
