package mullwright.analysis.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.RandomWalls;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.takeoff.Examples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No weight is lost between what weighs and what holds it up. */
class WeightPathTest {
  private static final double LB = 4.4482216152605;

  private static final int WALLS = 600;

  private static final String GRID =
      """
        grid {
          lines A..C spaced 2 @ 60
          floor L1 at 0
          floor L2 at 144
          row sill at 0
          row rail at 72
          row head at 144
        }
      """;

  private static final String LITES =
      """
        lites {
          vision G all
        }
      """;

  /** Sum of what the pieces weigh, each by its own catalog data [N]; Newton's law. */
  private static double weighs(WallLayout layout) {
    double sum = 0;
    for (VerticalPiece piece : layout.verticals()) {
      sum +=
          piece.profile().massPerLength().map(m -> m.value().toSi()).orElse(0.0)
              * piece.length().toMetres()
              * 9.80665;
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      sum +=
          piece.profile().massPerLength().map(m -> m.value().toSi()).orElse(0.0)
              * piece.length().toMetres()
              * 9.80665;
    }
    CellWeight fillings = new CellWeight(layout);
    return sum + layout.cells().stream().mapToDouble(cell -> fillings.of(cell.index())).sum();
  }

  private static double comesDown(WallAnalysis analysis) {
    return analysis.layout().anchors().stream()
        .mapToDouble(anchor -> analysis.loadOn(anchor).map(AnchorLoad::down).orElse(0.0))
        .sum();
  }

