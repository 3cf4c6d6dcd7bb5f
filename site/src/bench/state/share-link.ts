/** Every fragment of a shared batch begins so; the figure is the version of the packing. */
export const SHARE_PREFIX = '#b1.';

/** A longer fragment is no recipe, and chat programs cut it. */
export const LONGEST_FRAGMENT = 16_000;

/** Inflating stops here, however much more the packing promises. */
export const MOST_INFLATED_BYTES = 64_000;

/** What became of a fragment. */
export type Unpacked =
  | { readonly kind: 'none' }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'refused'; readonly why: 'version' | 'too-long' | 'too-large' | 'broken' };

/** Packs a text into a fragment: raw deflate, then base64 for addresses. */
export async function packed(
  text: string,
): Promise<
  { readonly kind: 'fragment'; readonly fragment: string } | { readonly kind: 'too-long' }
> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
  const fragment = SHARE_PREFIX + toBase64Url(bytes);
  return fragment.length > LONGEST_FRAGMENT ? { kind: 'too-long' } : { kind: 'fragment', fragment };
}

/** Takes a fragment apart again, piece by piece, so that a bomb never goes off. */
export async function unpacked(fragment: string): Promise<Unpacked> {
  if (!/^#b\d+\./.test(fragment)) return { kind: 'none' };
  if (!fragment.startsWith(SHARE_PREFIX)) return { kind: 'refused', why: 'version' };
  if (fragment.length > LONGEST_FRAGMENT) return { kind: 'refused', why: 'too-long' };
  const bytes = fromBase64Url(fragment.slice(SHARE_PREFIX.length));
  if (bytes === undefined) return { kind: 'refused', why: 'broken' };
  try {
    return await inflated(bytes);
  } catch {
    return { kind: 'refused', why: 'broken' };
  }
}

async function inflated(bytes: Uint8Array<ArrayBuffer>): Promise<Unpacked> {
  const reader = new Blob([bytes])
    .stream()
    .pipeThrough(new DecompressionStream('deflate-raw'))
    .getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let count = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return { kind: 'text', text: text + decoder.decode() };
    count += value.byteLength;
    if (count > MOST_INFLATED_BYTES) {
      await reader.cancel();
      return { kind: 'refused', why: 'too-large' };
    }
    text += decoder.decode(value, { stream: true });
  }
}

function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (text === '' || !/^[\w-]+$/.test(text)) return undefined;
  try {
    const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
    return Uint8Array.from(binary, (sign) => sign.charCodeAt(0));
  } catch {
    return undefined;
  }
}
