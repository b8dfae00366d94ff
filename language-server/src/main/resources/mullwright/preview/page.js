// The page: listens to the server, shows what it sends, and tells it what is looked at and clicked.

import { LIGHTS, apply, hide } from "./parts.js";
import { View } from "./view.js";

const $ = (selector) => document.querySelector(selector);
const drawing = $("#drawing");
const view = new View(drawing);
const section = new View($("#section"));
const look = { wall: "", at: "", base: "", tab: "findings", far: "" };
const sheet = new CSSStyleSheet();
document.adoptedStyleSheets = [sheet];

let page = null;
/** What is lit, by why: by the editor's cursor, by what was picked from a list, as the one chosen. */
const lights = Object.fromEntries(LIGHTS.map((light) => [light, new Set()]));
let events = null;

// ---- what is kept from visit to visit; a browser may refuse, then nothing is kept

function kept(name) {
  try {
    return localStorage.getItem("preview-" + name);
  } catch {
    return null;
  }
}

function keep(name, value) {
  try {
    localStorage.setItem("preview-" + name, value);
  } catch {
    // not worth a word
  }
}

// ---- listening

function query(extra) {
  return new URLSearchParams({ ...look, ...extra }).toString();
}

function listen() {
  events = new EventSource("events?" + query({}));
  events.addEventListener("hello", (event) => {
    page = JSON.parse(event.data).page;
    // what is wanted may be another since it was asked for
    tell();
    status("Live");
  });
  events.addEventListener("parts", (event) => take(JSON.parse(event.data)));
  events.addEventListener("over", () => {
    events.close();
    status("Ended: what is shown is the last state.", true);
  });
  events.onerror = () => {
    if (events.readyState === EventSource.CLOSED) {
      status("Not connected. Too many pages may be open, or the server has ended.", true);
    } else {
      status("Connecting …", true);
    }
  };
}

function status(words, trouble = false) {
  const place = $("#status");
  if (place.textContent !== words) {
    place.textContent = words;
    place.classList.toggle("trouble", trouble);
  }
}

/** Values that are no markup. */
const values = {
  frame: (text) => view.frame(text),
  style: (text) => sheet.replaceSync(text),
  lit: (text) => light("lit", text ? text.split(" ") : []),
  "section-frame": (text) => section.frame(text),
};

function take(changes) {
  for (const change of changes) {
    if (values[change.slot]) {
      const text = change.set[change.slot];
      if (text !== undefined || change.order?.length === 0) {
        values[change.slot](text ?? "");
      }
      continue;
    }
    const fresh = apply(change);
    came[change.slot]?.(fresh);
  }
}

/** What is done about what came anew, by its place. */
const came = {
  drawing: (fresh) => {
    settle(fresh);
    layers(fresh);
    tellActive();
  },
  section: settle,
  title: () => {
    document.title = $("h1").textContent;
    drawing.setAttribute("aria-label", "Elevation of " + $("h1").textContent);
  },
  walls: () => {
    $("#walls").value = look.wall;
  },
  findings: markRows,
  schedule: markRows,
  calculations: markRows,
};

/** What came anew may be lit already. */
function settle(fresh) {
  for (const piece of fresh) {
    const id = piece.dataset?.piece;
    if (id) {
      for (const [word, ids] of Object.entries(lights)) {
        if (ids.has(id) !== piece.classList.contains(word)) {
          show(piece, word, ids.has(id));
        }
      }
    }
  }
}

function show(piece, word, on) {
  piece.classList.toggle(word, on);
  if (word === "chosen" && piece.getAttribute("role") === "option") {
    piece.setAttribute("aria-selected", String(on));
  }
}

function pieces(ids) {
  return ids
    .map((id) => document.getElementById("piece-" + id))
    .filter((piece) => piece !== null);
}

/** In both drawings. */
function light(word, ids) {
  const was = lights[word];
  const now = new Set(ids);
  lights[word] = now;
  if (was.size === 0 && now.size === 0) {
    return;
  }
  for (const piece of document.querySelectorAll("svg [data-piece]")) {
    const on = now.has(piece.dataset.piece);
    if (on !== was.has(piece.dataset.piece)) {
      show(piece, word, on);
    }
  }
}

