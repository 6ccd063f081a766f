import { text, yesOrNo } from './answers.ts';
import { lineOr } from './lineOr.ts';
import { answersOf, question, type Questions } from './question.ts';
import { strict } from './strict.ts';

/** What is asked of the ball that was hit. */
export const ballQuestions = {
  model: question(
    text('the model of the ball, or "withheld" and why'),
    'Which ball, or "withheld" and why?',
    { readForPraise: true, published: { words: 'its model' } },
  ),
  state: question(text('new, used or range ball'), 'New, used or range ball?', {
    readForPraise: true,
    published: { words: 'new, used or range ball' },
  }),
  same_for_all: question(
    yesOrNo.describe('whether every shot was hit with the same model'),
    'Was it the same model for every shot: yes or no?',
    { published: { yesOrNo: 'whether every shot was hit with the same model' } },
  ),
  description: question(text('the ball in one sentence'), null, {
    readForPraise: true,
    published: { words: 'the ball in one sentence' },
  }),
} as const satisfies Questions<'published' | 'readForPraise'>;

export const ball = lineOr(
  'the ball in one sentence',
  (description) => ({ description }),
  strict(answersOf(ballQuestions)),
).describe('which ball was hit');
