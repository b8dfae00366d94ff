package mullwright.cli;

import static mullwright.cli.Fixtures.CHECK;
import static mullwright.cli.Fixtures.LENGTHS;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The program itself writes the same bytes on a machine of another language or time zone. */
class SameEverywhereTest {
  private static final List<List<String>> MACHINES =
      List.of(
          List.of("-Duser.language=en", "-Duser.timezone=UTC", "-Dfile.encoding=UTF-8"),
          List.of(
              "-Duser.language=tr",
              "-Duser.country=TR",
              "-Duser.timezone=Asia/Tokyo",
              "-Dfile.encoding=ISO-8859-1"),
          List.of(
              "-Duser.language=ar",
              "-Duser.country=EG",
              "-Duser.extensions=u-nu-arab",
              "-Duser.timezone=America/St_Johns",
              "-Dfile.encoding=US-ASCII"));

  @Test
  void checkAndLengths() throws IOException, InterruptedException {
    for (List<String> command :
        List.of(
            List.of("check", "--width=80", "broken.wall"),
            List.of("lengths", "--output=csv", "--root=..", "../lengths/east.wall"),
            List.of("diff", "--output=html", "broken.wall", "../lengths/east.wall"))) {
      List<String> answers = new ArrayList<>();
      for (List<String> machine : MACHINES) {
        answers.add(run(machine, command));
      }
      assertThat(answers.get(0)).isNotEmpty();
      assertThat(answers).allMatch(answers.get(0)::equals);
    }
    assertThat(run(MACHINES.get(2), List.of("check", "--width=80", "broken.wall")))
        .isEqualTo(Fixtures.read(CHECK.resolve("broken.80.txt")));
    assertThat(LENGTHS).isDirectory();
  }

  private static String run(List<String> machine, List<String> arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(machine);
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    command.addAll(arguments);
    Process process =
        new ProcessBuilder(command)
            .directory(CHECK.toFile())
            .redirectError(new File("/dev/null"))
            .start();
    process.getOutputStream().close();
    byte[] out = process.getInputStream().readAllBytes();
    process.waitFor();
    return new String(out, StandardCharsets.UTF_8);
  }
}
