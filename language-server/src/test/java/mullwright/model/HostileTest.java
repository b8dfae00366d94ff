package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Texts that ask for too much: each ends soon, with a named limit or a plain answer. */
class HostileTest {
  /** Generous, since other work may share the machine; a hang is minutes. */
  private static final Duration SOON = Duration.ofSeconds(60);

  private static Seen soon(String text) {
    return Assertions.assertTimeoutPreemptively(SOON, () -> Seen.of(text));
  }

  private static String grid(String... lines) {
    return "units inches\nwall W { grid {\n" + String.join("\n", lines) + "\n} }";
  }

  @Test
  void aBillionLines() {
    ModelProblem.TooMany names =
        soon(grid("lines 1..999999999 spaced 999999998 @ 1")).problem(ModelProblem.TooMany.class);
    assertThat(names.limit()).isEqualTo("names");
    assertThat(names.allowed()).isEqualTo(Limits.NAMES);
    // longer numbers are no count at all
    assertThat(soon(grid("lines 1..99999999999999999999 spaced 1 @ 1")).problems()).hasSize(1);
  }

  @Test
  void aBillionSpaces() {
    ModelProblem.TooMany spaces =
        soon(grid("lines A..C spaced 1000000000 @ 1")).problem(ModelProblem.TooMany.class);
    assertThat(spaces.asked()).isEqualTo(1_000_000_000L);
    soon(grid("lines A..C spaced 1000000000 equal in 30")).problem(ModelProblem.TooMany.class);
    String many =
        IntStream.range(0, 20).mapToObj(i -> "9000 @ 1").collect(Collectors.joining(", "));
    soon(grid("lines A..C spaced " + many)).problem(ModelProblem.TooMany.class);
  }

  @Test
  void tenThousandLinesAreRead() {
    Seen seen = soon(grid("lines 1..10000 spaced 9999 @ 10"));
    assertThat(seen.sound().grid().lines()).hasSize(10_000);
  }

  @Test
  void aWallOfTooManyThings() {
    Seen seen =
        soon(
            grid(
                "lines 1..10000 spaced 9999 @ 10",
                "floors L1..L1000 spaced 999 @ 100",
                "row R at 3 above L1..L1000"));
    assertThat(seen.problem(ModelProblem.TooMany.class).limit()).isEqualTo("rows times bays");
  }

  @Test
  void aLongChainOfLets() {
    StringBuilder text = new StringBuilder("units inches\nlet a0 = 1\n");
    for (int i = 1; i <= 10_000; i++) {
      text.append("let a").append(i).append(" = a").append(i - 1).append(" + 1\n");
    }
    text.append("wall W { grid { floor L1 at a10000 } }");
    Seen seen = soon(text.toString());
    assertThat(seen.sound().grid().floors().get(0).elevation().value())
        .isEqualTo(Length.ofInches(10_001));
  }

  @Test
  void aLongChainOfLetsFromItsEnd() {
    StringBuilder text = new StringBuilder("units inches\n");
    for (int i = 10_000; i >= 1; i--) {
      text.append("let a").append(i).append(" = a").append(i - 1).append(" + 1\n");
    }
    text.append("let a0 = 1\nwall W { grid { floor L1 at a10000 } }");
    soon(text.toString()).sound();
  }

  @Test
  void aLongCircleOfLets() {
    StringBuilder text = new StringBuilder("units inches\n");
    for (int i = 0; i < 10_000; i++) {
      text.append("let a").append(i).append(" = a").append((i + 1) % 10_000).append("\n");
    }
    ModelProblem.BadValue circle = soon(text.toString()).problem(ModelProblem.BadValue.class);
    assertThat(circle.text()).hasSizeLessThan(300);
  }

  @Test
  void letsThatDoubleAndDouble() {
    StringBuilder text = new StringBuilder("units inches\nlet a0 = 2\n");
    for (int i = 1; i <= 60; i++) {
      text.append("let a").append(i).append(" = a" + (i - 1) + " * a" + (i - 1) + "\n");
    }
    ModelProblem.BadValue bad = soon(text.toString()).problem(ModelProblem.BadValue.class);
    assertThat(bad.reason()).isEqualTo(ModelProblem.BadValue.Reason.OUT_OF_RANGE);
  }

