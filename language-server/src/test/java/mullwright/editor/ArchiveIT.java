package mullwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The class-data archive is made beside the jar, fits it, and holds the classes of every stage. */
class ArchiveIT {
  @TempDir Path folder;

  @Test
  void theArchiveHoldsWhatAServerNeeds() throws Exception {
    Path jar = Files.copy(Tools.jar(), folder.resolve("mullwright.jar"));

    Tools.Ran made = java("-jar", jar.toString(), "archive");

    assertThat(made.output()).contains("mullwright.jsa", "serve");
    String arguments = Files.readString(folder.resolve("mullwright.args"));
    Path archive = folder.resolve("mullwright.jsa");
    assertThat(arguments).contains("-XX:SharedArchiveFile=\"" + archive + "\"");
    Path loaded = folder.resolve("loaded.txt");
    java(
        "-XX:SharedArchiveFile=" + archive,
        "-Xshare:auto",
        "-Xlog:class+load:file=" + loaded,
        "-jar",
        jar.toString(),
        "check",
        Tools.project().resolve("examples/ferry-terminal").toString());
    List<String> ours =
        Files.readAllLines(loaded).stream()
            .filter(line -> line.contains(" mullwright.") && !line.contains("mullwright.cli"))
            .filter(line -> !line.contains("mullwright.report"))
            .toList();
    assertThat(ours).as("lambdas are linked ahead").noneMatch(line -> line.contains("$$Lambda"));
    long shared = ours.stream().filter(line -> line.contains("shared objects file")).count();
    assertThat(shared).isGreaterThan(500).isGreaterThan(ours.size() * 9L / 10);
  }

  private Tools.Ran java(String... arguments) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(arguments));
    return Tools.run(folder, Map.of(), command);
  }
}
