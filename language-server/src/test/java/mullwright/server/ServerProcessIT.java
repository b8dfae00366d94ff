package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import mullwright.bench.GeneratedWalls;
import mullwright.editor.Tools;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packaged server in a process of its own: it ends with its client, and its standard output
 * carries the protocol and nothing else whatever goes wrong ({@link RawTalk} reads every byte).
 */
class ServerProcessIT {
  private static final String SHUTDOWN = "{'jsonrpc':'2.0','id':90,'method':'shutdown'}";
  private static final String EXIT = "{'jsonrpc':'2.0','method':'exit'}";

  @TempDir Path folder;

  private final List<Process> started = new ArrayList<>();
  private Path errors;

  @BeforeEach
  void places() {
    errors = folder.resolve("stderr.txt");
  }

  @AfterEach
  void endAll() {
    started.forEach(Process::destroyForcibly);
  }

  @Test
  void endsWhenItsClientIsKilledAndThePipeStaysOpen() throws IOException {
    Process client = started(new ProcessBuilder("sleep", "600"));
    RawTalk talk = server(jar());
    greet(talk, "'processId':" + client.pid() + ",");
    // once this is answered, which waits until there is nothing else to do, it watches
    talk.say(
        "{'jsonrpc':'2.0','id':7,'method':'workspace/diagnostic','params':{'previousResultIds':[]}}");
    talk.answer(7);
    assertThat(talk.exitCode).isNotDone();
    client.destroyForcibly();
    assertThat(talk.end()).isEqualTo(1); // LSP 3.17, exit: 1 without shutdown
  }

  @Test
  void endsWhenThePipeIsClosed() throws IOException {
    RawTalk talk = server(jar());
    greet(talk, "'processId':null,");
    talk.hangUp();
    assertThat(talk.end()).isEqualTo(1);
  }

  @Test
  void endsWhenNobodyEverSpeaks() throws IOException {
    RawTalk talk = server(jar());
    talk.hangUp();
    assertThat(talk.end()).isEqualTo(1);
  }

  @Test
  void anArchiveThatIsNoneOrOfAnotherJarCostsNoWord() throws Exception {
    Path jar = Files.copy(Tools.jar(), folder.resolve("mullwright.jar"));
    Tools.Ran made =
        Tools.run(folder, java.util.Map.of(), List.of("java", "-jar", jar.toString(), "archive"));
    assertThat(made.exit()).as(made.output()).isZero();
    String arguments = "@" + folder.resolve("mullwright.args");
    goodTalk(server(List.of(arguments, "-jar", jar.toString())));
    // the jar is newer than its archive
    Files.setLastModifiedTime(jar, java.nio.file.attribute.FileTime.fromMillis(1_000_000_000_000L));
    goodTalk(server(List.of(arguments, "-jar", jar.toString())));
    Files.write(folder.resolve("mullwright.jsa"), new byte[5000]);
    goodTalk(server(List.of(arguments, "-jar", jar.toString())));
    Files.delete(folder.resolve("mullwright.jsa"));
    goodTalk(server(List.of(arguments, "-jar", jar.toString())));
  }

  @Test
  void whatLibrariesPrintDoesNotReachTheProtocol() throws IOException {
    // a logger that is told all of what happens, and a property nobody should set
    RawTalk talk =
        server(
            List.of(
                "-Djava.util.logging.ConsoleHandler.level=ALL",
                "-Dfile.encoding=UTF-16",
                // nor can such a Java read its environment
                "-Dmullwright.cache=" + folder.resolve("cache"),
                "-jar",
                Tools.jar().toString()));
    goodTalk(talk);
  }

  @Test
  void aHugeFileAndAHugeTextAreToldAndServed() throws IOException {
    String line = "// " + "x".repeat(60) + "\n";
    Files.writeString(folder.resolve("huge.wall"), line.repeat((9 << 20) / line.length()));
    RawTalk talk = server(jar());
    greet(talk, "'processId':null,'rootUri':'" + folder.toUri() + "',");
    String east = folder.resolve("east.wall").toUri().toString();
    talk.say(opened(east, "use \\\"huge.wall\\\"\\nwall East {\\n}\\n"));
    assertThat(published(talk, east)).contains("huge.wall");
    String huge = folder.resolve("other.wall").toUri().toString();
    talk.say(
        opened(
            huge,
            IntStream.range(0, 20_000)
                .mapToObj(i -> "let a" + i + " = 1\\n")
                .collect(Collectors.joining())));
    published(talk, huge);
    leave(talk);
  }

