// Saving, and what is done where the disk has another text than was edited, or none.
import { Comparison } from "./comparison.js";
import { Conflict, read } from "./folder.js";
import { say } from "./word.js";

/**
 * @param look looks at the folder, and tells whether the file with a path is there
 * @param leave leaves a text that is not wanted any more
 */
export function saver({ monaco, documents }, { look, leave }) {
  const comparison = new Comparison(monaco);

  /** Saves what was typed, if anything was. */
  async function save(path) {
    if (path !== undefined && documents.isChanged(path)) {
      await tried(path, () => documents.save(path), () => save(path));
    }
  }

  async function tried(path, saving, again) {
    try {
      await saving();
    } catch (failed) {
      if (failed instanceof Conflict) {
        await conflict(path, failed.message);
      } else {
        say(`“${path}” was not saved: ${failed.message}`, [["Try again", again], ["Close", () => {}]]);
      }
    }
  }

  async function conflict(path, sentence) {
    const isThere = await look(path).catch(() => true);
    if (!isThere) {
      lost(path, sentence);
      return;
    }
    const disk = await read(path).catch(() => undefined);
    say(sentence, [...(disk ? choices(path, sentence, disk) : []), ["Close", () => {}]]);
  }

  /** The disk's text may change again until one is taken: what is written over was there to be seen. */
  function choices(path, sentence, disk) {
    const over = () => tried(path, () => documents.save(path, disk.version), over);
    const take = () => documents.takeFromDisk(path).catch((failed) => say(failed.message));
    return [
      ["Compare", async () => {
        const model = await documents.model(path);
        comparison.show(`${path}: on the disk, and here`, disk.text, model.getValue());
        say(sentence, [...choices(path, sentence, disk), ["Close", () => {}]]);
      }],
      ["Take the one on the disk", take],
      ["Write mine over it", over],
    ];
  }

  /** The disk has nothing to compare with or to take: it was deleted, or has another name now. */
  function lost(path, sentence) {
    const anew = () => tried(path, writeAnew, anew);
    const writeAnew = async () => {
      await documents.writeAnew(path);
      // that it is there again is seen at once, and that it goes again
      await look(path).catch(() => undefined);
    };
    return say(`${sentence} Its text is still here.`, [
      ["Write it anew", anew],
      ["Throw it away", () => leave(path)],
      ["Close", () => {}],
    ]);
  }

  return { save, lost };
}