  @Test
  void whatComesDownIsWhatWeighs() {
    Set<Class<?>> met = new HashSet<>();
    for (long seed = 0; seed < WALLS; seed++) {
      WallLayout layout = new RandomWalls(seed, false).wall(1).layOut();
      WallAnalysis analysis = WallAnalysis.of(layout, new BeamMemory());
      double weighs = weighs(layout);
      assertThat(comesDown(analysis) + analysis.weightOfWall().onNothing())
          .as("seed " + seed)
          .isCloseTo(weighs, within(1e-9 * weighs + 1e-9));
      layout.verticals().forEach(piece -> met.add(analysis.holdOf(piece).landing().getClass()));
    }
    // the walls are of every sort, else they would prove little
    assertThat(met).hasSize(5);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-wall/lobby.wall",
        "ferry-terminal/east.wall",
        "library-corner/reading-room.wall",
        "tower/north.wall"
      })
  void theExamplesStandOnTheirAnchors(String path) {
    WallAnalysis analysis = Examples.facts(path).analysis();
    WallLayout layout = analysis.layout();
    WallWeight weight = analysis.weightOfWall();
    double weighs = weighs(layout) + weight.reinforcement() + weight.brackets();
    assertThat(weight.total()).isCloseTo(weighs, within(1e-9 * weighs));
    assertThat(weight.onDeadLoadAnchors()).isCloseTo(weighs, within(1e-9 * weighs));
    assertThat(weight.onSlidingOnes()).isZero();
    assertThat(analysis.weightOfWall().onNothing()).isZero();
    assertThat(comesDown(analysis)).isCloseTo(weighs, within(1e-9 * weighs));
  }

  private static WallText wall(String members, String anchors) {
    return new WallText(
        GRID + "members {\n" + members + "\n}\nanchors {\n" + anchors + "\n}\n" + LITES);
  }

  @Test
  void whatStandsOnAHorizontalComesDownAtItsEnds() {
    WallText wall =
        wall(
            """
              vertical A, C as mullion
              vertical B from rail to head as mullion
              horizontal all
            """,
            """
              clip all at sill, head
              dead-load A, C at L2 part angle
            """);
    VerticalPiece standing = wall.lengths("B").get(0);
    assertThat(wall.analysis().holdOf(standing).landing().words())
        .isEqualTo("stands on horizontal rail, bays A-C");
    // by hand: two heads of 5 ft at 2.2 lb/ft bring half each, its own 6 ft at 2.4 lb/ft
    double own = 11 + 14.4;
    assertThat(wall.analysis().weightOf(standing) / LB).isCloseTo(own, within(0.05));
    HorizontalSpan rail = wall.horizontal("horizontal rail, bays A-C");
    assertThat(rail.borneWeight() / LB).isCloseTo(own, within(0.05));
    // in the middle, so half at either end: with its own 10 ft and a lite of 6 ft × 5 ft each side,
    // which lacks a face of 1/16" both ways
    double lite = 5 * 6 * 0.3048 * 0.3048 * 15 * 9.80665 / LB;
    double[] ends = wall.analysis().weightFrom(rail.piece());
    assertThat(ends[0] / LB).isCloseTo(own / 2 + 11 + lite, within(0.3));
    assertThat(ends[1]).isCloseTo(ends[0], within(1e-6));
    // the beam of the rail under weight brings the same to its ends
    assertThat(rail.weight().orElseThrow().reactions(0).greatest().value())
        .isCloseTo(ends[0], within(0.5));
    // P L³ / 48EI of the vertical alone, closed form, is part of the sag
    double more = own * Math.pow(120, 3) / (48 * 10.0e6 * 0.6) * 0.0254;
    assertThat(WeightSag.of(wall.analysis(), rail).orElseThrow().sag().value()).isGreaterThan(more);
  }

  @Test
  void aLiteBetweenUnequalMembersWeighsMoreOnTheOneItIsNearer() {
    WallText wall =
        wall(
            """
              vertical A as mullion-broad
              vertical B, C as mullion
              horizontal all
            """,
            """
              clip all at sill, head
              dead-load all at L2 part angle
            """);
    HorizontalSpan rail = wall.horizontal("horizontal rail, bay A-B");
    double[] ends = wall.analysis().weightFrom(rail.piece());
    // half faces of 4 1/32" and 1/32": the glass, 55 15/16" by 71 15/16", has its middle 2" right
    // of the bay's; statics: W × (30 ± 2) / 60
    double lite = 55.9375 * 71.9375 * 0.0254 * 0.0254 * 15 * 9.80665;
    assertThat(ends[1] - ends[0]).isCloseTo(lite * 4 / 60, within(1e-6));
    // the beam of the rail brings the same, but for its own weight centre to centre: 4 1/8" at 2.2
    // lb/ft more, half of it 1.7 N
    SolvedBeam beam = rail.weight().orElseThrow();
    assertThat(beam.reactions(60 * 0.0254).greatest().value()).isCloseTo(ends[1], within(2.0));
  }

  @Test
  void whatHangsUnderAHorizontalPullsAtItsEnds() {
    WallText wall =
        wall(
            """
              vertical A, C as mullion
              vertical B from sill to rail as mullion
              horizontal all
            """,
            """
              clip all at sill
              clip A, C at head
              dead-load A, C at L2 part angle
            """);
    VerticalPiece hanging = wall.lengths("B").get(0);
    assertThat(wall.analysis().holdOf(hanging).landing().words())
        .isEqualTo("hangs from horizontal rail, bays A-C");
    HorizontalSpan rail = wall.horizontal("horizontal rail, bays A-C");
    assertThat(rail.rests()).hasSize(2);
    // the sills end on it with the lites on them
    assertThat(rail.borneWeight()).isEqualTo(wall.analysis().weightOf(hanging));
    assertThat(rail.borneWeight() / LB).isGreaterThan(100);
    assertThat(wall.analysis().weightOfWall().onNothing()).isZero();
  }

  @Test
  void aVerticalWithItsOwnAnchorHoldsTheHorizontalUp() {
    WallText wall =
        wall(
            """
              vertical A, C as mullion
              vertical B from sill to rail as mullion
              horizontal all
            """,
            """
              clip all at sill
              clip A, C at head
              dead-load A, C at L2 part angle
              dead-load B at 60 part angle
            """);
    HorizontalSpan rail = wall.horizontal("horizontal rail, bays A-C");
    assertThat(rail.borneWeight()).isZero();
    double[] rests = wall.analysis().weightFrom(rail.piece());
    assertThat(rests).hasSize(3);
    // of two spans of 5 ft with a lite on each at its quarter points the middle takes more than
    // half
    assertThat(rests[1]).isGreaterThan(rests[0] + rests[2]);
    double on = wall.anchors("B").stream().mapToDouble(anchor -> down(wall, anchor)).sum();
    assertThat(on).isEqualTo(wall.analysis().weightOf(wall.lengths("B").get(0)));
  }

  private static double down(WallText wall, PlacedAnchor anchor) {
    return wall.analysis().loadOn(anchor).map(AnchorLoad::down).orElse(0.0);
  }

  @Test
  void whatNothingHoldsSlidesDown() {
    WallText wall =
        wall(
            """
              vertical all as mullion
              horizontal all
              splice B at 100 gap 1/2"
            """,
            """
              clip all at sill, head
              dead-load A, C at L2 part angle
            """);
    List<VerticalPiece> lengths = wall.lengths("B");
    assertThat(wall.analysis().holdOf(lengths.get(1)).landing().words())
        .isEqualTo(
            "slides down and stands on " + lengths.get(0).name() + ", with the joint closed");
    assertThat(wall.analysis().holdOf(lengths.get(0)).landing().words())
        .isEqualTo("slides down to the end of the slot of clip of vertical B at sill");
    double both = wall.analysis().weightOf(lengths.get(0));
    assertThat(wall.analysis().weightPartsOf(lengths.get(0)).above())
        .isEqualTo(wall.analysis().weightOf(lengths.get(1)));
    assertThat(down(wall, wall.anchors("B").get(0))).isEqualTo(both);
    assertThat(down(wall, wall.anchors("B").get(1))).isZero();
    assertThat(
            new FrameNumbers(wall.analysis())
                .splice(wall.analysis().layout().splices().get(0)).stream().map(FrameNumber::what))
        .contains("weight through the closed joint");
    assertThat(Stream.of(lengths.get(0), lengths.get(1)).map(wall.analysis()::holdOf))
        .allMatch(LengthHold::unsupported);
  }
}
