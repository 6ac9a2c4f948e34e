import { describe, expect, it } from 'vitest';
import { movedWords } from '@/app/_words/afterRun/lessonWords';
import { formatterFor } from '@/app/_words/formatter';
import { foldLearned } from '@/lib/learning/foldLearned';
import { club } from '@/tests/fixtures/clubJob';
import { clubFacts } from '@/tests/fixtures/clubStandard';
import { learnedFrom, learnedRun } from '@/tests/fixtures/learnedRun';

const formatter = formatterFor(club().workshop);

describe('a lesson of scrap', () => {
  const wordsOf = (position: string, facts = clubFacts({ reprints: 0 })) => {
    const lesson = foldLearned(learnedFrom({ runs: [learnedRun(facts)] })).find(
      ({ subject }) => subject.of === 'scrap' && subject.position === position,
    );
    if (lesson === undefined) throw new Error('no lesson');
    return movedWords(lesson, formatter);
  };

  // (50 · 0.02 + 2) ÷ 89 is 3.37 %, half of it 1.69 %.
  it('says what it is made of', () => {
    expect(wordsOf('leftChest')).toMatch(
      /^3\.37 %, 2 % was assumed; .*\. Of it 1\.69 % reversed and 1\.69 % specks\.$/,
    );
  });

  it('says of how much nobody named the cause', () => {
    const facts = clubFacts({ reprints: 0 });
    const unnamed = facts.pressings.map((one) => ({ ...one, body: { ...one.body, fault: null } }));
    expect(wordsOf('back', { ...facts, pressings: unnamed })).toMatch(/Of it 4\.12 % without a cause\.$/);
  });
});
