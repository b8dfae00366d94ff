// Keeps the parts of the page: each place holds parts by key, and only what changed is put anew,
// so that nothing flickers and the rest keeps its place, focus and state.

const SVG = "http://www.w3.org/2000/svg";
const BETWEEN = "<!---->";
const places = new Map();

function place(name) {
  if (!places.has(name)) {
    const holder = document.querySelector(`[data-slot="${name}"]`);
    places.set(name, holder && { holder, parts: new Map() });
  }
  return places.get(name);
}

/** The nodes of each part; all parts are read at once. */
function nodes(holder, markups) {
  const template = document.createElement("template");
  const joined = markups.join(BETWEEN);
  const drawn = holder.namespaceURI === SVG;
  template.innerHTML = drawn ? `<svg xmlns="${SVG}">${joined}</svg>` : joined;
  const parts = [[]];
  for (const node of (drawn ? template.content.firstChild : template.content).childNodes) {
    if (node.nodeType === Node.COMMENT_NODE) {
      parts.push([]);
    } else {
      parts.at(-1).push(node);
    }
  }
  return parts;
}

/** Puts what one message says into its place; answers what is new there. */
export function apply(change) {
  const here = place(change.slot);
  if (!here) {
    return [];
  }
  const { holder, parts } = here;
  const keys = Object.keys(change.set);
  const fresh = keys.length ? nodes(holder, Object.values(change.set)) : [];
  keys.forEach((key, at) => {
    const [first, ...others] = parts.get(key) ?? [];
    parts.set(key, fresh[at]);
    if (first) {
      others.forEach((node) => node.remove());
      first.replaceWith(...fresh[at]);
    }
  });
  if (change.order) {
    arrange(holder, parts, change.order);
  }
  return fresh.flat();
}

function arrange(holder, parts, order) {
  const wanted = new Set(order);
  for (const [key, nodes] of parts) {
    if (!wanted.has(key)) {
      nodes.forEach((node) => node.remove());
      parts.delete(key);
    }
  }
  // moves only what does not stand where it should
  let at = holder.firstChild;
  for (const key of order) {
    for (const node of parts.get(key)) {
      if (node === at) {
        at = at.nextSibling;
      } else {
        holder.insertBefore(node, at);
      }
    }
  }
}
