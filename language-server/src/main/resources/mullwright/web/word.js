// The word of the moment: a sentence across the page, with what can be done about it.

const bar = () => document.getElementById("word");

/** @param choices `[label, action]`; the word goes once one is taken */
export function say(sentence, choices = [["Close", () => {}]]) {
  const words = document.createElement("span");
  words.textContent = sentence;
  const buttons = choices.map(([label, action]) => {
    const button = document.createElement("button");
    button.textContent = label;
    button.onclick = () => {
      unsay();
      action();
    };
    return button;
  });
  bar().replaceChildren(words, ...buttons);
  bar().hidden = false;
}

export function unsay() {
  bar().hidden = true;
}

/** The state at the right of the bar. */
export function state(words, gone = false) {
  const element = document.getElementById("state");
  element.textContent = words;
  element.className = gone ? "gone" : "";
}
