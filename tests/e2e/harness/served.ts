import type { APIResponse, Route } from 'playwright-core';

/**
 * What the server answers to a request that a test stands in the way of. The server closes connections that were idle
 * for some seconds, and a request sent along one at that moment is to be sent again, as a browser does.
 */
export const served = (route: Route): Promise<APIResponse> => route.fetch({ maxRetries: 3 });
