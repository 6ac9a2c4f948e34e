import { postPrice } from '@/app/_requests/postPrice';
import { priceInThread } from '@/app/_requests/priceInThread';
import { refuseMethod, tellMethods } from '@/app/_requests/refuseMethod';

/** Documents of one job in, findings, layout, cost sheet and prices out. Nothing is kept. */
export const POST = (request: Request): Promise<Response> => postPrice(request, priceInThread);

const methods = 'OPTIONS, POST';
export const OPTIONS = tellMethods(methods);

const refuse = refuseMethod(methods, 'Send the documents of one job with POST.');

export { refuse as DELETE, refuse as GET, refuse as HEAD, refuse as PATCH, refuse as PUT };
