package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.ServiceLoader;
import java.util.stream.Stream;
import mullwright.report.CheckPart;
import mullwright.report.kept.KeptTexts;
import mullwright.report.kept.PartCache;
import mullwright.workspace.DiskFiles;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a check keeps for the next one changes no byte of any answer, whatever happens between. */
class KeptChecksTest {
  private static final int WALLS = 6;

  @TempDir Path folder;

  @BeforeEach
  void walls() {
    Path examples = Path.of("..", "examples");
    Fixtures.write(
        folder, "catalog/captured.wall", Fixtures.read(examples.resolve("catalog/captured.wall")));
    String ferry = Fixtures.read(examples.resolve("ferry-terminal/east.wall"));
    for (int at = 0; at < WALLS; at++) {
      Fixtures.write(
          folder,
          wall(at),
          ferry.replace("wall East", "wall W" + at).replace("gap 5/8\"", "gap " + at + "/8\""));
    }
  }

  private static String wall(int at) {
    return "walls/w" + at + ".wall";
  }

  private void replace(String file, String from, String to) {
    String text = Fixtures.read(folder.resolve(file));
    assertThat(text).contains(from);
    Fixtures.write(folder, file, text.replace(from, to));
  }

  /** Makes all files old, so that what is kept of them is trusted. */
  private void age() {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        Files.setLastModifiedTime(file, FileTime.fromMillis(1_700_000_000_000L));
      }
    } catch (IOException failed) {
      throw new AssertionError(failed);
    }
  }

  private void sameAsNew(String... more) {
    String[] plain = new String[more.length + 1];
    plain[0] = "check";
    System.arraycopy(more, 0, plain, 1, more.length);
    String[] kept = new String[more.length + 3];
    System.arraycopy(plain, 0, kept, 0, plain.length);
    kept[plain.length] = "--cache";
    kept[plain.length + 1] = "kept";
    Ran expected = Ran.in(folder, plain);
    assertThat(Ran.in(folder, kept)).isEqualTo(expected);
    assertThat(Ran.in(folder, kept)).isEqualTo(expected);
  }

  @Test
  void everyChangeOfATextIsSeen() {
    sameAsNew();
    replace(wall(1), "gap 1/8\"", "gap 9/8\"");
    sameAsNew();
    replace("catalog/captured.wall", "depth 6\"", "depth 7\"");
    sameAsNew();
    Fixtures.write(folder, "mullwright.properties", "severity.splice-gap-too-small = warning\n");
    sameAsNew();
    Fixtures.write(folder, "mullwright.properties", "severity.nonsense = warning\n");
    sameAsNew();
    Fixtures.write(folder, "mullwright.properties", "");
    sameAsNew("--output", "json");
    Fixtures.write(folder, wall(2), "use \"no.wall\"\n");
    sameAsNew();
    // a file that was missing comes, and then is no text
    Fixtures.write(folder, "walls/no.wall", "let a = 1\"\n");
    sameAsNew();
    Fixtures.write(folder, "walls/no.wall", "let a = 1\"\0\n");
    sameAsNew();
  }

  /** Whether a part is unused hangs on the files that use its own, which are not asked for here. */
  @Test
  void aChangeOfAFileThatUsesAnotherIsSeen() {
    String glass = "catalog {\n  glass V9 {\n    ply 1/4\" annealed clear\n  }\n}\n";
    Fixtures.write(folder, "walls/parts.wall", glass + "wall Parts {\n}\n");
    sameAsNew("walls/parts.wall", "--fail-on", "information");
    assertThat(Ran.in(folder, "check", "walls/parts.wall").out()).contains("“V9” is given");
    Fixtures.write(
        folder,
        "walls/user.wall",
        "use \"parts.wall\"\nwall User {\n  lites {\n    vision V9 all\n  }\n}\n");
    sameAsNew("walls/parts.wall", "--fail-on", "information");
    assertThat(Ran.in(folder, "check", "walls/parts.wall").out()).doesNotContain("“V9” is given");
  }

  @Test
  void aChangeOfTheSameLengthAtOnceIsSeen() {
    for (int gap = 1; gap < 9; gap++) {
      replace(wall(1), "gap " + gap + "/8\"", "gap " + (gap + 1) + "/8\"");
      sameAsNew();
    }
  }

  @Test
  void aChangeThatPutsTheTimeBackIsSeen() throws IOException, InterruptedException {
    age();
    // a disk's clock may count in steps of two seconds: only then is a file surely an old one
    Thread.sleep(2_500);
    sameAsNew();
    Path file = folder.resolve(wall(1));
    FileTime before = Files.getLastModifiedTime(file);
    replace(wall(1), "gap 1/8\"", "gap 9/8\"");
    Files.setLastModifiedTime(file, before);
    sameAsNew();
  }

  @Test
  void theAnswerIsThatOfItsQuestion() {
    sameAsNew("--output", "json");
    sameAsNew("--output", "text", "--width", "60");
    sameAsNew("--output", "text", "--width", "90");
    sameAsNew("--color", "always");
    sameAsNew("--fail-on", "error");
    sameAsNew("--shard", "1/2");
    sameAsNew("--shard", "2/2");
    sameAsNew(wall(3));
    sameAsNew("walls");
    sameAsNew("--output", "sarif");
  }

  @Test
  void theSameFilesFromAnotherFolderAreShownFromThere() {
    Path inside = folder.resolve("walls");
    String[] whole = {"check", "--root", "..", "--cache", "../kept"};
    Ran fromInside = Ran.in(inside, whole);
    assertThat(Ran.in(folder, "check", "walls", "--cache", "kept"))
        .isEqualTo(Ran.in(folder, "check", "walls"));
    assertThat(Ran.in(inside, whole)).isEqualTo(fromInside);
  }

  @Test
  void damageOfWhatIsKeptIsAsGoodAsNone() throws IOException {
    Ran expected = Ran.in(folder, "check");
    Random random = new Random(4);
    for (int round = 0; round < 12; round++) {
      Ran.in(folder, "check", "--cache", "kept");
      try (Stream<Path> all = Files.list(folder.resolve("kept"))) {
        for (Path file : all.toList()) {
          byte[] bytes = Files.readAllBytes(file);
          if (round % 3 == 0) {
            Files.write(file, Arrays.copyOf(bytes, random.nextInt(bytes.length)));
          } else {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            Files.write(file, bytes);
          }
        }
      }
      assertThat(Ran.in(folder, "check", "--cache", "kept")).isEqualTo(expected);
    }
    // a folder that cannot be one costs time and no answer
    Fixtures.write(folder, "taken", "a file\n");
    assertThat(Ran.in(folder, "check", "--cache", "taken")).isEqualTo(expected);
  }

  @Test
  void theKeptFolderHoldsAFewFilesHoweverManyWallsAndQuestions() throws IOException {
    for (int width = 60; width < 80; width++) {
      Ran.in(folder, "check", "--cache", "kept", "--width", String.valueOf(width));
    }
    try (Stream<Path> all = Files.list(folder.resolve("kept"))) {
      assertThat(all.map(file -> file.getFileName().toString().replaceFirst("-.*", "")).toList())
          .contains("parts", "answer")
          .hasSizeLessThanOrEqualTo(10);
    }
  }

  @Test
  void twoBranchesAreBothKept() {
    DiskFiles disk = new DiskFiles(folder);
    Path kept = folder.resolve("kept");
    Ran.in(folder, "check", "--cache", "kept");
    String here = Fixtures.read(folder.resolve(wall(1)));
    replace(wall(1), "gap 1/8\"", "gap 7/8\"");
    Ran.in(folder, "check", "--cache", "kept");
    Fixtures.write(folder, wall(1), here);
    PartCache cache = new PartCache(kept, "another program", KeptTexts.open(kept, disk));
    assertThat(cache.get(wall(1))).isEmpty();
    cache.put(new CheckPart(wall(1), 1, Map.of(), List.of(), List.of(), List.of(), List.of()));
    cache.save();
    PartCache again = new PartCache(kept, "another program", KeptTexts.open(kept, disk));
    assertThat(again.get(wall(1))).isPresent();
    replace(wall(1), "gap 1/8\"", "gap 7/8\"");
    PartCache other = new PartCache(kept, "another program", KeptTexts.open(kept, disk));
    assertThat(other.get(wall(1))).isEmpty();
    Fixtures.write(folder, wall(1), here);
    PartCache back = new PartCache(kept, "another program", KeptTexts.open(kept, disk));
    assertThat(back.get(wall(1))).isPresent();
  }

  @Test
  void everyCommandIsNamedAsItsClass() {
    String help = Ran.in(folder, "--help").out();
    assertThat(help).contains("check", "takeoff", "archive");
    for (String name :
        ServiceLoader.load(CommandMaker.class).stream().map(maker -> maker.get().name()).toList()) {
      assertThat(help).containsPattern("(?m)^  " + name + " ");
      assertThat(Ran.in(folder, name, "--help").out()).contains("mullwright " + name);
    }
  }
}
