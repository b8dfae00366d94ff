// The line ends of a text. The editor keeps one kind a text, as most lines have it.

const count = (text, ends) => (text.match(ends) ?? []).length;

/** The end that most lines have, `"\r\n"` or `"\n"`; undefined if there is but one line. */
export function lineEnd(text) {
  const returns = count(text, /\r/g);
  const all = returns + count(text, /(?<!\r)\n/g);
  return all === 0 ? undefined : returns > all / 2 ? "\r\n" : "\n";
}

/** The text with that one line end. */
export const withEnd = (text, end) => text.replace(/\r\n|\r|\n/g, end);