  @Test
  void aWallThatNeedsMoreMemoryThanThereIsIsToldAndOtherTextsAreServed() throws IOException {
    Path examples = Tools.project().resolve("examples");
    Files.createDirectory(folder.resolve("catalog"));
    Files.createDirectory(folder.resolve("tower"));
    Files.copy(examples.resolve("catalog/captured.wall"), folder.resolve("catalog/captured.wall"));
    String tower = Files.readString(examples.resolve("tower/north.wall"));
    RawTalk talk = server(List.of("-Xmx32m", "-XX:+UseSerialGC", "-jar", Tools.jar().toString()));
    greet(talk, "'processId':null,'rootUri':'" + folder.toUri() + "',");
    String north = folder.resolve("tower/north.wall").toUri().toString();
    talk.say(openedAsItIs(north, GeneratedWalls.tower(tower, 60, 120)));
    // nothing may look as if the wall had been checked
    assertThat(published(talk, north)).contains("Not checked", "-Xmx4g");
    assertThat(talk.next().get("method").getAsString()).isEqualTo("window/showMessage");
    talk.say(
        "{'jsonrpc':'2.0','id':8,'method':'workspace/diagnostic','params':{'previousResultIds':[]}}");
    assertThat(talk.answer(8).toString()).contains("Not answered", "-Xmx4g");
    String east = folder.resolve("east.wall").toUri().toString();
    talk.say(
        "{'jsonrpc':'2.0','method':'textDocument/didClose','params':{'textDocument':{'uri':'"
            + north
            + "'}}}");
    talk.say(opened(east, "wall East {\\n  gridd {\\n  }\\n}\\n"));
    assertThat(published(talk, east)).contains("gridd").doesNotContain("Not checked");
    leave(talk);
  }

  @Test
  void aCheckThatNeedsMoreMemoryThanThereIsSaysSo() throws Exception {
    Path examples = Tools.project().resolve("examples");
    String tower = Files.readString(examples.resolve("tower/north.wall"));
    Path wall = Files.createDirectory(folder.resolve("tower")).resolve("north.wall");
    Files.writeString(wall, GeneratedWalls.tower(tower, 60, 120));
    Files.createDirectory(folder.resolve("catalog"));
    Files.copy(examples.resolve("catalog/captured.wall"), folder.resolve("catalog/captured.wall"));
    List<String> command = new ArrayList<>(List.of("java", "-Xmx32m"));
    command.addAll(jar());
    command.addAll(List.of("check", wall.toString()));
    Tools.Ran ran = Tools.run(folder, java.util.Map.of(), command);
    assertThat(ran.output()).contains("needs more memory", "-Xmx4g").doesNotContain("Exception");
    // not that of findings
    assertThat(ran.exit()).isEqualTo(2);
  }

  @Test
  void aRuleWithAFaultCostsItsOwnAnswerAndIsToldOnce() throws IOException {
    String classes = Path.of("target/test-classes").toAbsolutePath().toString();
    // the packed jar knows its rules; as compiled, they are looked for
    String compiled = Path.of("target/classes").toAbsolutePath().toString();
    RawTalk talk =
        server(
            List.of(
                "-cp",
                String.join(
                    File.pathSeparator,
                    compiled,
                    Tools.jar().toString(),
                    classes,
                    classes + File.separator + "breaking-rule"),
                "mullwright.cli.Main"));
    greet(talk, "'processId':null,");
    String east = folder.resolve("east.wall").toUri().toString();
    talk.say(opened(east, "wall East {\\n  gridd {\\n  }\\n}\\n"));
    List<String> told = new ArrayList<>();
    for (int version = 2; version < 6; version++) {
      told.addAll(until(talk, "textDocument/publishDiagnostics"));
      talk.say(
          "{'jsonrpc':'2.0','method':'textDocument/didChange','params':{'textDocument':{'uri':'"
              + east
              + "','version':"
              + version
              + "},'contentChanges':[{'text':'wall East {\\n  gridd"
              + " ".repeat(version)
              + "{\\n  }\\n}\\n'}]}}");
    }
    told.addAll(until(talk, "textDocument/publishDiagnostics"));
    assertThat(told.get(told.size() - 1)).contains("gridd");
    assertThat(told.stream().filter(message -> message.contains("window/logMessage")))
        .singleElement()
        .asString()
        .contains("breaks-on-purpose", "broken on purpose");
    leave(talk);
    assertThat(Files.readString(errors)).containsOnlyOnce("broken on purpose");
  }

