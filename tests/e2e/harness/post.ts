import { expect, inject } from 'vitest';

/** Asks again while the server says that it has too much to do: on a slow machine the first job of a kind takes long. */
export async function post(body: string): Promise<Response> {
  const ask = () => fetch(`${inject('baseUrl')}/api/price`, { method: 'POST', body });
  let response = await ask();
  await expect
    .poll(async () => {
      if (response.status === 503) response = await ask();
      return response.status;
    })
    .not.toBe(503);
  return response;
}
