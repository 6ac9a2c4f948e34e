import { parentPort } from 'node:worker_threads';
import { clubOrder } from '@/lib/examples/clubOrder';
import { answerRequest } from './answerRequest';
import { answerText } from './answerText';

/*
 * Prices requests away from the thread that serves them, so that a heavy one keeps nobody waiting and can be ended.
 * An error ends the thread; whoever asked is told, and another thread takes its place.
 */
// The first sums build the workbook: a request is not to wait for that.
answerRequest(clubOrder('2026-11-25', '2026-12-09'), '2026-11-25');

parentPort?.on('message', ({ text, today }: { readonly text: string; readonly today: string }) => {
  parentPort?.postMessage(answerText(text, today));
});
parentPort?.postMessage('ready');
