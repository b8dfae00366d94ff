// The word of the moment: a sentence across the page, with what can be done about it.

const bar = () => document.getElementById("word");

// where the focus was before it came to the bar
let back;

/**
 * @param choices `[label, action]`; the word goes once one is taken
 * @returns takes the word back if it is still there
 */
export function say(sentence, choices = [["Close", () => {}]]) {
  const words = document.createElement("span");
  words.textContent = sentence;
  const buttons = choices.map(([label, action]) => {
    const button = document.createElement("button");
    button.textContent = label;
    button.onfocus = ({ relatedTarget }) => {
      if (!bar().contains(relatedTarget)) {
        back = relatedTarget;
      }
    };
    button.onclick = () => {
      unsay();
      // whoever was writing writes on
      back?.focus();
      action();
    };
    return button;
  });
  const offered = document.createElement("div");
  offered.append(...buttons);
  bar().replaceChildren(words, offered);
  bar().hidden = false;
  return () => bar().contains(words) && unsay();
}

export function unsay() {
  bar().hidden = true;
}

/** An answer of several lines, in a dialog: `{ title, lines, caution }`. */
export function tell({ title, lines, caution }) {
  unsay();
  const dialog = document.createElement("dialog");
  const heading = document.createElement("h2");
  heading.textContent = title;
  const list = document.createElement("ul");
  for (const line of lines) {
    const item = document.createElement("li");
    item.textContent = line;
    list.append(item);
  }
  const remark = document.createElement("p");
  remark.textContent = caution ?? "";
  const close = document.createElement("button");
  close.textContent = "Close";
  close.onclick = () => dialog.close();
  dialog.append(heading, list, remark, close);
  dialog.onclose = () => dialog.remove();
  document.body.append(dialog);
  dialog.showModal();
}

/** The state at the right of the bar. */
export function state(words, gone = false) {
  const element = document.getElementById("state");
  element.textContent = words;
  element.className = gone ? "gone" : "";
}
