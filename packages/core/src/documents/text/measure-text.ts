/**
 * Bytes of a text as UTF-8. Counted by hand: neither Node's buffers nor the browser's encoder
 * belong to the language itself.
 */
export function utf8Bytes(text: string): number {
  let bytes = 0;
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at);
    // A surrogate pair is four bytes, so each half of it is two.
    const isSurrogate = unit >= 0xd800 && unit <= 0xdfff;
    bytes += unit < 0x80 ? 1 : unit < 0x800 || isSurrogate ? 2 : 3;
  }
  return bytes;
}

/** How deep the brackets of a JSON text nest, strings left out, before anything is parsed. */
export function nestingDepth(text: string): number {
  let depth = 0;
  let deepest = 0;
  let inString = false;
  for (let at = 0; at < text.length; at++) {
    const sign = text[at];
    if (inString) {
      if (sign === '\\') at++;
      else if (sign === '"') inString = false;
    } else if (sign === '"') {
      inString = true;
    } else if (sign === '{' || sign === '[') {
      deepest = Math.max(deepest, ++depth);
    } else if (sign === '}' || sign === ']') {
      depth--;
    }
  }
  return deepest;
}
