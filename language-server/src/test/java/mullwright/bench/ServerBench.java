package mullwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.stream.Stream;

/**
 * Measures the packaged server over its standard streams, as an editor uses it: cold start, edit to
 * diagnostics, hover, completion, memory.
 *
 * <p>First diagnostics are told twice: of a text no server has seen, which is checked for them, and
 * of one that an earlier server checked, whose findings were kept. Both keep theirs in folders of
 * the bench's own.
 *
 * <p>From the folder of the whole project, after {@code mvn -o -q package -DskipTests}:
 *
 * <pre>{@code
 * java -cp language-server/target/test-classes:language-server/target/mullwright.jar \
 *     mullwright.bench.ServerBench [-rounds N] [-edits N] [-jar FILE] [-peer "COMMAND"] \
 *     [JVM-OPTION...]
 * }</pre>
 *
 * <p>A peer is a JSON language server, driven beside ours in the same call over a JSON text of as
 * many lines: {@code "node …/vscode-json-language-server --stdio"} of the npm package
 * vscode-langservers-extracted, installed anywhere.
 *
 * <p>Edits are timed after two thirds as many that are not: a drafter makes thousands, and over the
 * first few hundred most of the time is the compiler's.
 *
 * <p>JVM options go to the server; without any it is started by the launch recipe's argument file.
 * Every edit waits for the diagnostics of its own version. Times are the client's, on whatever else
 * the machine does: compare within one run.
 */
public final class ServerBench {
  private static final String TYPED = "splice 9 at 2'-1\" above L7 gap 5/8\"";

  private final List<String> server;
  private final int rounds;
  private final int edits;
  private final Path examples = Path.of("examples").toAbsolutePath();

  private ServerBench(List<String> server, int rounds, int edits) {
    this.server = server;
    this.rounds = rounds;
    this.edits = edits;
  }

  public static void main(String[] args) throws IOException {
    List<String> options = new ArrayList<>(Arrays.asList(args));
    int rounds = Integer.parseInt(take(options, "-rounds", "10"));
    int edits = Integer.parseInt(take(options, "-edits", "1000"));
    String jar = take(options, "-jar", "language-server/target/mullwright.jar");
    String peer = take(options, "-peer", "");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-jar", jar, "serve"));
    ServerBench bench = new ServerBench(command, rounds, edits);
    System.out.println(String.join(" ", command));
    bench.run();
    if (!peer.isEmpty()) {
      System.out.println(peer);
      new ServerBench(List.of(peer.split(" ")), rounds, edits).peer();
    }
  }

  private static String take(List<String> options, String name, String otherwise) {
    int at = options.indexOf(name);
    if (at < 0) {
      return otherwise;
    }
    options.remove(at);
    return options.remove(at);
  }

  private void run() throws IOException {
    String tower = Files.readString(examples.resolve("tower/north.wall"));
    String long2000 = GeneratedWalls.file(2000);
    System.out.printf(
        "%-28s %12s %12s %12s %10s %10s %10s %10s %8s%n",
        "text",
        "initialize",
        "never seen",
        "seen before",
        "edit p50",
        "edit p99",
        "hover",
        "complete",
        "peak MB");
    measure(
        "ferry terminal",
        "ferry-terminal/east.wall",
        Files.readString(examples.resolve("ferry-terminal/east.wall")));
    measure("tower, 12 floors", "tower/north.wall", tower);
    measure("file of " + long2000.lines().count() + " lines", "tower/long.wall", long2000);
    local(tower);
  }

  /**
   * Changes {@linkplain LocalEdit one thing} at a time of a tower, and of one 100 times as large.
   */
  private void local(String tower) {
    System.out.printf("%-34s %22s %22s%n", "edit p50 / p99 of one thing", "12 by 20", "120 by 200");
    List<String> small = local(tower, 12, 20);
    List<String> large = local(tower, 120, 200);
    for (int i = 0; i < LocalEdit.ALL.size(); i++) {
      System.out.printf(
          "%-34s %22s %22s%n", LocalEdit.ALL.get(i).name(), small.get(i), large.get(i));
    }
    int typed = LocalEdit.ALL.size();
    System.out.printf(
        "%-34s %22s %22s%n",
        "a letter of a splice being typed", small.get(typed), large.get(typed));
    System.out.printf(
        "%-34s %22s %22s%n", "peak MB", small.get(small.size() - 1), large.get(large.size() - 1));
  }

