// JSON-RPC 2.0 over a WebSocket, one message a frame.

const CANCELLED = -32800;
const OUTDATED = -32801;
const NOT_OFFERED = -32601;
const FAILED = -32803;

const SILENT = "The server does not answer. Start it again, and open the address it prints; what is not saved here can be copied over.";

export class Refused extends Error {
  constructor({ code, message }) {
    super(message);
    this.code = code;
  }
}

export class Wire {
  #socket;
  #asked = 0;
  #waiting = new Map();
  #handlers = new Map();

  /** Called once with the reason when the talk is over. */
  whenOver = () => {};

  /** The reason once it is over, empty if none was given. */
  over;

  constructor(address) {
    this.#socket = new WebSocket(address);
    this.#socket.onmessage = (event) => this.#take(JSON.parse(event.data));
    this.#socket.onclose = (event) => this.#over(event.reason);
  }

  /** Resolves when it can be talked over. */
  open() {
    return new Promise((opened, failed) => {
      this.#socket.addEventListener("open", () => opened());
      this.#socket.addEventListener("close", ({ reason }) => failed(new Error(reason || SILENT)));
    });
  }

  /** Answers what the other side asks or tells by that name; a question gets what is returned. */
  on(method, handler) {
    this.#handlers.set(method, handler);
  }

  tell(method, params) {
    this.#send({ method, params });
  }

  /**
   * Asks; null if the question was taken back or the text has moved on.
   * @param token Monaco's way to take a question back
   */
  ask(method, params, token) {
    const id = ++this.#asked;
    const answer = new Promise((answered, refused) => this.#waiting.set(id, { answered, refused }));
    this.#send({ id, method, params });
    const watch = token?.onCancellationRequested(() => {
      if (this.#waiting.has(id)) {
        this.tell("$/cancelRequest", { id });
      }
    });
    return answer.finally(() => watch?.dispose());
  }

  #send(message) {
    if (this.#socket.readyState === WebSocket.OPEN) {
      this.#socket.send(JSON.stringify({ jsonrpc: "2.0", ...message }));
    } else {
      this.#settle({ id: message.id, result: null });
    }
  }

  #take(message) {
    if (message.method === undefined) {
      this.#settle(message);
    } else if (message.id === undefined) {
      this.#handlers.get(message.method)?.(message.params);
    } else {
      this.#answer(message);
    }
  }

  #settle({ id, result, error }) {
    const waiting = this.#waiting.get(id);
    this.#waiting.delete(id);
    if (!error || error.code === CANCELLED || error.code === OUTDATED) {
      waiting?.answered(result ?? null);
    } else {
      waiting?.refused(new Refused(error));
    }
  }

  async #answer({ id, method, params }) {
    const handler = this.#handlers.get(method);
    if (!handler) {
      this.#send({ id, error: { code: NOT_OFFERED, message: `'${method}' is not offered.` } });
      return;
    }
    try {
      this.#send({ id, result: (await handler(params)) ?? null });
    } catch (failed) {
      // who asked waits for an answer
      this.#send({ id, error: { code: FAILED, message: `'${method}' failed: ${failed.message}` } });
    }
  }

  #over(reason) {
    this.over = reason;
    for (const { answered } of this.#waiting.values()) {
      answered(null);
    }
    this.#waiting.clear();
    this.whenOver(reason);
  }
}