// ---- choosing

function chosen() {
  return look.at ? document.getElementById("piece-" + look.at) : null;
}

function markChosen() {
  light("chosen", look.at ? [look.at] : []);
  tellActive();
}

/** Readers of the screen follow the piece that is chosen. */
function tellActive() {
  const piece = chosen();
  if (piece) {
    drawing.setAttribute("aria-activedescendant", piece.id);
  } else {
    drawing.removeAttribute("aria-activedescendant");
  }
}

function markRows() {
  for (const row of document.querySelectorAll("[data-pieces]")) {
    row.classList.toggle(
      "chosen",
      look.at !== "" && row.dataset.pieces.split(" ").includes(look.at),
    );
  }
}

function words(piece) {
  const notes = [...document.querySelectorAll(".finding")]
    .filter((note) => note.dataset.pieces.split(" ").includes(piece.dataset.piece))
    .map((note) => note.dataset.finding);
  const found = notes.length
    ? `, ${notes.length === 1 ? "finding" : "findings"} ${notes.join(", ")}`
    : "";
  return piece.getAttribute("aria-label") + found;
}

function choose(id, opens) {
  look.at = id;
  const piece = chosen();
  markChosen();
  markRows();
  trace([]);
  $("#chosen").textContent = piece ? words(piece) : "Nothing is chosen.";
  $("[role=tabpanel]:not([hidden]) :is(li, tr).chosen")?.scrollIntoView({ block: "nearest" });
  if (piece) {
    view.reveal(piece);
  }
  tell();
  if (opens && piece) {
    open({ piece: id });
  }
}

function trace(ids) {
  picked(null);
  light("traced", ids);
}

function tell() {
  if (page !== null) {
    post("look", { page });
  }
}

async function post(path, extra) {
  try {
    const answer = await fetch(path + "?" + query(extra), { method: "POST" });
    return answer.ok ? await answer.json() : null;
  } catch {
    // the line to the server says what is wrong
    return null;
  }
}

/** Goes to the text: the editor does, or the page shows it where there is no editor. */
async function open(what) {
  const answer = await post("open", what);
  if (answer?.lines) {
    $("#text-file").textContent = answer.file;
    $("#text-lines").replaceChildren(
      ...answer.lines.map((line) => {
        const row = document.createElement(line.meant ? "mark" : "span");
        row.textContent = String(line.number).padStart(5) + "  " + line.text + "\n";
        return row;
      }),
    );
    $("#tab-text").hidden = false;
    turn($("#tab-text"), false);
  }
}

// one title for all pieces: it tells of the one that is pointed at
drawing.addEventListener("pointerover", (event) => {
  const id = event.target.closest("[data-piece]")?.dataset.piece;
  const [piece] = id ? pieces([id]) : [];
  $("#pointed").textContent = piece ? words(piece) : "";
});

drawing.addEventListener("click", (event) => {
  if (drawing.classList.contains("dragged")) {
    return;
  }
  const pin = event.target.closest("[data-finding]");
  const piece = event.target.closest("[data-piece]");
  if (pin) {
    showFinding(pin.dataset.finding);
  } else if (piece) {
    choose(piece.dataset.piece, true);
  } else {
    choose("", false);
  }
});

function showFinding(number) {
  turn($("#tab-findings"), false);
  const note = document.querySelector(`.finding[data-finding="${number}"]`);
  if (note) {
    trace(note.dataset.pieces ? note.dataset.pieces.split(" ") : []);
    picked(note);
    note.scrollIntoView({ block: "nearest" });
    note.querySelector("button").focus({ preventScroll: true });
  }
}

// ---- the other views

