// The list of files at the side, by folder, with what was changed and what was found in each.

/**
 * @param files all there are: `{ path }`
 * @param about for a path: `{ current, changed, errors, warnings }`
 */
export function draw(files, about, open) {
  const list = document.getElementById("files");
  const drawn = [];
  let folder;
  for (const { path } of files) {
    const slash = path.lastIndexOf("/");
    const within = path.slice(0, Math.max(slash, 0));
    if (within !== folder) {
      folder = within;
      const heading = document.createElement("h2");
      heading.textContent = within === "" ? "This folder" : within;
      drawn.push(heading);
    }
    drawn.push(row(path, path.slice(slash + 1), about(path), open));
  }
  if (drawn.length === 0) {
    const nothing = document.createElement("h2");
    nothing.textContent = "There is no wall in this folder yet.";
    drawn.push(nothing);
  }
  const focused = list.contains(document.activeElement) && document.activeElement.dataset.path;
  const top = list.scrollTop;
  list.replaceChildren(...drawn);
  list.scrollTop = top;
  keepInSight(list);
  if (focused) {
    list.querySelector(`[data-path="${CSS.escape(focused)}"]`)?.focus();
  }
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

function row(path, name, { current, changed, errors, warnings }, open) {
  const button = document.createElement("button");
  button.dataset.path = path;
  button.setAttribute("aria-current", String(current));
  const found = [[errors, "error"], [warnings, "warning"]].filter(([count]) => count > 0);
  const counted = found.map(([count, severity]) => `${count} ${severity}${count === 1 ? "" : "s"}`);
  button.setAttribute("aria-label", [name, ...(changed ? ["not saved"] : []), ...counted].join(", "));
  const label = document.createElement("span");
  label.className = changed ? "name changed" : "name";
  label.textContent = name;
  label.title = changed ? `${path}, not saved` : path;
  button.append(label);
  found.forEach(([count, severity], i) => {
    const badge = document.createElement("span");
    badge.className = `count ${severity}`;
    badge.textContent = count;
    badge.title = counted[i];
    button.append(badge);
  });
  button.onclick = () => open(path);
  return button;
}
