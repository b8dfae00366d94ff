// A new wall: asks where it lies, and makes the file.
import { Conflict, save } from "./folder.js";

/**
 * Asks for the path of a new wall until there is one or the reader has enough.
 *
 * @param beside path of the file that is open, if one is: the new one lies beside it at first
 * @param made told the path of the file once it is on the disk
 */
export function ask(beside, made) {
  const dialog = document.createElement("dialog");
  dialog.className = "ask";
  dialog.setAttribute("aria-labelledby", "ask-heading");
  const form = document.createElement("form");
  const heading = document.createElement("h2");
  heading.id = "ask-heading";
  heading.textContent = "New wall";
  const label = document.createElement("label");
  label.textContent = "Its file, below the folder that is edited:";
  const path = document.createElement("input");
  path.type = "text";
  path.required = true;
  path.spellcheck = false;
  const slash = (beside ?? "").lastIndexOf("/");
  const folder = (beside ?? "").slice(0, slash + 1);
  path.value = `${folder}new.wall`;
  label.append(path);
  const wrong = document.createElement("p");
  wrong.setAttribute("role", "alert");
  const make = document.createElement("button");
  make.textContent = "Make it";
  const leave = document.createElement("button");
  leave.type = "button";
  leave.textContent = "Leave it";
  leave.onclick = () => dialog.close();
  form.append(heading, label, wrong, make, leave);
  form.onsubmit = async (event) => {
    event.preventDefault();
    const asked = named(path.value);
    try {
      await save(asked, "");
      dialog.close();
      made(asked);
    } catch (failed) {
      wrong.textContent = failed instanceof Conflict ? `${failed.message} Give it another name.` : failed.message;
      path.focus();
    }
  };
  dialog.append(form);
  dialog.onclose = () => dialog.remove();
  document.body.append(dialog);
  dialog.showModal();
  path.focus();
  path.setSelectionRange(folder.length, path.value.length - ".wall".length);
}

function named(value) {
  const path = value.trim().replace(/^\.?\/+/, "");
  return path.endsWith(".wall") ? path : `${path}.wall`;
}