$("aside").addEventListener("click", (event) => {
  const note = event.target.closest(".finding");
  const row = event.target.closest("tr[data-pieces], [data-piece]");
  if (note) {
    trace(note.dataset.pieces ? note.dataset.pieces.split(" ") : []);
    picked(note);
    pieces([...lights.traced]).slice(0, 1).forEach((piece) => view.reveal(piece));
    open({ finding: note.dataset.finding });
  } else if (row?.dataset.piece) {
    choose(row.dataset.piece, true);
  } else if (row) {
    rowChosen(row);
  }
});

/** Shows which row or finding lit what is lit. */
function picked(row) {
  document.querySelectorAll(".picked").forEach((was) => was.classList.remove("picked"));
  row?.classList.add("picked");
}

function rowChosen(row) {
  const ids = row.dataset.pieces.split(" ");
  if (ids.length === 1) {
    choose(ids[0], false);
  }
  trace(ids);
  picked(row);
  const [only] = ids.length === 1 ? pieces(ids) : [];
  $("#chosen").textContent = only ? words(only) : `${ids.length} pieces lit: ${row.cells[0].textContent}`;
  pieces(ids).slice(0, 1).forEach((piece) => view.reveal(piece));
}

$("aside").addEventListener("keydown", (event) => {
  const row = event.target.closest("tr[data-pieces]");
  if (!row) {
    return;
  }
  const rows = [...row.closest("[role=tabpanel]").querySelectorAll("tr[data-pieces]")];
  const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (by) {
    rows[rows.indexOf(row) + by]?.focus();
    event.preventDefault();
  } else if (event.key === "Enter" || event.key === " ") {
    rowChosen(row);
    event.preventDefault();
  }
});

// the first row of a panel can be reached by Tab, the others by arrow keys from there
new MutationObserver(() => {
  for (const panel of document.querySelectorAll("[role=tabpanel]")) {
    const rows = panel.querySelectorAll("tr[data-pieces]");
    if (rows.length && rows[0].tabIndex !== 0) {
      rows[0].tabIndex = 0;
    }
  }
}).observe($("aside"), { childList: true, subtree: true });

const tabs = [...document.querySelectorAll("[role=tab]")];

function turn(tab, focus) {
  for (const each of tabs) {
    const on = each === tab;
    each.setAttribute("aria-selected", String(on));
    each.tabIndex = on ? 0 : -1;
    document.getElementById(each.getAttribute("aria-controls")).hidden = !on;
  }
  if (focus) {
    tab.focus();
  }
  const wanted = tab.id.slice("tab-".length);
  if (look.tab !== wanted) {
    look.tab = wanted;
    // what nobody sees is not made; what is there now may be of an older text
    tell();
  }
  section.show();
}

$("[role=tablist]").addEventListener("click", (event) => {
  const tab = event.target.closest("[role=tab]");
  if (tab) {
    turn(tab, false);
  }
});

$("[role=tablist]").addEventListener("keydown", (event) => {
  const shown = tabs.filter((tab) => !tab.hidden);
  const at = shown.indexOf(event.target);
  const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: shown.length - 1 }[event.key];
  if (to !== undefined) {
    turn(shown[(to + shown.length) % shown.length], true);
    event.preventDefault();
  }
});

// ---- keys of the drawing

function next(dx, dy) {
  const all = [...drawing.querySelectorAll("[role=option]")].filter(
    (piece) => piece.getClientRects().length > 0 && getComputedStyle(piece).visibility !== "hidden",
  );
  const from = chosen();
  if (!from) {
    return all[0];
  }
  const middle = (piece) => {
    const box = piece.getBoundingClientRect();
    return { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  };
  const here = middle(from);
  let best = null;
  let least = Infinity;
  for (const piece of all) {
    const there = middle(piece);
    const along = (there.x - here.x) * dx + (there.y - here.y) * dy;
    const across = Math.abs((there.x - here.x) * dy) + Math.abs((there.y - here.y) * dx);
    // what lies straight ahead is nearer than what lies aside
    const distance = along + 3 * across;
    if (piece !== from && along > 0.5 && along >= across && distance < least) {
      best = piece;
      least = distance;
    }
  }
  return best;
}

const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

drawing.addEventListener("keydown", (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey) {
    return;
  }
  const arrow = ARROWS[event.key];
  if (arrow && event.shiftKey) {
    view.pan(arrow[0] * 0.1, arrow[1] * 0.1);
  } else if (arrow) {
    const piece = next(...arrow);
    if (piece) {
      choose(piece.dataset.piece, false);
    }
  } else if ((event.key === "Enter" || event.key === " ") && look.at) {
    open({ piece: look.at });
  } else if (event.key === "Escape") {
    choose("", false);
  } else if (event.key === "+" || event.key === "=") {
    view.in();
  } else if (event.key === "-") {
    view.out();
  } else if (event.key === "0") {
    view.fit();
  } else {
    return;
  }
  event.preventDefault();
});