  @Test
  void aLongSum() {
    // the grammar takes a thousand operators
    String sum = IntStream.range(0, 1_000).mapToObj(i -> "1").collect(Collectors.joining(" + "));
    Seen seen = soon(grid("floor L1 at " + sum));
    assertThat(seen.sound().grid().floors().get(0).elevation().value())
        .isEqualTo(Length.ofInches(1_000));
  }

  @Test
  void deepParentheses() {
    String deep = "(".repeat(5_000) + "1" + ")".repeat(5_000);
    assertThatCode(() -> soon(grid("floor L1 at " + deep))).doesNotThrowAnyException();
  }

  @Test
  void aLongChainOfRowsAndLines() {
    int count = 5_000;
    String rows =
        IntStream.range(0, count)
            .mapToObj(i -> "row r" + (count - i) + " at 1 above r" + (count - i - 1))
            .collect(Collectors.joining("\n"));
    Seen seen = soon(grid(rows, "row r0 at 0"));
    assertThat(seen.sound().grid().rows()).hasSize(count + 1);
    String lines =
        IntStream.range(0, count)
            .mapToObj(i -> "line x" + (count - i) + " at 1 right of x" + (count - i - 1))
            .collect(Collectors.joining("\n"));
    assertThat(soon(grid(lines, "line x0 at 0")).sound().grid().lines()).hasSize(count + 1);
  }

  @Test
  void hugeNames() {
    String name = "n".repeat(100_000);
    Seen seen = soon(grid("line " + name + " at 0", "line x at 3 right of " + name + "y"));
    assertThat(seen.problem(ModelProblem.UnknownName.class).candidates()).contains(name);
  }

  @Test
  void manyStatementsAboutOneThing() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 3_000; i++) {
      text.append("vision V1 all\n");
    }
    Seen seen =
        Assertions.assertTimeoutPreemptively(SOON, () -> Seen.frame("lites {\n" + text + "}"));
    assertThat(seen.problems()).anyMatch(ModelProblem.TooMany.class::isInstance);
    assertThat(seen.problems()).hasSizeLessThanOrEqualTo(Limits.PROBLEMS);
  }

  @Test
  void manyNarrowerStatements() {
    // each line by itself, on top of all lines: no pair is compared that does not meet
    StringBuilder text = new StringBuilder("vertical all as mullion\n");
    for (int i = 1; i <= 2_000; i++) {
      text.append("vertical ").append(i).append(" as jamb\n");
    }
    Seen seen =
        Assertions.assertTimeoutPreemptively(
            SOON,
            () ->
                Seen.wall("grid {\nlines 1..3000 spaced 2999 @ 10\n}", "members {\n" + text + "}"));
    assertThat(seen.sound().wall().members().verticals())
        .filteredOn(vertical -> vertical.profile().value().equals("jamb-6"))
        .hasSize(2_000);
  }

  @Test
  void aThousandMistakesAreCountedOut() {
    String text =
        IntStream.range(0, 5_000)
            .mapToObj(i -> "row r" + i + " at x" + i)
            .collect(Collectors.joining("\n"));
    assertThat(soon(grid(text)).problems()).hasSize(Limits.PROBLEMS);
  }

  @Test
  void aLongRowOfUses() {
    Walls files = new Walls();
    for (int i = 0; i < 1_000; i++) {
      files.with("f" + i + ".wall", "use \"f" + (i + 1) + ".wall\"");
    }
    Model model = Assertions.assertTimeoutPreemptively(SOON, () -> files.read("f0.wall"));
    assertThat(model.problems()).singleElement().isInstanceOf(ModelProblem.TooMany.class);
    assertThat(model.uses()).hasSize(Limits.USE_DEPTH - 1);
  }

  @Test
  void aLongRowOfLikes() {
    String walls =
        IntStream.range(0, 200)
            .mapToObj(i -> "wall W" + i + " like W" + (i + 1) + " { }")
            .collect(Collectors.joining("\n"));
    Seen seen = soon(walls + "\nwall W200 { }");
    assertThat(seen.problems()).isNotEmpty().allMatch(ModelProblem.TooMany.class::isInstance);
  }

  @Test
  void oddPaths() {
    for (String path : List.of("", ".", "..", "a//b", "a/./b", "\u0000", " ", "a\tb")) {
      assertThatCode(() -> soon("use \"" + path + "\"")).doesNotThrowAnyException();
    }
  }
}
