package mullwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import mullwright.check.WallFacts;
import mullwright.layout.PieceRef;
import mullwright.quantity.Rational;
import mullwright.takeoff.Takeoff;
import mullwright.takeoff.TakeoffLine;
import mullwright.workspace.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every comparison, on walls edited by chance. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReviewPropertiesTest {
  private static final int WALLS = 20;

  /** Lines that stand in for others, one or more of each slot at a time. */
  private static final List<List<String>> SLOTS =
      List.of(
          List.of(
              "lines A..G  spaced 6 @ 5'-0\"",
              "lines A..G  spaced 6 @ 4'-8\"",
              "lines A..G  spaced 4'-0\", 2 @ 5'-6\", 3 @ 5'-0\"",
              "lines A..H  spaced 7 @ 5'-0\"",
              "lines A..E  spaced 4 @ 5'-0\"",
              "lines A, B, C, X, E, F, G  spaced 6 @ 5'-0\"",
              "lines A..G  spaced 6 @ 5'-0\"\n    line C.5 at 2'-0\" right of C"),
          List.of(
              "floor   L2      at 13'-0\"   slab 10\"",
              "floor   L2      at 13'-6\"   slab 10\"",
              "floor   L2      at 13'-0\"   slab 12\""),
          List.of(
              "row R1      at 3'-0\"    above L1",
              "row R1      at 2'-6\"    above L1",
              "row rail    at 3'-0\"    above L1"),
          List.of("row R3      at 1'-6\"    below L2", "", "row R3      at 2'-0\"    below L2"),
          List.of(
              "splice B..F  at 2'-0\" above L2  gap 5/8\"",
              "splice B..F  at 2'-0\" above L2  gap 3/4\"",
              "splice B..F  at 1'-0\" above L2  gap 5/8\"",
              "splice B, C  at 2'-0\" above L2  gap 5/8\""),
          List.of("clip all  at sill", "clip all  at sill, head", "clip B  at sill"),
          List.of("vertical    B..F    as mullion", "vertical    B..F    as jamb"),
          List.of("spandrel S1  all", "spandrel V2  all"),
          List.of("wind    edge    32 psf in, 48 psf out", "wind    edge    40 psf in, 60 psf out"),
          List.of("ladder A..C", "ladder A..D"));

  private static String edited(Random random) {
    String text = Compared.ferry();
    for (List<String> slot : SLOTS) {
      if (random.nextInt(3) == 0) {
        String next = text.replace(slot.get(0), slot.get(random.nextInt(slot.size())));
        text = next;
      }
    }
    return text;
  }

  private final Map<Integer, Compared> known = new HashMap<>();

  static Stream<Integer> seeds() {
    return IntStream.range(0, WALLS).boxed();
  }

  private Compared compared(int seed) {
    return known.computeIfAbsent(
        seed,
        any -> {
          Random random = new Random(seed);
          return Compared.of(edited(random), edited(random));
        });
  }

  @Test
  void theSlotsStandInTheWall() {
    assertThat(SLOTS).allSatisfy(slot -> assertThat(Compared.ferry()).contains(slot.get(0)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void appliedInAnyOrderTheChangesMakeTheNewerWall(int seed) {
    Compared compared = compared(seed);
    List<Change> changes = new ArrayList<>(compared.review().changes());
    for (int round = 0; round < 5; round++) {
      Collections.shuffle(changes, new Random(seed * 31L + round));
      FactSheet sheet = compared.sides().before();
      for (Change change : changes) {
        sheet = sheet.with(change);
      }
      assertThat(sheet).isEqualTo(compared.sides().after());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noFactIsInTwoChanges(int seed) {
    Set<Fact> seen = new HashSet<>();
    for (Change change : compared(seed).review().changes()) {
      change.steps().forEach(step -> assertThat(seen.add(step.fact())).isTrue());
      assertThat(change.steps())
          .allSatisfy(step -> assertThat(step.before()).isNotEqualTo(step.after()));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyEffectIsExplained(int seed) {
    WallReview review = compared(seed).review();
    assertThat(review.pieces()).allSatisfy(piece -> assertThat(piece.causes()).isNotEmpty());
    assertThat(review.reactions())
        .allSatisfy(reaction -> assertThat(reaction.causes()).isNotEmpty());
    assertThat(review.goods().isEmpty() || !review.changes().isEmpty()).isTrue();
    assertThat(review.tripped())
        .filteredOn(change -> !change.finding().piece().isEmpty())
        .allSatisfy(change -> assertThat(change.causes()).isNotEmpty());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aWallDiffersInNothingFromItself(int seed) {
    Reading reading = Compared.read(edited(new Random(seed)));
    assertThat(Compared.of(reading, reading).review().empty()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void barsAreTheSumOfThePieces(int seed) {
    WallReview review = compared(seed).review();
    Map<String, Rational> byPart = new TreeMap<>();
    for (PieceChange piece : review.pieces()) {
      if (piece.key().kind() != PieceRef.Kind.CELL) {
        piece.before().ifPresent(s -> add(byPart, s, -1));
        piece.after().ifPresent(s -> add(byPart, s, 1));
      }
    }
    Map<String, Rational> told = new HashMap<>();
    for (GoodsChange change : review.goods()) {
      if (change.item().group() == Goods.Group.BARS) {
        told.merge(
            change.item().name(),
            change.after().metres().minus(change.before().metres()),
            Rational::plus);
      }
    }
    byPart.forEach(
        (part, more) ->
            assertThat(told.getOrDefault(part, Rational.ZERO)).as(part).isEqualTo(more));
  }

  /** The takeoffs of both states, subtracted here line by line, are what the review tells. */
  @ParameterizedTest
  @MethodSource("seeds")
  void goodsAreTheDifferenceOfTheTakeoffs(int seed) {
    Compared compared = compared(seed);
    Map<String, List<Rational>> more = new TreeMap<>();
    takeoff(compared.sides().old(), -1, more);
    takeoff(compared.sides().now(), 1, more);
    more.values().removeIf(sums -> sums.stream().allMatch(Rational.ZERO::equals));
    Map<String, List<Rational>> told = new TreeMap<>();
    for (GoodsChange change : compared.review().goods()) {
      List<Rational> sums =
          List.of(
              Rational.of(change.count()),
              change.after().metres().minus(change.before().metres()),
              change.after().squareMetres().minus(change.before().squareMetres()));
      told.put(change.item().kind() + "|" + change.item().name(), sums);
    }
    assertThat(told).isEqualTo(more);
    // whatever is bought otherwise follows from something that is told
    if (!told.isEmpty()) {
      assertThat(compared.review().changes())
          .anyMatch(change -> change.how() != Change.How.RENAMED);
    }
  }

  private static void takeoff(WallFacts wall, int sign, Map<String, List<Rational>> sums) {
    for (TakeoffLine line : Takeoff.of(wall.layout(), wall.analysis().holes())) {
      String size = line.size().isEmpty() ? "" : ", " + line.size();
      List<Rational> amounts =
          List.of(
              Rational.of(sign * line.count()),
              line.length().map(it -> it.metres().times(sign)).orElse(Rational.ZERO),
              line.area().map(it -> it.si().times(sign)).orElse(Rational.ZERO));
      sums.merge(
          line.item() + size + "|" + line.part(),
          amounts,
          (one, other) ->
              IntStream.range(0, one.size())
                  .mapToObj(at -> one.get(at).plus(other.get(at)))
                  .toList());
    }
  }

  private static void add(Map<String, Rational> byPart, PieceState state, int sign) {
    Rational length = state.make().length().metres().times(sign);
    byPart.merge(state.make().part(), length, Rational::plus);
  }

  @Test
  void theExamplesDifferInNothingFromThemselves() {
    for (String path :
        List.of(
            "first-wall/lobby.wall",
            "ferry-terminal/east.wall",
            "library-corner/reading-room.wall",
            "tower/north.wall")) {
      Reading one = Compared.read(Compared.example(path));
      Reading other = Compared.read(Compared.example(path));
      assertThat(Compared.of(one, other).review().empty()).as(path).isTrue();
    }
  }
}
