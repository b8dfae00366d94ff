/** The machine this runs on, as {@link findJava} asks about it. */
import { execFile } from "node:child_process";
import { statSync } from "node:fs";
import { Machine } from "./java";

const PATIENCE = 10_000;

export const thisMachine: Machine = {
  platform: process.platform,
  environment: process.env,
  isFile(path) {
    return statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;
  },
  versionOf(program) {
    return new Promise((resolve, reject) => {
      execFile(program, ["-version"], { timeout: PATIENCE }, (failed, out, err) =>
        failed ? reject(failed) : resolve(err + out),
      );
    });
  },
};
