package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * The steps that {@code examples/version-control} offers to code hosts, run by a shell in a real
 * repository: what a host itself would do (installing packages, writing a comment) is stood in for.
 */
class SnippetsTest {
  private static final Path SNIPPETS = Path.of("..", "examples", "version-control");
  private static final int MINUTES = 5;
  private static final String SOUND = "at 2'-0\" above L2  gap 5/8\"";
  private static final String BAD = "at 3'-0\" above L2  gap 5/8\"";

  @TempDir Path folder;
  private Path bin;
  private Path work;

  private record Ended(int code, String said) {}

  @BeforeEach
  void repository() throws IOException, InterruptedException {
    assumeTrue(has("bash") && has("git"), "skipped: no bash or no git here");
    bin = Files.createDirectories(folder.resolve("bin"));
    work = Files.createDirectories(folder.resolve("work"));
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String program =
        "exec '"
            + java
            + "' -cp '"
            + System.getProperty("java.class.path")
            + "' mullwright.cli.Main";
    script("mullwright", program + " \"$@\"");
    // java -jar mullwright.jar …
    script(
        "java",
        "[ \"$1 $2\" = '-jar mullwright.jar' ] || exit 99\nshift 2\n" + program + " \"$@\"");
    script(
        "gh",
        "echo \"gh $*\" >> '"
            + folder.resolve("gh.txt")
            + "'\ncat \"${!#}\" >> '"
            + folder.resolve("gh.txt")
            + "'");
    script("apt-get", "exit 0");
    Path examples = Path.of("..", "examples");
    for (String file : List.of("catalog/captured.wall", "ferry-terminal/east.wall")) {
      Fixtures.write(work, file, Fixtures.read(examples.resolve(file)));
    }
    Fixtures.write(
        work,
        "with space/east two.wall",
        Fixtures.read(examples.resolve("ferry-terminal/east.wall")));
    sh(
        "git init -q -b main . && git config user.email drafter@example.invalid"
            + " && git config user.name Drafter && git add . && git commit -qm first"
            + " && git update-ref refs/remotes/origin/main HEAD && git checkout -q -b topic");
  }

  private boolean has(String program) throws InterruptedException {
    try {
      return new ProcessBuilder(program, "--version").start().waitFor() == 0;
    } catch (IOException missing) {
      return false;
    }
  }

  private void script(String name, String text) throws IOException {
    Path file = Files.writeString(bin.resolve(name), "#!/bin/bash\n" + text + "\n");
    assertThat(file.toFile().setExecutable(true)).isTrue();
  }

