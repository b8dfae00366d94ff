// The list of files at the side, by folder, with what was changed and what was found in each.

const folderOf = (path) => path.slice(0, Math.max(path.lastIndexOf("/"), 0));

/** By folder, and within each by name: those that lie beside each other stand beside each other. */
function byFolder(one, other) {
  const [here, there] = [folderOf(one), folderOf(other)];
  return here === there ? (one < other ? -1 : 1) : here < there ? -1 : 1;
}

/**
 * @param paths of all files there are
 * @param about for a path: `{ current, changed, gone, errors, warnings }`
 */
export function draw(paths, about, open) {
  const list = document.getElementById("files");
  // headings by their words, rows by their paths: what stays keeps the focus, and a click on it
  const before = new Map([...list.children].map((element) => [keyOf(element), element]));
  const drawn = [];
  let folder;
  for (const path of [...paths].sort(byFolder)) {
    const within = folderOf(path);
    if (within !== folder) {
      folder = within;
      drawn.push(heading(before, within === "" ? "This folder" : within));
    }
    drawn.push(row(before, path, about(path), open));
  }
  if (drawn.length === 0) {
    drawn.push(heading(before, "There is no wall in this folder yet."));
  }
  const stays = new Set(drawn);
  before.forEach((element) => stays.has(element) || element.remove());
  drawn.forEach((element, i) => {
    if (list.children[i] !== element) {
      list.insertBefore(element, list.children[i] ?? null);
    }
  });
  keepInSight(list);
}

// what was kept in sight, and in how high a list
let kept = [];

/** The open file stays in sight where the list is short, until the reader scrolls. */
function keepInSight(list) {
  const shown = list.querySelector('[aria-current="true"]');
  const now = [shown?.dataset.path, list.clientHeight];
  if (now.some((value, i) => value !== kept[i])) {
    kept = now;
    shown?.scrollIntoView({ block: "nearest" });
  }
}

const keyOf = ({ dataset, textContent }) => dataset.path ?? `heading ${textContent}`;

function heading(before, words) {
  const made = before.get(`heading ${words}`) ?? document.createElement("h2");
  made.textContent = words;
  return made;
}

function row(before, path, { current, changed, gone, errors, warnings }, open) {
  const button = before.get(path) ?? document.createElement("button");
  const name = path.slice(path.lastIndexOf("/") + 1);
  const found = [[errors, "error"], [warnings, "warning"]].filter(([count]) => count > 0);
  const counted = found.map(([count, severity]) => `${count} ${severity}${count === 1 ? "" : "s"}`);
  const state = [gone && "no longer in the folder", changed && "not saved"].filter(Boolean);
  button.dataset.path = path;
  button.setAttribute("aria-current", String(current));
  button.setAttribute("aria-label", [name, ...state, ...counted].join(", "));
  button.title = [path, ...state, ...counted].join(", ");
  const label = document.createElement("span");
  label.className = ["name", gone && "gone", changed && "changed"].filter(Boolean).join(" ");
  label.textContent = name;
  const badges = found.map(([count, severity]) => {
    const badge = document.createElement("span");
    badge.className = `count ${severity}`;
    badge.textContent = count;
    return badge;
  });
  button.replaceChildren(label, ...badges);
  button.onclick = () => open(path);
  return button;
}
