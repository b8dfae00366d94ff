/** How the jar is started: as server, as checker, and to make its class-data archive. */
import { join, dirname } from "node:path";

export interface Launch {
  /** The Java program. */
  java: string;
  jar: string;
  /** What the user adds for the Java virtual machine. */
  extra: readonly string[];
}

/** Whether two launches start the same server in the same way. */
export function same(one: Launch, other: Launch): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

export interface Started {
  command: string;
  args: string[];
}

/**
 * Quick to start and small. Warnings of the virtual machine go to standard error: on standard
 * output they would break the talk.
 */
const FLAGS = [
  "-Xlog:disable",
  "-Xlog:all=warning:stderr",
  "-XX:+UseSerialGC",
  "-XX:TieredStopAtLevel=1",
  "-XX:CICompilerCount=1",
];

/** The argument file that `mullwright archive` writes beside the jar. */
export function argumentFile(jar: string): string {
  return join(dirname(jar), "mullwright.args");
}

/** @param archived true if the argument file is there and was made by this Java for this jar */
export function serve(launch: Launch, archived: boolean): Started {
  const flags = archived ? [`@${argumentFile(launch.jar)}`] : FLAGS;
  return { command: launch.java, args: [...flags, ...launch.extra, "-jar", launch.jar, "serve"] };
}

/** Makes the archive, so that the next start takes about half the time. */
export function archive(launch: Launch): Started {
  return { command: launch.java, args: ["-jar", launch.jar, "archive"] };
}

/** As wide as may be, so that a problem's sentence stands on one line. */
const WIDTH = "400";

/** Checks files and folders and prints findings as the problem matchers read them. */
export function check(launch: Launch, files: readonly string[]): Started {
  return {
    command: launch.java,
    args: [...launch.extra, "-jar", launch.jar, "check", "--width", WIDTH, ...files],
  };
}
