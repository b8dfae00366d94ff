// What one text has that another has not.

const between = (one, other) =>
  (one === "\r" && other === "\n") || (/[\ud800-\udbff]/.test(one) && /[\udc00-\udfff]/.test(other));

/** True if a place lies inside what is one character or one line end. */
const splits = (text, at) => at > 0 && at < text.length && between(text[at - 1], text[at]);

/**
 * The one edit `{ start, end, text }` that makes the new text of the old; undefined if they are
 * the same. What is alike before and after it stays, and cursors in there with it.
 */
export function difference(old, now) {
  if (old === now) {
    return undefined;
  }
  const shorter = Math.min(old.length, now.length);
  let start = 0;
  while (start < shorter && old[start] === now[start]) {
    start += 1;
  }
  while (splits(old, start) || splits(now, start)) {
    start -= 1;
  }
  let alike = 0;
  while (alike < shorter - start && old[old.length - 1 - alike] === now[now.length - 1 - alike]) {
    alike += 1;
  }
  while (splits(old, old.length - alike) || splits(now, now.length - alike)) {
    alike -= 1;
  }
  return { start, end: old.length - alike, text: now.slice(start, now.length - alike) };
}
