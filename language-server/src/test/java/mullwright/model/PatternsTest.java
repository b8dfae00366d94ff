package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * What holds for all patterns: a range is the list of its names, order of the text is no matter.
 */
class PatternsTest {
  private static final List<String> LETTERS = List.of("A", "B", "C", "D", "E", "F", "G", "H");

  @Test
  void aRangeIsTheListOfItsNames() {
    assertThat(NamePattern.names("A", "G").orElseThrow())
        .containsExactly("A", "B", "C", "D", "E", "F", "G");
    assertThat(NamePattern.names("AA", "AF").orElseThrow())
        .containsExactly("AA", "AB", "AC", "AD", "AE", "AF");
    assertThat(NamePattern.names("Y", "AB").orElseThrow()).containsExactly("Y", "Z", "AA", "AB");
    assertThat(NamePattern.names("9", "11").orElseThrow()).containsExactly("9", "10", "11");
    assertThat(NamePattern.names("L8", "L10").orElseThrow()).containsExactly("L8", "L9", "L10");
    assertThat(NamePattern.names("L08", "L10").orElseThrow()).containsExactly("L08", "L09", "L10");
    assertThat(NamePattern.names("P1a", "P1c").orElseThrow()).containsExactly("P1a", "P1b", "P1c");
    assertThat(NamePattern.names("C", "A").orElseThrow()).containsExactly("C", "B", "A");
    assertThat(NamePattern.names("A", "A").orElseThrow()).containsExactly("A");
  }

  @Test
  void whatIsNoPattern() {
    assertThat(NamePattern.names("A", "7")).isEmpty();
    assertThat(NamePattern.names("A", "g")).isEmpty();
    assertThat(NamePattern.names("L1", "R4")).isEmpty();
    assertThat(NamePattern.names("sill", "head")).isEmpty();
    assertThat(NamePattern.names("", "")).isEmpty();
    assertThat(NamePattern.names("1", "9999999999")).isEmpty();
  }

  @Test
  void countAndNamesAgree() {
    Random random = new Random(7);
    for (int round = 0; round < 500; round++) {
      String first = "" + (char) ('A' + random.nextInt(26));
      String last = first + (char) ('A' + random.nextInt(26));
      assertThat(NamePattern.names(first, last).orElseThrow())
          .hasSize(NamePattern.count(first, last).orElseThrow().intValue())
          .startsWith(first)
          .endsWith(last)
          .doesNotHaveDuplicates();
    }
  }

  private static String wall(String members) {
    return "units inches\nwall W {\ngrid { lines A..H spaced 7 @ 60 }\n" + members + "\n}";
  }

  private static List<Integer> chosen(String selection) {
    return Seen.of(wall("members { vertical " + selection + " as m }"))
        .wall()
        .members()
        .verticals()
        .stream()
        .map(Members.Vertical::line)
        .toList();
  }

  @Test
  void aRangeChoosesWhatItsListChooses() {
    for (int from = 0; from < 8; from++) {
      for (int to = from; to < 8; to++) {
        String list = String.join(", ", LETTERS.subList(from, to + 1));
        assertThat(chosen(LETTERS.get(from) + ".." + LETTERS.get(to))).isEqualTo(chosen(list));
      }
    }
  }

  @Test
  void exceptTakesOutWhatItNames() {
    for (int out = 0; out < 8; out++) {
      int except = out;
      List<Integer> rest = IntStream.range(0, 8).filter(i -> i != except).boxed().toList();
      assertThat(chosen("all except " + LETTERS.get(out))).isEqualTo(rest);
      assertThat(chosen("A..H except " + LETTERS.get(out))).isEqualTo(rest);
    }
    assertThat(chosen("all except B..D, G")).containsExactly(0, 4, 5, 7);
  }

  @Test
  void everyCountsFromTheFirstNamed() {
    for (int n = 1; n <= 9; n++) {
      int step = n;
      List<Integer> expected =
          IntStream.range(0, 8).filter(i -> i % step == 0).boxed().collect(Collectors.toList());
      assertThat(chosen("A..H every " + n)).isEqualTo(expected);
      assertThat(chosen("all every " + n)).isEqualTo(expected);
    }
    // the second named in the other direction is G, F, …
    assertThat(chosen("H..A every 3")).containsExactly(1, 4, 7);
    // exceptions are taken out last, so they do not move the count
    assertThat(chosen("all every 2 except C")).containsExactly(0, 4, 6);
  }

