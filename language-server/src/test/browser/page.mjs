// What all that drives the page in a browser needs: the browser, patience, pictures, and an eye on
// what goes wrong unseen.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";

const PATIENCE = 60_000;

export const launch = () =>
  chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu"],
  });

/** A page that patiently waits, and what went `wrong` in it and what it asked of `foreign` machines. */
export async function watched(browser) {
  const page = await browser.newPage({ viewport: { width: 1360, height: 1120 } });
  page.setDefaultTimeout(PATIENCE);
  const wrong = [];
  page.on("pageerror", (error) => wrong.push(`error: ${error.stack}`));
  page.on("console", (said) => {
    if (said.type() === "error") {
      wrong.push(`console: ${said.text()} ${said.location().url}`);
    }
  });
  const foreign = [];
  page.on("request", (request) => {
    const { protocol, hostname } = new URL(request.url());
    if (["http:", "https:", "ws:", "wss:"].includes(protocol) && hostname !== "127.0.0.1") {
      foreign.push(request.url());
    }
  });
  return { page, wrong, foreign };
}

export async function until(what, holds) {
  const end = Date.now() + PATIENCE;
  while (Date.now() < end) {
    if (await holds()) {
      return;
    }
    await new Promise((later) => setTimeout(later, 100));
  }
  throw new Error(`waited in vain: ${what}`);
}

/** Tells each step when it is done, and leaves a picture of the page. */
export function steps(page, pictures) {
  mkdirSync(pictures, { recursive: true });
  let step = 0;
  return async (what) => {
    step += 1;
    await page.screenshot({ path: join(pictures, `${step}-${what.replace(/[^a-z]+/g, "-")}.png`) });
    console.log(`${step} ${what}`);
  };
}

/** A promise and what keeps it: to hold something back until it may go. */
export function gate() {
  let open;
  const opened = new Promise((then) => (open = then));
  return { opened, open };
}

/** Drives the page to the end; if that fails, with a picture and with what went wrong unseen. */
export async function driven({ browser, page, wrong, pictures }, drive) {
  try {
    await drive();
  } catch (failure) {
    await page.screenshot({ path: join(pictures, "failed.png") });
    console.error(wrong.join("\n"));
    throw failure;
  } finally {
    await browser.close();
  }
}
