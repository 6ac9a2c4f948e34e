'use client';

import { Fold } from '@/app/_controls/Fold';
import { faultNames, faultSigns, moveWords, ONE_AT_A_TIME } from '@/app/_words/press/faultWords';
import { faultRules } from '@/lib/pressing/faultRules';
import { pressFaults } from '@/shared/tables/faults';
import styles from './Log.module.css';

/** What is tried against each fault, first and then. */
export const FaultTable = () => (
  <Fold summary="What to do about each fault" line={ONE_AT_A_TIME}>
    <div className={styles.scroll}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Seen</th>
            <th scope="col">First</th>
            <th scope="col">Then</th>
          </tr>
        </thead>
        <tbody>
          {pressFaults
            .filter((fault) => faultRules[fault].length > 0)
            .map((fault) => {
              const [first, ...then] = faultRules[fault];
              return (
                <tr key={fault}>
                  <th scope="row">
                    {faultNames[fault]}
                    <span className={styles.sign}>{faultSigns[fault]}</span>
                  </th>
                  <td>{first !== undefined && moveWords[first]}</td>
                  <td>{then.map((move) => moveWords[move]).join(' ')}</td>
                </tr>
              );
            })}
        </tbody>
      </table>
    </div>
  </Fold>
);
