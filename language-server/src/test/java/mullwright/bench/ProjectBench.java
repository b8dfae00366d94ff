package mullwright.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Measures the check of a project of many walls with the jar, as a build would run it: cold, warm
 * out of the cache, and warm after one wall changed; and that all three agree.
 *
 * <p>After {@code mvn -q -DskipTests package} and {@code mvn -q test-compile}, in {@code
 * language-server}:
 *
 * <pre>java -cp target/test-classes mullwright.bench.ProjectBench [COUNT] [OPTIONS OF JAVA…]</pre>
 *
 * <p>The walls are made here, each another: bays, widths and heights differ from wall to wall.
 */
public final class ProjectBench {
  private static final int USUAL = 1000;
  private static final PrintStream OUT = System.out;

  private ProjectBench() {}

  /** Runs it. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : USUAL;
    List<String> options =
        arguments.length > 1 ? Arrays.asList(arguments).subList(1, arguments.length) : List.of();
    Path folder = Files.createTempDirectory("project-bench");
    try {
      make(folder, count);
      Path jar = Path.of("target", "mullwright.jar").toAbsolutePath();
      String cold = run("cold, " + count + " walls", folder, jar, options);
      String warm = run("warm", folder, jar, options);
      Path changed = folder.resolve("walls/w0.wall");
      Files.writeString(changed, "// another line\n" + Files.readString(changed));
      run("warm, one wall changed", folder, jar, options);
      OUT.println("same bytes cold and warm: " + cold.equals(warm));
    } finally {
      delete(folder);
    }
  }

  private static void make(Path folder, int count) throws IOException {
    Path examples = Path.of("..", "examples");
    Files.createDirectories(folder.resolve("catalog"));
    Files.createDirectories(folder.resolve("walls"));
    Files.copy(examples.resolve("catalog/captured.wall"), folder.resolve("catalog/captured.wall"));
    String ferry = Files.readString(examples.resolve("ferry-terminal/east.wall"));
    for (int at = 0; at < count; at++) {
      String text =
          ferry
              .replace("wall East", "wall W" + at)
              .replace(
                  "spaced 6 @ 5'-0\"",
                  "spaced 6 @ 4'-" + at % 12 + " " + (at / 12 % 15 + 1) + "/16\"")
              .replace("row R1      at 3'-0\"", "row R1      at 3'-" + at % 7 + "\"");
      Files.writeString(folder.resolve("walls/w" + at + ".wall"), text);
    }
  }

  private static String run(String what, Path folder, Path jar, List<String> options)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-jar", jar.toString(), "check", "--cache", "kept", "--output", "json"));
    long before = ofChildren();
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    long cpu = ofChildren() - before;
    OUT.printf(
        java.util.Locale.ROOT,
        "%-24s %6.2f s, %d KB of findings%s%n",
        what,
        (System.nanoTime() - start) / 1e9,
        out.length() / 1024,
        cpu > 0 ? ", processor " + cpu + " ms" : "");
    return out;
  }

  /** Milliseconds of processor that all ended children took; 0 where the system does not tell. */
  private static long ofChildren() throws IOException {
    Path told = Path.of("/proc/self/stat");
    if (!Files.isReadable(told)) {
      return 0;
    }
    // behind the name in brackets, which may hold anything: user and system time in hundredths
    String[] fields = Files.readString(told).replaceFirst("(?s).*\\) ", "").split(" ");
    return 10 * (Long.parseLong(fields[13]) + Long.parseLong(fields[14]));
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
