package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Command;

/**
 * Makes a class-data archive beside the jar, so that the server starts quicker.
 *
 * <p>It starts the server once, lets it read a small wall, and keeps the classes it loaded. The
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

  /** What an editor says to a server, until it has seen the wall checked. */
  private static final List<String> TALK =
      List.of(
          "{'jsonrpc':'2.0','id':1,'method':'initialize','params':"
              + "{'processId':null,'rootUri':null,'capabilities':{}}}",
          "{'jsonrpc':'2.0','method':'initialized','params':{}}",
          "{'jsonrpc':'2.0','method':'textDocument/didOpen','params':{'textDocument':"
              + "{'uri':'file:///archive/first.wall','languageId':'wall','version':1,'text':'WALL'}}}",
          "{'jsonrpc':'2.0','id':2,'method':'textDocument/hover','params':{'textDocument':"
              + "{'uri':'file:///archive/first.wall'},'position':{'line':5,'character':4}}}",
          "{'jsonrpc':'2.0','method':'textDocument/didChange','params':{'textDocument':"
              + "{'uri':'file:///archive/first.wall','version':2},'contentChanges':[{'range':"
              + "{'start':{'line':0,'character':0},'end':{'line':0,'character':0}},'text':' '}]}}",
          "{'jsonrpc':'2.0','id':3,'method':'textDocument/documentSymbol','params':{'textDocument':"
              + "{'uri':'file:///archive/first.wall'}}}");

  private static final List<String> FAREWELL =
      List.of("{'jsonrpc':'2.0','id':4,'method':'shutdown'}", "{'jsonrpc':'2.0','method':'exit'}");

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
      Files.deleteIfExists(archive);
      Files.writeString(arguments, arguments(archive));
      record(jar, archive);
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
    return String.join(
        "\n",
        "-Xlog:disable",
        "-Xlog:all=warning:stderr",
        "-XX:+UseSerialGC",
        "-XX:TieredStopAtLevel=1",
        "-Xmn32m",
        "-Xmx256m",
        "-XX:SharedArchiveFile=\"" + archive.toString().replace("\\", "\\\\") + "\"",
        "");
  }

  private static void record(Path jar, Path archive) throws IOException {
    Process server =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:disable",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:ArchiveClassesAtExit=" + archive,
                "-jar",
                jar.toString(),
                "serve")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try (OutputStream to = server.getOutputStream()) {
      for (String message : TALK) {
        send(message, to);
      }
      listen(server);
      for (String message : FAREWELL) {
        send(message, to);
      }
      if (!server.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        throw new IOException("the server did not end");
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("it was interrupted", stopped);
    } finally {
      server.destroyForcibly();
    }
  }

  private static void send(String message, OutputStream to) throws IOException {
    byte[] body =
        message.replace('\'', '"').replace("WALL", wall()).getBytes(StandardCharsets.UTF_8);
    to.write(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
    to.write(body);
    to.flush();
  }

  // the wall is checked once its findings are published, and the last question answered
  private static void listen(Process server) throws IOException {
    StringBuilder heard = new StringBuilder();
    byte[] some = new byte[8192];
    while (heard.indexOf("publishDiagnostics") < 0 || heard.indexOf("\"id\":3") < 0) {
      int read = server.getInputStream().read(some);
      if (read < 0) {
        throw new IOException("the server ended too soon");
      }
      heard.append(new String(some, 0, read, StandardCharsets.ISO_8859_1));
    }
  }

  // touches every stage once; JSON escapes instead of line ends and inch marks
  private static String wall() {
    return String.join(
            "\n",
            "catalog Small {",
            "  system s { mullion m",
            "    intermediate m }",
            "  profile m {",
            "    role mullion",
            "    face 60 mm",
            "    depth 150 mm",
            "    Ix 3.4e6 mm4",
            "    stock 6 m",
            "  }",
            "  anchor a { metal steel }",
            "  glass g { ply 6 mm clear }",
            "}",
            "wall W {",
            "  system s",
            "  criteria { wind field 1 kPa in, 1 kPa out }",
            "  grid {",
            "    lines A..C  spaced 2 @ 1500 mm",
            "    floor L1  at 0 mm",
            "    floor L2  at 3 m",
            "    row low  at 100 mm above L1",
            "    row high  at 100 mm above L2",
            "  }",
            "  members {",
            "    vertical all  as m",
            "    horizontal all  as m",
            "  }",
            "  anchors {",
            "    clip all  at low",
            "    dead-load all  at L2  part a",
            "  }",
            "  lites {",
            "    vision g  all",
            "  }",
            "}",
            "")
        .replace("\n", "\\n");
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