$("#in").addEventListener("click", () => view.in());
$("#out").addEventListener("click", () => view.out());
$("#fit").addEventListener("click", () => view.fit());

// ---- layers and what is laid over

const LAYERS = {
  grid: "Grid lines", floor: "Floors", building: "Slabs", lite: "Lites", hatch: "Hatches",
  opening: "Openings", member: "Members", splice: "Splices", anchor: "Anchors", mark: "Marks",
  dimension: "Dimensions", note: "Notes", pins: "Findings",
};
const off = new Set((kept("layers-off") ?? "").split(" ").filter(Boolean));

const drawn = new Set(["pins"]);

function layers(fresh) {
  const before = drawn.size;
  fresh.forEach((part) => drawn.add(part.dataset.layer));
  if (drawn.size === before) {
    return;
  }
  const list = $("#layers");
  for (const [name, label] of Object.entries(LAYERS)) {
    const there = list.querySelector(`[value="${name}"]`)?.parentElement;
    if (drawn.has(name) && !there) {
      const row = document.createElement("label");
      const box = document.createElement("input");
      box.type = "checkbox";
      box.value = name;
      box.checked = !off.has(name);
      row.append(box, " " + label);
      list.append(row);
    }
  }
}

function hideLayers() {
  drawing.setAttribute("data-off", [...off].join(" "));
  settle(hide("drawing", off));
}

hideLayers();

// letters nobody can read at that distance are not sent
drawing.addEventListener("distance", () => {
  look.far = view.far ? "1" : "";
  tell();
});

$("#layers").addEventListener("change", (event) => {
  off[event.target.checked ? "delete" : "add"](event.target.value);
  keep("layers-off", [...off].join(" "));
  hideLayers();
});

document.addEventListener("click", (event) => {
  const menu = $("#layers-menu");
  if (menu.open && !menu.contains(event.target)) {
    menu.open = false;
  }
});

for (const box of document.querySelectorAll("[data-overlay]")) {
  const name = box.dataset.overlay;
  box.addEventListener("change", () => {
    drawing.classList.toggle("with-" + name, box.checked);
    if (box.checked && !look.at.startsWith("vertical-")) {
      $("#chosen").textContent = "Choose a vertical: its diagrams are laid over it.";
    }
  });
}

$("#base-on").addEventListener("change", (event) => {
  look.base = event.target.checked ? "1" : "";
  $("#legend").hidden = !event.target.checked;
  $(".ask").hidden = event.target.checked;
  tell();
  if (event.target.checked) {
    turn($("#tab-changes"), false);
  }
});

$("#walls").addEventListener("change", (event) => {
  look.wall = event.target.value;
  choose("", false);
  view.moved = false;
});

// ---- light and dark

function theme(name) {
  document.documentElement.dataset.theme = name;
  $("#theme").setAttribute("aria-label", name === "dark" ? "Show it light" : "Show it dark");
}

const systemDark = matchMedia("(prefers-color-scheme: dark)");
theme(kept("theme") ?? (systemDark.matches ? "dark" : "light"));
systemDark.addEventListener("change", () => {
  if (!kept("theme")) {
    theme(systemDark.matches ? "dark" : "light");
  }
});
$("#theme").addEventListener("click", () => {
  const other = document.documentElement.dataset.theme === "dark" ? "light" : "dark";
  keep("theme", other);
  theme(other);
});

listen();