  private Ended sh(String text, String... environment) throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    ProcessBuilder builder =
        new ProcessBuilder("bash", "-e", "-o", "pipefail", "-c", text)
            .directory(work.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile());
    Map<String, String> names = builder.environment();
    names.put("PATH", bin + ":" + names.get("PATH"));
    names.put("GIT_CONFIG_GLOBAL", "/dev/null");
    for (int at = 0; at < environment.length; at += 2) {
      names.put(environment[at], environment[at + 1]);
    }
    Process process = builder.start();
    process.getOutputStream().close();
    if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError(text + " did not end");
    }
    return new Ended(process.exitValue(), Files.readString(said));
  }

  private void edit(String from, String to) throws IOException, InterruptedException {
    String text = Fixtures.read(work.resolve("ferry-terminal/east.wall"));
    assertThat(text).contains(from);
    Fixtures.write(work, "ferry-terminal/east.wall", text.replace(from, to));
    sh("git commit -qam change");
  }

  private static Map<?, ?> yaml(String name) {
    return new Yaml(new SafeConstructor(new LoaderOptions()))
        .load(Fixtures.read(SNIPPETS.resolve(name)));
  }

  /** The shell text of each step of the workflow, by the step's name. */
  private static Map<String, String> steps() {
    Map<?, ?> job = (Map<?, ?>) ((Map<?, ?>) yaml("github-workflow.yml").get("jobs")).get("check");
    Map<String, String> steps = new TreeMap<>();
    for (Object each : (List<?>) job.get("steps")) {
      Map<?, ?> step = (Map<?, ?>) each;
      if (step.containsKey("run")) {
        steps.put(
            String.valueOf(step.get("name")),
            step.get("run")
                .toString()
                .replace("${{ github.base_ref }}", "main")
                .replace("${{ github.event.number }}", "17"));
      }
    }
    assertThat(steps.toString()).doesNotContain("${{");
    return steps;
  }

  @Test
  void theWorkflowAnnotatesUploadsAndComments() throws IOException, InterruptedException {
    edit(SOUND, "at 2'-0\" above L2  gap 3/4\"");
    Map<String, String> steps = steps();
    assertThat(steps).hasSize(3);
    assertThat(sh(steps.get("Findings at the lines of the change")).code()).isZero();
    assertThat(sh(steps.get("Findings for code scanning")).code()).isZero();
    assertThat(
            JsonParser.parseString(Fixtures.read(work.resolve("walls.sarif")))
                .getAsJsonObject()
                .get("version")
                .getAsString())
        .isEqualTo("2.1.0");
    assertThat(sh(steps.get("The change as a comment")).code()).isZero();
    assertThat(Fixtures.read(folder.resolve("gh.txt")))
        .contains("gh pr comment 17 --body-file change.md", "gap 5/8\" → 3/4\"");
    edit("at 2'-0\" above L2  gap 3/4\"", BAD);
    Ended found = sh(steps.get("Findings at the lines of the change"));
    assertThat(found.code()).isEqualTo(Exit.FINDINGS);
    assertThat(found.said()).contains("::error file=ferry-terminal/east.wall,line=");
    assertThat(sh(steps.get("Findings for code scanning")).code()).isZero();
    assertThat(sh(steps.get("The change as a comment")).code()).isZero();
  }

  @Test
  void thePipelineLeavesItsReportsWhateverItFinds() throws IOException, InterruptedException {
    Map<?, ?> job = (Map<?, ?>) yaml("gitlab-ci.yml").get("walls");
    List<String> script = new ArrayList<>();
    for (String part : List.of("before_script", "script")) {
      ((List<?>) job.get(part)).forEach(line -> script.add(line.toString()));
    }
    String all = String.join("\n", script);
    edit(SOUND, "at 2'-0\" above L2  gap 3/4\"");
    Ended clean = sh(all);
    assertThat(clean.code()).as(clean.said()).isZero();
    assertThat(work.resolve("change.html")).doesNotExist();
    edit("at 2'-0\" above L2  gap 3/4\"", BAD);
    Ended found = sh(all, "CI_MERGE_REQUEST_DIFF_BASE_SHA", "main");
    assertThat(found.code()).as(found.said()).isEqualTo(Exit.FINDINGS);
    assertThat(Fixtures.read(work.resolve("change.html"))).contains("<html");
    assertThat(
            JsonParser.parseString(Fixtures.read(work.resolve("walls.codequality.json")))
                .getAsJsonArray())
        .isNotEmpty();
    assertThat(Fixtures.read(work.resolve("walls.junit.xml"))).contains("<testsuites");
    for (Object path : (List<?>) ((Map<?, ?>) job.get("artifacts")).get("paths")) {
      assertThat(work.resolve(path.toString())).exists();
    }
  }

  @Test
  void anyOtherHostSeesOnlyNewFindings() throws IOException, InterruptedException {
    String steps = Fixtures.read(SNIPPETS.resolve("any-host.sh"));
    edit(SOUND, BAD);
    assertThat(sh(steps, "BASE", "main").code()).isEqualTo(Exit.FINDINGS);
    assertThat(Fixtures.read(work.resolve("change.html"))).contains("<html");
    // what the base has already is no news
    edit("/// Waiting hall", "// reviewed\n/// Waiting hall");
    Ended known = sh(steps, "BASE", "HEAD~1");
    assertThat(known.code()).as(known.said()).isZero();
    for (String shard : List.of("1/2", "2/2")) {
      assertThat(sh(steps, "BASE", "HEAD~1", "SHARD", shard).code()).isZero();
    }
  }

  @Test
  void theHookLooksAtWhatIsStaged() throws IOException, InterruptedException {
    Path hook = work.resolve(".git/hooks/pre-commit");
    Files.createDirectories(hook.getParent());
    Files.copy(SNIPPETS.resolve("pre-commit"), hook);
    assertThat(hook.toFile().setExecutable(true)).isTrue();
    for (String file : List.of("ferry-terminal/east.wall", "with space/east two.wall")) {
      String sound = Fixtures.read(work.resolve(file));
      // bad as it is staged, whatever lies in the work tree
      Fixtures.write(work, file, sound.replace(SOUND, BAD));
      sh("git add .");
      Fixtures.write(work, file, sound);
      Ended refused = sh("git commit -qm bad");
      assertThat(refused.code()).as(refused.said()).isNotZero();
      assertThat(refused.said()).contains("splice-on-horizontal");
      // sound as it is staged, bad in the work tree
      Fixtures.write(work, file, sound.replace(SOUND, "at 2'-0\" above L2  gap 3/4\""));
      sh("git add .");
      Fixtures.write(work, file, sound.replace(SOUND, BAD));
      Ended taken = sh("git commit -qm sound");
      assertThat(taken.code()).as(taken.said()).isZero();
      sh("git checkout -q -- .");
    }
    try (Stream<Path> left = Files.list(work)) {
      assertThat(left.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder(".git", "catalog", "ferry-terminal", "with space");
    }
    // a commit without walls needs no check
    Fixtures.write(work, "notes.txt", "none\n");
    assertThat(sh("git add . && PATH=/usr/bin:/bin git commit -qm notes").code()).isZero();
  }
}
