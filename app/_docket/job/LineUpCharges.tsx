'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { upChargesWords } from '@/app/_words/docket/upChargesWords';
import type { Line } from '@/shared/schemas/job';
import styles from './LineEditor.module.css';

/** What larger sizes add to the price, in words beside it; typed in the fold. */
export function LineUpCharges({ line }: Readonly<{ line: Line }>) {
  const { currency } = useJob().input.workshop;
  const { locale } = useTextContext();
  const words = upChargesWords(line.upCharges, currency, locale);
  return words === '' ? null : <p className={styles.charges}>{words}</p>;
}
