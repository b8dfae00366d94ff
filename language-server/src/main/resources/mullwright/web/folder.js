// The folder's files, as the page's own server gives them out and saves them.

export class Conflict extends Error {}

async function asked(where, options) {
  let answer;
  try {
    answer = await fetch(where, options);
  } catch {
    throw new Error("The server does not answer.");
  }
  if (answer.status === 412) {
    throw new Conflict(await answer.text());
  }
  if (!answer.ok) {
    throw new Error(await answer.text());
  }
  return answer.json();
}

const address = (path) => `file?path=${encodeURIComponent(path)}`;

/** All files that may be edited: `{ path, stamp }`. */
export const list = () => asked("files");

/** A file: `{ text, version, damaged }`. */
export const read = (path) => asked(address(path));

/**
 * Saves over the version that was edited.
 * @returns the version it has now
 * @throws Conflict if the disk has another; nothing is written then
 */
export async function save(path, text, edited) {
  const headers = edited === undefined ? {} : { "If-Match": `"${edited}"` };
  const saved = await asked(address(path), { method: "PUT", body: text, headers });
  return saved.version;
}
