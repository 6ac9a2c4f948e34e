import { answerQuestions } from '@/app/_workers/answerQuestions';
import { type PreviewQuestion, previewOf } from './previewOf';

/* Kept pictures are looked at and unpacked here, beside the worker that a cancelled picture takes with it. */
answerQuestions(async (question: PreviewQuestion) => ({ answer: await previewOf(question), further: null }));
