'use client';

import { useState } from 'react';
import { PickRow } from '@/app/_fields/PickRow';
import { casesKey } from '@/app/_trace/casesKey';
import type { FigureNames } from '@/app/_trace/figureName';
import type { Line } from '@/shared/schemas/job';
import { CostTable } from './CostTable';

/** Every line of the cost sheet by size; a phone shows one size beside the whole job. */
export function CostLines({ names, line }: Readonly<{ names: FigureNames; line: Line }>) {
  const [picked, setPicked] = useState('');
  const sizes = names.sheet.cases.filter(({ lineId }) => lineId === line.id).map(({ size }) => size);
  const size = sizes.find((one) => one === picked) ?? sizes[0] ?? '';
  return (
    <>
      {sizes.length > 1 && (
        <PickRow
          label="Size beside the whole job"
          phoneOnly
          value={size}
          choices={sizes.map((value) => ({ value, label: value }))}
          onPick={setPicked}
        />
      )}
      <CostTable key={`${line.id} ${casesKey(names.sheet)}`} {...{ names, line, size }} />
    </>
  );
}
