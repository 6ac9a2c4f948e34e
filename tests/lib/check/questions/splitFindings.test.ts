import { describe, expect, it } from 'vitest';
import { questionWords } from '@/app/_words/questions/questionWords';
import { checkJob } from '@/lib/check/checkJob';
import { isTyped, type QuestionId } from '@/lib/check/questions/question';
import { splitFindings } from '@/lib/check/questions/splitFindings';
import { regionOf } from '@/lib/examples/regionOf';
import { noChoices } from '@/lib/examples/startChoices';
import { startDraft } from '@/lib/examples/startDraft';
import { applyChanges } from '@/lib/findings/applyChanges';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { club, clubWith, TODAY, told } from '@/tests/fixtures/clubJob';

/** The club order before anybody said how blanks and shirts travel, whose the crest is and how tax is handled. */
const fresh = (): JobInput =>
  clubWith({
    'job.freightIn': null,
    'job.deliveryKm': null,
    'workshop.channels.0.taxMode': null,
    'artwork:club-crest.rights': { state: 'notStated', note: '' },
  });

const split = (input: JobInput) => splitFindings(checkJob(input).findings, input);
const asked = (input: JobInput) => split(input).questions.map(({ id }) => id);

const answeredWith = (input: JobInput, id: QuestionId, answer: 'yes' | 'no' | 'unsure'): JobInput => {
  const changes = split(input).questions.find((question) => question.id === id)?.[answer];
  if (changes == null || isTyped(changes)) throw new Error(`${id} writes nothing for ${answer}`);
  return jobInputSchema.parse(applyChanges(input, changes));
};

describe('what is only to be told', () => {
  it('is asked and is no risk of the job, though the check goes on telling it', () => {
    expect(asked(fresh()).toSorted()).toEqual(['delivery', 'freight', 'pictureOwner', 'taxInside']);
    const { risks } = split(fresh());
    expect(risks.filter(({ id }) => ['RATE-01', 'LAW-05', 'ART-14'].includes(id))).toEqual([]);
    expect(told(fresh(), 'RATE-01').map(({ severity, variant }) => [severity, variant])).toEqual([
      ['caution', 'noFreight'],
      ['caution', 'noDrive'],
    ]);
    expect(told(fresh(), 'LAW-05')).toHaveLength(1);
    expect(told(fresh(), 'ART-14')).toHaveLength(1);
  });

  it('is nothing where permission is promised: that is a risk and stays one', () => {
    const promised = told(club(), 'ART-14');
    expect(promised.map(({ variant }) => variant)).toEqual(['promised']);
    expect(split(club()).risks).toEqual(expect.arrayContaining([...promised]));
  });

  it.each([
    ['freight', 'yes'],
    ['freight', 'no'],
    ['delivery', 'no'],
    ['taxInside', 'yes'],
    ['taxInside', 'no'],
    ['taxInside', 'unsure'],
    ['pictureOwner', 'yes'],
    ['pictureOwner', 'no'],
    ['pictureOwner', 'unsure'],
  ] as const)('is not asked again once it is told: %s, %s', (id, answer) => {
    expect(asked(answeredWith(fresh(), id, answer))).not.toContain(id);
  });

  it('is not asked either while the check has not seen the answer yet', () => {
    const input = answeredWith(fresh(), 'freight', 'no');
    const { risks, questions } = splitFindings(checkJob(fresh()).findings, input);
    expect(questions.map(({ id }) => id)).not.toContain('freight');
    expect(risks.map(({ id }) => id)).not.toContain('RATE-01');
  });

  it('counts a typical freight for yes and none for no', () => {
    expect(answeredWith(fresh(), 'freight', 'yes').job.freightIn).toMatchObject({ origin: 'typical' });
    expect(answeredWith(fresh(), 'freight', 'no').job.freightIn).toMatchObject({ value: 0, origin: 'yours' });
  });

  it('leads to the field where only the maker knows: the way, and a freight nothing is typical for', () => {
    const leads = (input: JobInput, id: QuestionId) =>
      split(input).questions.find((one) => one.id === id)?.yes;
    expect(leads(fresh(), 'delivery')).toEqual({ document: 'job', path: ['deliveryKm'] });
    const baht = { ...fresh(), workshop: { ...fresh().workshop, currency: 'THB' } };
    expect(leads(baht, 'freight')).toMatchObject({ document: 'job', path: ['freightIn'] });
  });

  it('becomes a risk where the maker is not sure whose the picture is', () => {
    const { risks } = split(answeredWith(fresh(), 'pictureOwner', 'unsure'));
    expect(risks.filter(({ id }) => id === 'ART-14').map(({ severity }) => severity)).toEqual(['caution']);
  });

  it('has words of its own for its answers', () => {
    const ways = split(fresh()).questions.map((question) => {
      const { yes, no, unsure } = questionWords(question);
      return [question.id, yes, no, unsure];
    });
    expect(ways).toEqual(
      expect.arrayContaining([
        ['taxInside', 'Inside', 'Added', 'No tax'],
        ['pictureOwner', 'Mine', 'With written permission', 'Not sure'],
        ['freight', 'Yes', 'No', null],
      ]),
    );
  });
});

describe('a first mug of one’s own', () => {
  it('has two things to settle, typical ink and a recipe never pressed; all else is asked', () => {
    const ids = { job: 'job', blank: 'blank', artwork: 'artwork' };
    const { workshop, job, blank, artwork } = startDraft('mug', noChoices(regionOf('en-US')), TODAY, ids);
    const input = jobInputSchema.parse({
      asOf: TODAY,
      workshop,
      job,
      blanks: { blank },
      artworks: { artwork },
    });
    const { risks } = split(input);
    expect(
      risks
        .filter(({ severity }) => severity !== 'note')
        .map(({ id }) => id)
        .toSorted(),
    ).toEqual(['RATE-01', 'REC-12']);
    expect(asked(input).toSorted()).toEqual(['delivery', 'freight', 'pictureOwner', 'taxInside']);
  });
});
