import { describe, expect, it } from 'vitest';
import { answerRequest } from '@/app/_requests/answerRequest';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import { checkJob } from '@/lib/check/checkJob';
import { documentFindings } from '@/lib/findings/documentFindings';
import { kinds } from '@/lib/kinds/kinds';
import type { Finding } from '@/shared/finding';
import { clubWith, TODAY } from '@/tests/fixtures/clubJob';

const plain: TextContext = {
  locale: 'en-US',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
};
const ID = 'd1c0a5b8e2f94c07a6b1';

/** Names of fields as the documents write them: none of them is a word. */
const SCHEMA_WORDS =
  /\b(lines|placements|workshop|job|blanks?|artworks?)[.[]|\b[a-z]+(Id|Ids)\b|\bid of\b|\[\d+\]/;

const said = (findings: readonly Finding[], context: TextContext = plain): readonly string[] =>
  findings.map((finding) => {
    const { sentence, detail } = findingWords(finding, context);
    return `${sentence} ${detail}`;
  });

const references = [
  ['printer', 'job.printerId', 'The job names a printer that was removed'],
  ['sheet', 'job.sheetId', 'The job names a sheet that was removed'],
  ['channel', 'job.channelId', 'The job names a sales channel that was removed'],
  ['blank', 'job.lines.0.blankId', 'The line “Club shirt” names a blank that was removed'],
  ['packaging', 'job.lines.0.packagingId', 'The line “Club shirt” names a packaging that was removed'],
  [
    'artwork',
    'job.lines.0.placements.1.artworkId',
    '“Chest badge” of the line “Club shirt” names an artwork that was removed',
  ],
  [
    'press',
    'job.lines.0.placements.1.pressId',
    '“Chest badge” of the line “Club shirt” names a press that was removed',
  ],
] as const;

const broken = (path: string): readonly Finding[] => {
  const { findings } = checkJob(clubWith({ [path]: ID }));
  return findings.filter(({ id }) => id === 'DOC-02');
};

describe('a sentence about a reference that leads nowhere', () => {
  it.each(references)('to a %s says where it stands and no id', (_, path, beginning) => {
    const [sentence = '', ...others] = said(broken(path));
    expect(others).toEqual([]);
    expect(sentence).toContain(beginning);
    expect(sentence).not.toContain(ID);
    expect(sentence).not.toMatch(SCHEMA_WORDS);
  });

  it.each(references)('to a %s says its name where that is known', (kind, path) => {
    const nameOf = (asked: string, id: string) => (asked === kind && id === ID ? 'Old faithful' : null);
    const [sentence = ''] = said(broken(path), { ...plain, nameOf });
    expect(sentence).toContain('“Old faithful”, which was removed or cannot be read');
    expect(sentence).not.toContain(ID);
  });

  it('says none in an answer to a request either', () => {
    const input = clubWith(Object.fromEntries(references.map(([, path]) => [path, ID])));
    const answer = answerRequest(input, TODAY);
    expect(answer.findings.filter(({ id }) => id === 'DOC-02')).toHaveLength(references.length);
    for (const { message, detail } of answer.findings) expect(`${message} ${detail}`).not.toContain(ID);
  });
});

describe('a sentence about documents', () => {
  it('of which two share an id says their place', () => {
    const { workshop, job } = clubWith({});
    const [printer] = workshop.printers;
    const [press] = workshop.presses;
    const [line] = job.lines;
    const sentences = said(
      checkJob(
        clubWith({
          'workshop.printers': [
            { ...printer, id: ID },
            { ...printer, id: ID },
          ],
          'workshop.presses': [...workshop.presses, press],
          'job.lines': [line, line],
        }),
      ).findings.filter(({ variant }) => variant === 'repeated'),
    );
    expect(sentences.join('\n')).toContain('Printer 2 of the workshop cannot be told from another');
    expect(sentences.join('\n')).toContain('Line 2 of the job cannot be told from another');
    for (const sentence of sentences) {
      expect(sentence).not.toContain(ID);
      expect(sentence).not.toContain(press?.id);
      expect(sentence).not.toContain(line?.id);
      expect(sentence).not.toMatch(SCHEMA_WORDS);
    }
  });

  it('of a blank goes by its name, or its kind alone', () => {
    const { blanks } = clubWith({});
    const [blank] = Object.values(blanks);
    const value = { ...blank, sizes: 7 };
    const { error } = kinds.blank.schema.safeParse(value);
    const findings = error === undefined ? [] : documentFindings(error, 'blank', { id: ID, value });
    expect(said(findings)[0]).toContain('of the blank must be a list');
    expect(said(findings, { ...plain, nameOf: () => 'White shirt' })[0]).toContain(
      'of the blank “White shirt” must',
    );
  });

  it('whose reference has no form of an id does not repeat it', () => {
    const value = { ...clubWith({}).job, printerId: `${ID} !` };
    const { error } = kinds.job.schema.safeParse(value);
    const sentences = said(error === undefined ? [] : documentFindings(error, 'job', { value }));
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).not.toContain(ID);
  });
});
