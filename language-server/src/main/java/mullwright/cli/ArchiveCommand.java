package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import mullwright.server.FirstTalk;
import picocli.CommandLine.Command;

/**
 * Makes a class-data archive beside the jar, so that the server starts quicker.
 *
 * <p>It starts the server, lets it read a wall for every rule, and keeps the classes it loaded. The
 * archive is tied to this Java, and to the jar's path and time: a server that finds it does not fit
 * starts without it and says nothing.
 */
@Command(
    name = "archive",
    description = {
      "Make a class-data archive beside the jar: the server starts in about half the time.",
      "Start it then with: java @mullwright.args -jar mullwright.jar serve"
    },
    mixinStandardHelpOptions = true)
final class ArchiveCommand implements Callable<Integer> {
  private static final int PATIENCE_SECONDS = 60;

  private final Shell shell;

  ArchiveCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    Path jar = jar();
    Path archive = jar.resolveSibling("mullwright.jsa");
    Path arguments = jar.resolveSibling("mullwright.args");
    try {
      // half an archive ends a Java that maps it: it takes its name when it is whole
      Path unfinished = jar.resolveSibling("mullwright.jsa.unfinished");
      Files.deleteIfExists(archive);
      try (ScratchFolder folder = ScratchFolder.make()) {
        FirstTalk.walls(folder.path());
        Path classes = folder.path().resolve("classes");
        // the second server finds what the first has kept, and so loads what reads it
        talk(jar, folder.path(), List.of());
        talk(jar, folder.path(), List.of("-XX:DumpLoadedClassList=" + classes));
        dump(jar, classes, unfinished);
      }
      if (Files.exists(unfinished)) {
        Files.move(unfinished, archive, StandardCopyOption.REPLACE_EXISTING);
        Files.writeString(arguments, arguments(archive));
      }
    } catch (IOException failed) {
      throw new CannotException(
          "The archive beside " + jar + " cannot be made: " + failed.getMessage() + ".");
    }
    if (!Files.exists(archive)) {
      throw new CannotException("This Java made no archive; the server works without.");
    }
    shell.out().println(archive);
    shell.out().println("java @" + arguments + " -jar " + jar + " serve");
    return Exit.CLEAN;
  }

  private static Path jar() throws CannotException {
    try {
      Path jar =
          Path.of(ArchiveCommand.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      if (Files.isRegularFile(jar)) {
        return jar;
      }
    } catch (URISyntaxException unreadable) {
      throw new CannotException("The place of the jar cannot be read: " + unreadable.getInput());
    }
    throw new CannotException("There is no jar to make an archive for: this runs from classes.");
  }

  // a warning about a stale archive goes to standard output unless told otherwise, and there it
  // would break the talk with the editor
  private static String arguments(Path archive) {
    List<String> lines = new ArrayList<>();
    lines.add("-Xlog:disable");
    lines.add("-Xlog:all=warning:stderr");
    lines.add("-XX:+DisplayVMOutputToStderr");
    lines.add("-XX:+UseSerialGC");
    lines.add("-XX:TieredStopAtLevel=1");
    // a second compiler takes from a start on two cores more than it gives
    lines.add("-XX:CICompilerCount=1");
    lines.add("-XX:-UsePerfData");
    lines.add("-Xmn64m");
    // begins small, and grows for the rare wall of tens of thousands of cells
    lines.add("-Xms80m");
    lines.add("-Xmx2g");
    if (System.getProperty("os.name").equals("Linux")) {
      // the first touch of each small page of the heap is a seventh of a cold start; other systems
      // do not know the option and would refuse to start
      lines.add("-XX:+UseTransparentHugePages");
    }
    lines.add("-XX:SharedArchiveFile=\"" + archive.toString().replace("\\", "\\\\") + "\"");
    lines.add("");
    return String.join("\n", lines);
  }

  private static void talk(Path jar, Path folder, List<String> options) throws IOException {
    List<String> command = java();
    command.add("-Dmullwright.cache=" + folder.resolve("cache"));
    command.addAll(options);
    command.addAll(List.of("-jar", jar.toString(), "serve"));
    Process server =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    try {
      FirstTalk.with(server.getInputStream(), server.getOutputStream(), folder);
      awaitEnd(server, "the server");
    } finally {
      server.destroyForcibly();
    }
  }

  /**
   * Puts those classes, the library's own and ours, into one archive. One that holds only what
   * stands not in Java's own would be mapped beside it, and a start pays for the pages of both.
   */
  private static void dump(Path jar, Path classes, Path archive) throws IOException {
    List<String> command = java();
    command.add("-Xshare:dump");
    command.add("-XX:SharedClassListFile=" + classes);
    command.add("-XX:SharedArchiveFile=" + archive);
    command.addAll(List.of("-jar", jar.toString()));
    Process dump =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      awaitEnd(dump, "the dump of classes");
    } finally {
      dump.destroyForcibly();
    }
    if (dump.exitValue() != 0) {
      Files.deleteIfExists(archive);
    }
  }

  /** This Java, of the kind that an archive is made for. */
  private static List<String> java() {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Xlog:disable");
    command.add("-XX:+UseSerialGC");
    command.add("-XX:TieredStopAtLevel=1");
    return command;
  }

  private static void awaitEnd(Process process, String what) throws IOException {
    try {
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        throw new IOException(what + " did not end");
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("it was interrupted", stopped);
    }
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new ArchiveCommand(shell);
    }
  }
}
