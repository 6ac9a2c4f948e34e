'use client';

import Link from 'next/link';
import { useContext } from 'react';
import { fieldAddress } from '@/app/_documents/fieldAddress';
import styles from './SettingLink.module.css';
import { ShowSetting } from './showSetting';
import type { Setting } from './whereSet';

/** Says where a value is set, and leads there: on this page, or on the screen of its document. */
export function SettingLink({ setting }: Readonly<{ setting: Setting }>) {
  const { isHere, show } = useContext(ShowSetting);
  const { where, words } = setting;
  const address = fieldAddress(where);
  return (
    <p className={styles.where}>
      It is set{' '}
      {isHere(where) ? (
        <button className={styles.link} type="button" onClick={() => show(where)}>
          {words}
        </button>
      ) : address === null ? (
        words
      ) : (
        <Link className={styles.link} href={address}>
          {words}
        </Link>
      )}
      .
    </p>
  );
}
