// Keeps the parts of the page: each place holds parts by key, and only what changed is put anew,
// so that nothing flickers and the rest keeps its place, focus and state.

const SVG = "http://www.w3.org/2000/svg";
const places = new Map();

function place(name) {
  if (!places.has(name)) {
    const holder = document.querySelector(`[data-slot="${name}"]`);
    places.set(name, holder && { holder, parts: new Map() });
  }
  return places.get(name);
}

function elements(holder, markup) {
  const template = document.createElement("template");
  const drawn = holder.namespaceURI === SVG;
  template.innerHTML = drawn ? `<svg xmlns="${SVG}">${markup}</svg>` : markup;
  return drawn ? [...template.content.firstChild.childNodes] : [...template.content.childNodes];
}

/** Puts what one message says into its place. */
export function apply(change) {
  const here = place(change.slot);
  if (!here) {
    return;
  }
  const { holder, parts } = here;
  for (const [key, markup] of Object.entries(change.set)) {
    const nodes = elements(holder, markup);
    const was = parts.get(key);
    if (was) {
      was[0].before(...nodes);
      was.forEach((node) => node.remove());
    }
    parts.set(key, nodes);
  }
  if (change.order) {
    const wanted = new Set(change.order);
    for (const [key, nodes] of parts) {
      if (!wanted.has(key)) {
        nodes.forEach((node) => node.remove());
        parts.delete(key);
      }
    }
    // moves only what does not stand where it should
    let at = holder.firstChild;
    for (const key of change.order) {
      for (const node of parts.get(key)) {
        if (node === at) {
          at = at.nextSibling;
        } else {
          holder.insertBefore(node, at);
        }
      }
    }
  }
}
