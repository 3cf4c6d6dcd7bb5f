/** What a file holds, or why nobody can say. */
export type ReadText =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'too-large' }
  | { readonly kind: 'unreadable'; readonly sentence: string };

/** Reads a text of at most so many bytes, and stops as soon as there are more. */
export async function readText(
  name: string,
  bytes: AsyncIterable<Uint8Array>,
  mostBytes: number,
): Promise<ReadText> {
  const parts: Uint8Array[] = [];
  let total = 0;
  try {
    for await (const part of bytes) {
      total += part.length;
      if (total > mostBytes) return { kind: 'too-large' };
      parts.push(part);
    }
  } catch (error) {
    return { kind: 'unreadable', sentence: whyUnreadable(name, error) };
  }
  return decode(name, parts);
}

function decode(name: string, parts: readonly Uint8Array[]): ReadText {
  try {
    // The mark some editors put first is the library's to take off: it counts the bytes.
    const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
    return { kind: 'text', text: decoder.decode(Buffer.concat(parts)) };
  } catch {
    return { kind: 'unreadable', sentence: `‘${name}’ is not UTF-8 text. Save it as UTF-8.` };
  }
}

/** Sentences for what goes wrong with files every day. */
function whyUnreadable(name: string, error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  // Anything else is a fault of ours, and wants its stack.
  if (typeof code !== 'string') throw error;
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return `There is no file ‘${name}’. Look at its name and at the folder you are in.`;
    case 'EISDIR':
      return `‘${name}’ is a folder. Name the batch file in it.`;
    case 'EACCES':
    case 'EPERM':
      return `You may not read ‘${name}’. Change its permissions or take a copy.`;
    default:
      return `‘${name}’ could not be read (${code}).`;
  }
}
