// Keeps the parts of the page: each place holds parts by key, and only what changed is put anew,
// so that nothing flickers and the rest keeps its place, focus and state.

const SVG = "http://www.w3.org/2000/svg";
const BETWEEN = "<!---->";
const GROUP = 64;
const places = new Map();

/** Classes the page itself gives to what is drawn; an element that becomes another keeps them. */
export const LIGHTS = ["lit", "traced", "chosen"];

function place(name) {
  if (!places.has(name)) {
    const holder = document.querySelector(`[data-slot="${name}"]`);
    places.set(name, holder && { holder, drawn: holder.namespaceURI === SVG, parts: new Map(), groups: new Map(), hidden: new Set() });
  }
  return places.get(name);
}

/** The nodes of each part; all parts are read at once. */
function nodes(drawn, markups) {
  const template = document.createElement("template");
  const joined = markups.join(BETWEEN);
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
  const keys = Object.keys(change.set);
  const fresh = keys.length ? nodes(here.drawn, Object.values(change.set)) : [];
  const added = [];
  keys.forEach((key, at) => {
    const was = here.parts.get(key);
    if (was && here.drawn && was.length === 1 && fresh[at].length === 1 && become(was[0], fresh[at][0])) {
      return;
    }
    here.parts.set(key, fresh[at]);
    added.push(...fresh[at]);
    if (was?.length) {
      was[0].before(...fresh[at]);
      was.forEach((node) => node.remove());
    }
  });
  if (change.order) {
    arrange(here, change.order);
  }
  return added;
}

/**
 * Makes an element of a drawing what another is, if they are built alike: a browser lays out an
 * element that changed, but all beside one that is new.
 */
function become(old, other) {
  if (old.nodeName !== other.nodeName || old.childNodes.length !== other.childNodes.length) {
    return false;
  }
  if (old.nodeType !== Node.ELEMENT_NODE) {
    if (old.nodeValue !== other.nodeValue) {
      old.nodeValue = other.nodeValue;
    }
    return true;
  }
  for (const { name, value } of other.attributes) {
    if (name === "class") {
      dress(old, value);
    } else if (name !== "aria-selected" && old.getAttribute(name) !== value) {
      old.setAttribute(name, value);
    }
  }
  for (const { name } of [...old.attributes]) {
    if (!other.hasAttribute(name)) {
      name === "class" ? dress(old, "") : old.removeAttribute(name);
    }
  }
  [...old.childNodes].forEach((child, at) => {
    const next = other.childNodes[at];
    if (!become(child, next)) {
      child.replaceWith(next.cloneNode(true));
    }
  });
  return true;
}

function dress(element, classes) {
  const lights = LIGHTS.filter((light) => element.classList.contains(light));
  const all = [classes, ...lights].filter(Boolean).join(" ");
  if ((element.getAttribute("class") ?? "") !== all) {
    element.setAttribute("class", all);
  }
}

function arrange(here, order) {
  const wanted = new Set(order);
  for (const [key, nodes] of here.parts) {
    if (!wanted.has(key)) {
      nodes.forEach((node) => node.remove());
      here.parts.delete(key);
    }
  }
  if ("grouped" in here.holder.dataset) {
    arrangeGroups(here, order);
  } else {
    stand(here.holder, order.flatMap((key) => here.parts.get(key)));
  }
}

/** Moves only what does not stand where it should. */
function stand(holder, nodes) {
  let at = holder.firstChild;
  for (const node of nodes) {
    if (node === at) {
      at = at.nextSibling;
    } else {
      holder.insertBefore(node, at);
    }
  }
}

/**
 * Neighbours stand in groups of some dozens: a browser that is given a new element lays out anew
 * all that stands in the same group.
 */
function arrangeGroups(here, order) {
  const groups = new Map();
  let last = "";
  let members = null;
  for (const key of order) {
    const name = group(key);
    if (name !== last) {
      let unlike = name;
      while (groups.has(unlike)) {
        unlike += "+";
      }
      members = [];
      groups.set(unlike, members);
      last = name;
    }
    members.push(...here.parts.get(key));
  }
  const shown = new Map();
  for (const [name, nodes] of groups) {
    const element = here.groups.get(name) ?? document.createElementNS(SVG, "g");
    element.setAttribute("role", "presentation");
    stand(element, nodes);
    shown.set(name, element);
  }
  for (const [name, element] of here.groups) {
    if (!groups.has(name)) {
      element.remove();
    }
  }
  here.groups = shown;
  standGroups(here);
}

function standGroups({ holder, groups, hidden }) {
  const seen = [...groups].filter(([name, element]) => {
    const away = hidden.has(layer(name));
    if (away) {
      element.remove();
    }
    return !away;
  });
  stand(holder, seen.map(([, element]) => element));
}

/**
 * Takes layers out of a drawing, or puts them back; answers what came back. Out of the document,
 * as a browser goes on laying out letters that are only not displayed.
 */
export function hide(slot, layers) {
  const here = place(slot);
  const back = [...here.groups].filter(([name]) => here.hidden.has(layer(name)) && !layers.has(layer(name)));
  here.hidden = new Set(layers);
  standGroups(here);
  return back.flatMap(([, element]) => [...element.children]);
}

function layer(group) {
  return group.split("/")[0];
}

/** `member/vertical-130` stands with all verticals from 128 to 191. */
function group(key) {
  const [, kind, index] = /^(.*-)(\d+)(\/\d+)?$/.exec(key) ?? [];
  return kind === undefined ? key.split("/")[0] : kind + Math.floor(index / GROUP);
}