  /** Two drafters and the shop on one folder, each with a program of its own. */
  @Test
  void twoServersAndTheCommandLineShareAFolder() throws Exception {
    Path examples = Tools.project().resolve("examples");
    Path wall = folder.resolve("ferry/east.wall");
    Files.createDirectories(folder.resolve("catalog"));
    Files.createDirectories(wall.getParent());
    Files.copy(examples.resolve("catalog/captured.wall"), folder.resolve("catalog/captured.wall"));
    Files.copy(examples.resolve("ferry-terminal/east.wall"), wall);
    String text = Files.readString(wall);
    String east = wall.toUri().toString();
    List<RawTalk> talks = List.of(server(jar()), server(jar()));
    for (RawTalk talk : talks) {
      greet(talk, "'processId':null,'rootUri':'" + folder.toUri() + "',");
      talk.say(openedAsItIs(east, text));
      published(talk, east);
    }
    // both read the ledger while it is written
    String tickets =
        "{'jsonrpc':'2.0','id':50,'method':'workspace/executeCommand','params':"
            + "{'command':'mullwright.showTickets','arguments':['"
            + east
            + "']}}";
    talks.forEach(talk -> talk.say(tickets));
    List<String> issue = new ArrayList<>(List.of("java"));
    issue.addAll(jar());
    issue.addAll(List.of("tickets", "--issue", "ferry/east.wall"));
    Tools.Ran issued = Tools.run(folder, java.util.Map.of(), issue);
    assertThat(issued.exit()).as(issued.output()).isZero();
    for (RawTalk talk : talks) {
      assertThat(told(talk.answer(50))).contains("icket").doesNotContain("at fault");
      talk.say(tickets);
      assertThat(told(talk.answer(50))).doesNotContain("at fault");
      leave(talk);
    }
    assertThat(Files.readString(wall)).isEqualTo(text);
    try (java.util.stream.Stream<Path> all = Files.list(wall.getParent())) {
      assertThat(all.map(it -> it.getFileName().toString()))
          .containsExactlyInAnyOrder("east.wall", "east.marks");
    }
  }

  /** The text has marks of feet, which {@link RawTalk#say(String)} takes for quotes. */
  private static JsonObject openedAsItIs(String address, String text) {
    JsonObject document = new JsonObject();
    document.addProperty("uri", address);
    document.addProperty("languageId", "wall");
    document.addProperty("version", 1);
    document.addProperty("text", text);
    JsonObject parameters = new JsonObject();
    parameters.add("textDocument", document);
    JsonObject message = new JsonObject();
    message.addProperty("jsonrpc", "2.0");
    message.addProperty("method", "textDocument/didOpen");
    message.add("params", parameters);
    return message;
  }

  @Test
  void whatIsCheckedFirstMakesFewClassesOnTheSpot() throws IOException {
    for (String file : List.of("catalog/captured.wall", "ferry-terminal/east.wall")) {
      Path to = folder.resolve(file);
      Files.createDirectories(to.getParent());
      Files.copy(Tools.project().resolve("examples").resolve(file), to);
    }
    Path loaded = folder.resolve("loaded.txt");
    RawTalk talk =
        started(
            List.of("-Xlog:class+load:file=" + loaded, "-jar", Tools.jar().toString()),
            List.of("serve", "--no-cache"));
    greet(talk, "'processId':null,'rootUri':'" + folder.toUri() + "',");
    Path wall = folder.resolve("ferry-terminal/east.wall");
    talk.say(openedAsItIs(wall.toUri().toString(), Files.readString(wall)));
    published(talk, wall.toUri().toString());
    leave(talk);
    // each is linked by the library at run time, which costs a start as much as ten plain classes
    assertThat(Files.readString(loaded))
        .contains("mullwright.layout.LayoutBuilder")
        .doesNotContain("java.util.Comparator$$Lambda")
        .doesNotContain("java.util.stream.Collectors", "java.util.stream.IntPipeline");
  }

