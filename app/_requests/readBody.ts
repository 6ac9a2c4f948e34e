/** Largest request body; the worked example has about 20 kB. */
export const LARGEST_BODY_BYTES = 1_000_000;

export type Body =
  | { readonly kind: 'json'; readonly value: unknown }
  | { readonly kind: 'tooLarge' }
  | { readonly kind: 'notJson'; readonly why: string };

/** Reads a request body as JSON and gives up as soon as it is larger than it may be. */
export async function readBody(request: Request): Promise<Body> {
  const declared = Number(request.headers.get('content-length') ?? 0);
  if (declared > LARGEST_BODY_BYTES) return { kind: 'tooLarge' };
  const reader = request.body?.getReader();
  const decoder = new TextDecoder();
  let text = '';
  let bytes = 0;
  for (let part = await reader?.read(); part !== undefined && !part.done; part = await reader?.read()) {
    bytes += part.value.byteLength;
    if (bytes > LARGEST_BODY_BYTES) {
      await reader?.cancel();
      return { kind: 'tooLarge' };
    }
    text += decoder.decode(part.value, { stream: true });
  }
  return parseJson(text + decoder.decode());
}

/** Parses JSON text; the reason of a failure is the parser's own, which names the place. */
export function parseJson(text: string): Body {
  try {
    return { kind: 'json', value: JSON.parse(text) };
  } catch (error) {
    return { kind: 'notJson', why: error instanceof Error ? error.message : String(error) };
  }
}
