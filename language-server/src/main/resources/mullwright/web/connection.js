// The talk with the server: begun, told to be over, taken up again.
import { listen } from "./listen.js";
import { say, state } from "./word.js";

const OVER = "The talk with the server broke off. What you type stays here; it is not checked until the talk is taken up again.";

export class Connection {
  #page;
  #beginning;
  #unsay = () => {};

  /** Called when a talk has begun. */
  whenBegun = () => {};

  constructor(page) {
    this.#page = page;
  }

  get connected() {
    const { wire } = this.#page.session;
    return wire !== undefined && wire.over === undefined;
  }

  /** Begins; if it cannot, why is said, and the reader can try again. */
  async begin() {
    await this.#begin().catch((failed) => this.#gone(failed.message));
  }

  /** Takes the talk up again if it is over; for whoever finds that the server is there. */
  async resume() {
    if (!this.connected) {
      // that it is over was said, and stays said
      await this.#begin().catch(() => undefined);
    }
  }

  #begin() {
    this.#beginning ??= this.#beginAnew().finally(() => (this.#beginning = undefined));
    return this.#beginning;
  }

  async #beginAnew() {
    const { session, findings, refreshes } = this.#page;
    await session.begin((wire) => listen(this.#page, wire));
    session.wire.whenOver = (reason) => this.#gone(reason || OVER);
    // what the server before this one found is told anew, or is no more
    findings.clear();
    refreshes.fire();
    state("Connected");
    this.#unsay();
    this.whenBegun();
  }

  #gone(reason) {
    state("Not connected", true);
    this.#unsay = say(reason, [["Try again", () => this.begin()]]);
  }
}