  private List<String> local(String tower, int floors, int bays) {
    String text = GeneratedWalls.tower(tower, floors, bays);
    String name = "tower/" + floors + "-by-" + bays + ".wall";
    String address = examples.resolve(name).toUri().toString();
    List<String> told = new ArrayList<>();
    try (WireClient client = new WireClient(server)) {
      client.initialize(examples);
      client.open(address, "wall", text);
      client.diagnostics(address, 1);
      int[] version = {1};
      for (LocalEdit edit : LocalEdit.ALL) {
        int line = lineWith(text, edit.one());
        int from = text.lines().toList().get(line).indexOf(edit.one());
        String[] both = {edit.other(), edit.one()};
        // an even number each time leaves the text as it was
        IntConsumer change =
            i -> {
              int was = both[(i + 1) % 2].length();
              client.change(address, ++version[0], line, from, from + was, both[i % 2]);
              client.diagnostics(address, version[0]);
            };
        int count = Math.max(2, edits / LocalEdit.ALL.size() / 2 * 2);
        times(count, change);
        told.add(halfAndMost(times(count, change)));
      }
      told.add(halfAndMost(typed(client, address, text, version)));
      told.add(Long.toString(client.peakMegabytes()));
    }
    return told;
  }

  /** A statement is put on a line of its own and taken away again, letter by letter. */
  private double[] typed(WireClient client, String address, String text, int[] version) {
    int line = lineWith(text, LocalEdit.ALL.get(0).one());
    int end = text.lines().toList().get(line).length();
    client.change(address, ++version[0], line, end, end, "\n");
    client.diagnostics(address, version[0]);
    int letters = TYPED.length();
    IntConsumer change =
        i -> {
          int at = i % (2 * letters);
          boolean back = at >= letters;
          int from = back ? 2 * letters - 1 - at : at;
          String letter = back ? "" : TYPED.substring(from, from + 1);
          client.change(address, ++version[0], line + 1, from, from + (back ? 1 : 0), letter);
          client.diagnostics(address, version[0]);
        };
    times(2 * letters, change);
    return times(Math.max(1, edits / 2 / letters) * 2 * letters, change);
  }

  private static String halfAndMost(double[] times) {
    return String.format(Locale.ROOT, "%.1f / %.1f", at(times, 50), at(times, 99));
  }

  /**
   * The same of a server of JSON: it is asked for its diagnostics, for it waits before it tells.
   */
  private void peer() {
    String text = GeneratedWalls.json(2000);
    String address = examples.resolve("tower/long.json").toUri().toString();
    double[] initialize = new double[rounds];
    double[] first = new double[rounds];
    for (int i = 0; i < rounds; i++) {
      long start = System.nanoTime();
      try (WireClient client = new WireClient(server)) {
        client.initialize(examples);
        initialize[i] = millis(start);
        client.open(address, "json", text);
        client.pulled(address);
        first[i] = millis(start);
      }
    }
    try (WireClient client = new WireClient(server)) {
      client.initialize(examples);
      client.open(address, "json", text);
      int line = lineWith(text, "\"number\"");
      int at = text.lines().toList().get(line).indexOf(": ") + 2;
      int[] version = {1};
      IntConsumer change =
          i -> {
            client.change(address, ++version[0], line, at, at + 1, Integer.toString(i % 10));
            client.pulled(address);
          };
      times(edits / 3 * 2, change);
      double[] edit = times(edits, change);
      System.out.printf(
          Locale.ROOT,
          "%-28s %12.0f %12.0f %10.2f %10.2f %10s %10s %8d%n",
          "JSON of " + text.lines().count() + " lines",
          at(initialize, 50),
          at(first, 50),
          at(edit, 50),
          at(edit, 99),
          "",
          "",
          client.peakMegabytes());
    }
  }

