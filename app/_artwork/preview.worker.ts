import { answerQuestions } from '@/app/_workers/answerQuestions';
import { previewOf } from './previewOf';

/* Kept pictures are looked at and unpacked here, beside the worker that a cancelled picture takes with it. */
answerQuestions(previewOf);
