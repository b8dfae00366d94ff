/** Finds a Java that can run the server: by setting, JAVA_HOME, then PATH. */
import { posix, win32 } from "node:path";

/** The least Java the server runs on. */
export const LEAST_JAVA = 17;

export interface Java {
  /** The program to start. */
  program: string;
  /** Its version: 17 for 17.0.15. */
  version: number;
  /** Who named it, for people. */
  from: string;
}

/** What is asked of the machine; handed in so that it can be told otherwise in a test. */
export interface Machine {
  platform: NodeJS.Platform;
  environment: Record<string, string | undefined>;
  isFile(path: string): boolean;
  /** What `program -version` prints; rejects if it cannot be started. */
  versionOf(program: string): Promise<string>;
}

export class NoJava extends Error {}

/**
 * The first Java that is new enough. A setting that names none is an error and is not passed over
 * in silence; a JAVA_HOME that is too old is, if PATH has a better one.
 *
 * @param setting a Java folder or its `java` program; empty if not set
 * @throws NoJava with what was looked at and how to mend it
 */
export async function findJava(setting: string, machine: Machine): Promise<Java> {
  const looked: string[] = [];
  for (const place of places(setting, machine)) {
    if (place.program === undefined) {
      looked.push(place.nothing);
    } else {
      const version = await read(place.program, machine);
      if (version !== undefined && version >= LEAST_JAVA) {
        return { program: place.program, version, from: place.from };
      }
      looked.push(
        version === undefined
          ? `${place.from} names ${place.program}, which does not start`
          : `${place.from} names ${place.program}, which is Java ${version}`,
      );
    }
  }
  throw new NoJava(
    `Mullwright needs Java ${LEAST_JAVA} or later to check walls, and found none: ` +
      `${looked.join("; ")}. ` +
      (setting === ""
        ? "Install one, or name its folder in the setting mullwright.java.home."
        : "Mend the setting mullwright.java.home, or empty it to use JAVA_HOME or PATH."),
  );
}

interface Place {
  from: string;
  program?: string;
  /** What to say if there is no program. */
  nothing: string;
}

function places(setting: string, machine: Machine): Place[] {
  if (setting !== "") {
    return [named("The setting mullwright.java.home", setting, machine)];
  }
  const found: Place[] = [];
  const home = machine.environment.JAVA_HOME ?? "";
  found.push(
    home === ""
      ? { from: "JAVA_HOME", nothing: "JAVA_HOME is not set" }
      : named("JAVA_HOME", home, machine),
  );
  found.push(onPath(machine));
  return found;
}

/** The program in a Java folder, or the path itself if it is one. */
function named(from: string, path: string, machine: Machine): Place {
  const nothing = `${from} is ${path}, and there is no ${executable(machine)} in its bin folder`;
  const inside = paths(machine).join(path, "bin", executable(machine));
  const program = [inside, path].find((candidate) => machine.isFile(candidate));
  return { from, program, nothing };
}

function onPath(machine: Machine): Place {
  const from = "PATH";
  const variable = Object.keys(machine.environment).find((name) =>
    machine.platform === "win32" ? name.toUpperCase() === "PATH" : name === "PATH",
  );
  const folders = (variable && machine.environment[variable]) || "";
  const program = folders
    .split(paths(machine).delimiter)
    .filter((folder) => folder !== "")
    .map((folder) => paths(machine).join(folder, executable(machine)))
    .find((candidate) => machine.isFile(candidate));
  return { from, program, nothing: `PATH has no ${executable(machine)}` };
}

async function read(program: string, machine: Machine): Promise<number | undefined> {
  try {
    return javaVersion(await machine.versionOf(program));
  } catch {
    // why it does not start is of no help: that it does not is said
    return undefined;
  }
}

/** The version in what `java -version` prints; 8 for 1.8. */
export function javaVersion(printed: string): number | undefined {
  const match = /version "(\d+)(?:\.(\d+))?/.exec(printed);
  if (!match) {
    return undefined;
  }
  const first = Number(match[1]);
  return first === 1 && match[2] !== undefined ? Number(match[2]) : first;
}

function executable(machine: Machine): string {
  return machine.platform === "win32" ? "java.exe" : "java";
}

function paths(machine: Machine): typeof posix {
  return machine.platform === "win32" ? win32 : posix;
}
