// What the editor itself has to tell, as the word of the moment: by itself it tells it to nobody.
import { say } from "./word.js";

const plain = (message) => [message].flat().map((one) => one?.message ?? String(one)).join(" ");

const nothing = { dispose() {} };
const handle = {
  close() {},
  onDidClose: () => nothing,
  updateMessage() {},
  updateSeverity() {},
  progress: { infinite() {}, total() {}, worked() {}, done() {} },
};

function told(message) {
  say(plain(message));
  return handle;
}

/** Monaco's `INotificationService`, as far as it is asked here. */
export const notices = {
  onDidAddNotification: () => nothing,
  onDidRemoveNotification: () => nothing,
  onDidChangeFilter: () => nothing,
  info: told,
  warn: told,
  error: told,
  notify: ({ message }) => told(message),
  prompt(_severity, message, choices) {
    say(plain(message), [...choices.map(({ label, run }) => [label, run]), ["Close", () => {}]]);
    return handle;
  },
  status: () => handle,
  setFilter() {},
  getFilter: () => 0,
  getFilters: () => [],
  removeFilter() {},
};