  /** What a schedule says that was written to a file. */
  private static String told(JsonObject answer) throws IOException {
    return Files.readString(Path.of(java.net.URI.create(answer.get("result").getAsString())));
  }

  @Test
  void formatReadsAPipe() throws Exception {
    List<String> command = new ArrayList<>(List.of("java"));
    command.addAll(jar());
    command.addAll(List.of("format", "-"));
    Process format = started(new ProcessBuilder(command));
    format
        .getOutputStream()
        .write("wall   East{\n}\n".getBytes(java.nio.charset.StandardCharsets.UTF_8));
    format.getOutputStream().close();
    assertThat(
            new String(
                format.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8))
        .isEqualTo("wall East {\n}\n");
    assertThat(format.waitFor()).isZero();
  }

  @Test
  void whatIsFoundIsKeptForTheNextStartUnlessNothingIsToBe() throws IOException {
    Path kept = folder.resolve("cache");
    String east = folder.resolve("east.wall").toUri().toString();
    List<String> java = List.of("-Dmullwright.cache=" + kept, "-jar", Tools.jar().toString());
    List<String> said = new ArrayList<>();
    for (List<String> words :
        List.of(List.of("serve", "--no-cache"), List.of("serve"), List.of("serve", "--stdio"))) {
      RawTalk talk = started(java, words);
      greet(talk, "'processId':null,'rootUri':'" + folder.toUri() + "',");
      talk.say(opened(east, "wall East {\\n  gridd {\\n  }\\n}\\n"));
      said.add(published(talk, east));
      leave(talk);
      assertThat(Files.exists(kept)).isEqualTo(said.size() > 1);
    }
    assertThat(said.get(0)).contains("gridd");
    assertThat(said).containsOnly(said.get(0));
    assertThat(kept.resolve("findings")).isDirectoryContaining(it -> true);
  }

  private static List<String> jar() {
    return List.of("-jar", Tools.jar().toString());
  }

  private Process started(ProcessBuilder builder) throws IOException {
    Process process = builder.start();
    started.add(process);
    return process;
  }

  private RawTalk server(List<String> java) throws IOException {
    return started(java, List.of("serve"));
  }

  private RawTalk started(List<String> java, List<String> words) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(java);
    command.addAll(words);
    return new RawTalk(started(new ProcessBuilder(command).redirectError(errors.toFile())));
  }

  private static void greet(RawTalk talk, String said) {
    talk.say(RawTalk.INITIALIZE.replace("'params':{", "'params':{" + said));
    talk.answer(1);
    talk.say("{'jsonrpc':'2.0','method':'initialized','params':{}}");
  }

  private void goodTalk(RawTalk talk) {
    greet(talk, "");
    String east = folder.resolve("east.wall").toUri().toString();
    talk.say(opened(east, "wall East {\\n  gridd {\\n  }\\n}\\n"));
    assertThat(published(talk, east)).contains("gridd");
    leave(talk);
  }

  private static void leave(RawTalk talk) {
    talk.say(SHUTDOWN);
    talk.answer(90);
    talk.say(EXIT);
    assertThat(talk.end()).isZero();
  }

  private static String opened(String address, String text) {
    return "{'jsonrpc':'2.0','method':'textDocument/didOpen','params':{'textDocument':{'uri':'"
        + address
        + "','languageId':'wall','version':1,'text':'"
        + text
        + "'}}}";
  }

  private static String published(RawTalk talk, String address) {
    while (true) {
      List<String> told = until(talk, "textDocument/publishDiagnostics");
      String last = told.get(told.size() - 1);
      if (last.contains(address)) {
        return last;
      }
    }
  }

  /** What the server says up to the first message of that method. */
  private static List<String> until(RawTalk talk, String method) {
    List<String> told = new ArrayList<>();
    while (true) {
      JsonObject next = talk.next();
      told.add(next.toString());
      if (next.has("method") && next.get("method").getAsString().equals(method)) {
        return told;
      }
    }
  }
}
