/** Largest request body; the worked example has about 20 kB. */
export const LARGEST_BODY_BYTES = 1_000_000;

type Body =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'tooLarge' }
  /** Whoever sent it went away. */
  | { readonly kind: 'brokenOff' };

/** Reads a request body as text and gives up as soon as it is larger than it may be. */
export async function readBody(request: Request): Promise<Body> {
  const declared = Number(request.headers.get('content-length') ?? 0);
  if (declared > LARGEST_BODY_BYTES) return { kind: 'tooLarge' };
  const decoder = new TextDecoder();
  let text = '';
  let bytes = 0;
  try {
    const reader = request.body?.getReader();
    for (let part = await reader?.read(); part !== undefined && !part.done; part = await reader?.read()) {
      bytes += part.value.byteLength;
      if (bytes > LARGEST_BODY_BYTES) {
        await reader?.cancel();
        return { kind: 'tooLarge' };
      }
      text += decoder.decode(part.value, { stream: true });
    }
  } catch {
    return { kind: 'brokenOff' };
  }
  return { kind: 'text', text: text + decoder.decode() };
}

type Parsed =
  | { readonly kind: 'json'; readonly value: unknown }
  | { readonly kind: 'notJson'; readonly why: string };

/** Parses JSON text; the reason of a failure is the parser's own, which names the place. */
export function parseJson(text: string): Parsed {
  try {
    return { kind: 'json', value: JSON.parse(text) };
  } catch (error) {
    return { kind: 'notJson', why: error instanceof Error ? error.message : String(error) };
  }
}