  @Test
  void theOrderOfStatementsIsNoMatter() {
    List<String> grid =
        List.of(
            "lines A..E spaced 4 @ 60",
            "line C.5 at 30 right of C",
            "floors L1..L4 spaced 3 @ 156",
            "slab 10 L1..L4",
            "slab 12 L2",
            "row sill at 2 above L1",
            "row rail at 36 above L1..L3",
            "row rail at 40 above L2",
            "row mid at 8 above L2.rail only A..C",
            "row head at 4 above L4",
            "opening louvre X bays A..B rows L1.rail..L2.rail");
    List<String> members =
        List.of(
            "vertical all as mullion",
            "vertical A, E as jamb",
            "horizontal all",
            "splice all at 24 above L2 gap 1",
            "splice C at 30 above L2");
    List<String> lites = List.of("spandrel S1 all", "vision V1 rows L1.rail..L3.rail bays B..D");
    Seen first = shuffled(grid, members, lites, null);
    assertThat(first.problems()).isEmpty();
    Random random = new Random(11);
    for (int round = 0; round < 60; round++) {
      Seen other = shuffled(grid, members, lites, random);
      assertThat(other.problems()).isEmpty();
      assertThat(other.lines()).isEqualTo(first.lines());
      assertThat(other.floors()).isEqualTo(first.floors());
      assertThat(other.rows()).isEqualTo(first.rows());
      assertThat(slabs(other)).isEqualTo(slabs(first));
      assertThat(other.verticals()).isEqualTo(first.verticals());
      assertThat(other.wall().members().splices())
          .extracting(splice -> splice.line() + " " + splice.at().elevation())
          .isEqualTo(
              first.wall().members().splices().stream()
                  .map(splice -> splice.line() + " " + splice.at().elevation())
                  .toList());
      for (int bay = 0; bay < 5; bay++) {
        assertThat(other.glass(bay)).isEqualTo(first.glass(bay));
      }
    }
  }

  private static List<String> slabs(Seen seen) {
    return seen.grid().floors().stream()
        .map(floor -> Seen.inches(floor.slab().orElseThrow().value()))
        .toList();
  }

  private static Seen shuffled(
      List<String> grid, List<String> members, List<String> lites, Random random) {
    List<String> blocks = new ArrayList<>();
    blocks.add(block("grid", grid, random));
    blocks.add(block("members", members, random));
    blocks.add(block("lites", lites, random));
    if (random != null) {
      Collections.shuffle(blocks, random);
    }
    return Seen.wall(blocks.toArray(String[]::new));
  }

  private static String block(String name, List<String> lines, Random random) {
    List<String> ordered = new ArrayList<>(lines);
    if (random != null) {
      Collections.shuffle(ordered, random);
    }
    return name + " {\n" + String.join("\n", ordered) + "\n}";
  }

  @Test
  void mirroredTwiceIsItself() {
    Random random = new Random(5);
    for (int round = 0; round < 40; round++) {
      String spaces =
          IntStream.range(0, 7)
              .mapToObj(i -> Integer.toString(12 + random.nextInt(90)))
              .collect(Collectors.joining(", "));
      Seen seen =
          Seen.of(
              "units inches\nwall V {\ngrid {\nlines A..H spaced "
                  + spaces
                  + "\nrow R at 2 to "
                  + (3 + random.nextInt(30))
                  + " only "
                  + LETTERS.get(random.nextInt(4))
                  + "..F\n}\n}\n"
                  + "wall M like V mirrored { }\nwall W like M mirrored { }");
      List<Wall> walls = seen.sound().model().walls();
      assertThat(walls.get(2).grid().lines()).isEqualTo(walls.get(0).grid().lines());
      assertThat(walls.get(2).grid().rows()).isEqualTo(walls.get(0).grid().rows());
      List<Grid.Bay> turned = new ArrayList<>(walls.get(1).grid().bays());
      Collections.reverse(turned);
      assertThat(turned)
          .extracting(Grid.Bay::width)
          .isEqualTo(walls.get(0).grid().bays().stream().map(Grid.Bay::width).toList());
    }
  }
}