  private void measure(String name, String path, String text) throws IOException {
    String address = examples.resolve(path).toUri().toString();
    Path kept = Files.createTempDirectory("mullwright-bench");
    double[] initialize = new double[rounds];
    double[] neverSeen = new double[rounds];
    double[] seenBefore = new double[rounds];
    int found = 0;
    for (int i = 0; i < rounds; i++) {
      Path folder = kept.resolve(Integer.toString(i));
      double[] first = start(folder, address, text);
      double[] second = start(folder, address, text);
      initialize[i] = first[0];
      neverSeen[i] = first[1];
      seenBefore[i] = second[1];
      found = (int) first[2];
      if (first[2] != second[2]) {
        throw new IllegalStateException("not the same is found: " + first[2] + ", " + second[2]);
      }
    }
    try (WireClient client = new WireClient(keeping(kept.resolve("edits")))) {
      client.initialize(examples);
      client.open(address, "wall", text);
      client.diagnostics(address, 1);
      double[] edit = edits(client, address, text);
      int line = lineWith(text, "vertical");
      int column = text.lines().toList().get(line).indexOf("vertical") + 2;
      double[] hover = warm(i -> client.ask("textDocument/hover", address, line, column));
      double[] complete =
          warm(i -> client.ask("textDocument/completion", address, line, column + 12));
      System.out.printf(
          Locale.ROOT,
          "%-28s %12.0f %12.0f %12.0f %10.2f %10.2f %10.2f %10.2f %8d   (%d diagnostics)%n",
          name,
          at(initialize, 50),
          at(neverSeen, 50),
          at(seenBefore, 50),
          at(edit, 50),
          at(edit, 99),
          at(hover, 50),
          at(complete, 50),
          client.peakMegabytes(),
          found);
    }
    try (Stream<Path> all = Files.walk(kept)) {
      for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** Milliseconds to the first answer and to the first diagnostics, and how many these are. */
  private double[] start(Path kept, String address, String text) {
    long start = System.nanoTime();
    try (WireClient client = new WireClient(keeping(kept))) {
      client.initialize(examples);
      double initialize = millis(start);
      client.open(address, "wall", text);
      int found = client.diagnostics(address, 1);
      return new double[] {initialize, millis(start), found};
    }
  }

  /** The server, keeping what it finds in that folder. */
  private List<String> keeping(Path folder) {
    List<String> command = new ArrayList<>(server);
    command.add(1, "-Dmullwright.cache=" + folder);
    return command;
  }

  /** Widens the first bays by a sixteenth and takes it back, so that every length changes. */
  private double[] edits(WireClient client, String address, String text) {
    int line = lineWith(text, " @ ");
    String row = text.lines().toList().get(line);
    int at = row.indexOf(" @ ") + 3;
    int end = row.indexOf('"', at) + 1;
    String was = row.substring(at, end);
    String[] texts = {"5'-0 1/16\"", was};
    int[] length = {was.length()};
    int[] version = {1};
    IntConsumer change =
        i -> {
          String now = texts[i % 2];
          client.change(address, ++version[0], line, at, at + length[0], now);
          length[0] = now.length();
          client.diagnostics(address, version[0]);
        };
    return warm(change);
  }

  /** Times of a job after it has been done two thirds as often without looking at the clock. */
  private double[] warm(IntConsumer job) {
    times(edits / 3 * 2, job);
    return times(edits, job);
  }

  private static double[] times(int count, IntConsumer job) {
    double[] times = new double[count];
    for (int i = 0; i < count; i++) {
      long start = System.nanoTime();
      job.accept(i);
      times[i] = millis(start);
    }
    return times;
  }

  private static int lineWith(String text, String words) {
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).contains(words)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no line with " + words);
  }

  private static double millis(long start) {
    return (System.nanoTime() - start) / 1e6;
  }

  private static double at(double[] times, int percent) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[Math.min(sorted.length - 1, sorted.length * percent / 100)];
  }
}
