// F6 goes from one part of the page to the next, Shift+F6 back: the text keeps the Tab key for itself.

/** @param parts functions that put the focus into a part and tell the element it is in, if they can */
export function go(parts) {
  window.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6" || document.querySelector("dialog[open]")) {
        return;
      }
      event.preventDefault();
      event.stopPropagation();
      const here = parts.findIndex(({ within }) => within().contains(document.activeElement));
      const step = event.shiftKey ? parts.length - 1 : 1;
      for (let i = 1, at = here < 0 && event.shiftKey ? 0 : here; i <= parts.length; i++) {
        at = (at + step + parts.length) % parts.length;
        parts[at].focus();
        if (parts[at].within().contains(document.activeElement)) {
          return;
        }
      }
    },
    true,
  );
}
