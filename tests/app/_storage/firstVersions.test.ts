import { describe, expect, it } from 'vitest';
import { documentRegistry } from '@/app/_storage/documentRegistry';
import { readDocument } from '@/lib/stored/readDocument';
import job1 from '../../fixtures/stored/job1.json' with { type: 'json' };
import workshop1 from '../../fixtures/stored/workshop1.json' with { type: 'json' };

/* Records as the first version kept them. */
const read = (raw: unknown) => {
  const reading = readDocument(raw, documentRegistry);
  if (reading.state !== 'readable') throw new Error(JSON.stringify(reading.findings));
  return reading.document;
};

describe('records of the first version', () => {
  it('bring a job whose prints are laid out each by itself, and nothing else changed', () => {
    const { version, body } = read(job1);
    expect(version).toBe(documentRegistry.job.version);
    expect(body).toEqual({ ...job1.body, gang: 'apart' });
  });

  it('bring a workshop of transfer paper, whose printed side is still to be found out', () => {
    const { version, body } = read(workshop1);
    expect(version).toBe(documentRegistry.workshop.version);
    expect(body).toEqual({
      ...workshop1.body,
      printers: workshop1.body.printers.map((printer) => ({ ...printer, printedSide: null })),
      sheets: workshop1.body.sheets.map((sheet) => ({ ...sheet, paper: 'transfer' })),
    });
  });
});
