package mullwright.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Wide walls of three floors with some things told otherwise here and there, changed one statement
 * after another. Much of it is nonsense on purpose. All invented.
 */
final class RandomWalls {
  private static final String[] PLACES = {
    "L1", "L2", "L3", "Roof", "L1.rail", "L2.rail", "L2.top", "L1.top", "sill", "head", "L3.band"
  };
  private static final List<String> BLOCKS =
      List.of("grid", "members", "anchors", "lites", "installation");

  /** Of each statement that is changed: mostly what stands, seldom the grid. */
  private static final String[] CHANGED = {
    "members", "members", "members", "anchors", "anchors", "anchors", "lites", "lites", "grid"
  };

  /** From the first line to the last, whose name is put in. */
  private static final String[] INSTALLED = {
    "    stick 1..%s\n",
    "    ladder 1..%s\n",
    "    ladder 1..9\n    stick 9..%s\n",
    "    stick 1..20\n    ladder 20..%s\n",
    "    ladder 1..20 start right\n    ladder 20..%s\n"
  };

  private final SplittableRandom random;
  private final int bays;
  private final String wind;
  private final String width;
  private final String installation;
  private final Map<String, List<String>> added = new TreeMap<>();

  RandomWalls(SplittableRandom random, int bays) {
    this(random, bays, INSTALLED[random.nextInt(INSTALLED.length)]);
  }

  private RandomWalls(SplittableRandom random, int bays, String installation) {
    this.random = random;
    this.bays = bays;
    this.wind =
        pick(
            "    wind field 24 psf in, 26 psf out\n",
            "    wind field 24 psf in, 26 psf out\n"
                + "    wind edge 24 psf in, 34 psf out within 5'-0\" of ends\n"
                + "    wind high 28 psf in, 30 psf out from L3 to Roof\n");
    this.width = pick("5'-0\"", "4'-0\"", "2'-0\"", "1'-6\"");
    this.installation = installation;
    BLOCKS.forEach(block -> added.put(block, new ArrayList<>()));
  }

  /** A wall of which nothing is told otherwise yet. */
  static RandomWalls plain(int bays) {
    return new RandomWalls(new SplittableRandom(1), bays, INSTALLED[0]);
  }

  /** Adds a statement at the end of a block. */
  RandomWalls with(String block, String statement) {
    added.get(block).add(statement);
    return this;
  }

  /** Takes out, puts in, or breaks off one statement. */
  void change() {
    String block = pick(CHANGED);
    List<String> statements = added.get(block);
    if (statements.size() > 1) {
      statements.remove(random.nextInt(statements.size()));
    }
    int at = statements.isEmpty() ? 0 : random.nextInt(statements.size());
    switch (statements.isEmpty() ? 3 : random.nextInt(6)) {
      case 0 -> statements.remove(at);
      case 1 -> statements.set(at, statement(block));
      case 2 -> {
        String broken = statements.get(at);
        statements.set(at, broken.substring(0, random.nextInt(broken.length() + 1)));
      }
      default -> statements.add(at, statement(block));
    }
  }

  String text() {
    StringBuilder text = new StringBuilder(HEAD.formatted(wind));
    for (String block : BLOCKS) {
      text.append("  ").append(block).append(" {\n").append(usual(block));
      added.get(block).forEach(line -> text.append("    ").append(line).append('\n'));
      text.append("  }\n");
    }
    return text.append("}\n").toString();
  }

  private String usual(String block) {
    int last = bays + 1;
    return switch (block) {
      case "grid" -> GRID.formatted(last, bays, width);
      case "members" -> MEMBERS.formatted(last, bays);
      case "anchors" -> ANCHORS.formatted(bays, last);
      case "lites" -> LITES;
      default -> installation.formatted(last);
    };
  }

  private String pick(String... some) {
    return some[random.nextInt(some.length)];
  }

  private String line() {
    return Integer.toString(1 + random.nextInt(bays + 1));
  }

  private String range() {
    int first = 1 + random.nextInt(bays);
    return first + ".." + Math.min(bays + 1, first + 1 + random.nextInt(3));
  }

  private String lines() {
    return random.nextInt(3) == 0 ? range() : line();
  }

  private String statement(String block) {
    return switch (block) {
      case "grid" ->
          pick(
              "opening door D1 bays " + range() + " from L1 to L1.top by others clear 1/4\"",
              "opening louvre LV-1 bays "
                  + range()
                  + " rows "
                  + pick("L2.rail..L2.top", "L1.rail..L1.top")
                  + " by others mass 6 psf",
              "opening void V-1 bays " + range() + " from L2.rail to L2.top by others clear 1/2\"",
              "row extra at 5'-0\" above " + pick("L1", "L2", "L3") + " only " + range(),
              "corner " + (2 + random.nextInt(bays - 1)) + " 90 deg");
      case "members" -> member();
      case "anchors" -> anchor();
      case "lites" ->
          pick(
              pick("vision V1", "vision V2", "spandrel S1")
                  + " rows "
                  + pick("L1.rail..L1.top", "L2.rail..L2.top", "sill..L1.rail", "L3.band..head")
                  + " bays "
                  + range(),
              "vision V1 rows L1.rail..L1.top bays " + range() + " operable",
              pick("vision V2", "spandrel S2") + " bays " + range());
      default -> pick("ladder ", "stick ") + range();
    };
  }

  private String member() {
    return switch (random.nextInt(7)) {
      case 0 -> "vertical " + lines() + " as " + pick("mullion", "mullion-6-heavy", "jamb");
      case 1 -> "vertical " + lines() + " as mullion from " + pick(PLACES) + " to " + pick(PLACES);
      case 2 ->
          "horizontal "
              + pick("L1.rail", "L2.rail", "L1.top", "head", "sill", "L3.band")
              + " as "
              + pick("beam-6", "intermediate", "head", "mullion-6")
              + " bays "
              + range();
      case 3 ->
          "splice "
              + lines()
              + " at "
              + pick("2'-0\"", "1'-0\"", "3'-1\"", "5'-2\"", "2'-0 1/8\"")
              + " above "
              + pick("L1", "L2", "L3")
              + " gap "
              + pick("5/8\"", "1/4\"", "1\"");
      case 4 -> "splice " + line() + " at " + pick("L2", "L3", "L2.rail") + " gap 5/8\"";
      case 5 -> "reinforce " + lines() + " with " + pick("bar-5", "bar-4");
      default -> "bracket " + line() + " at " + pick(PLACES) + " 200 lb down at 6\" out";
    };
  }

  private String anchor() {
    return switch (random.nextInt(5)) {
      case 0 ->
          "dead-load "
              + lines()
              + " at "
              + pick("L1", "L2", "L3", "Roof")
              + " part angle-6 bolted 2 x hex-half"
              + pick("", " isolated by bituminous-paint", " spread by plate-spread-6");
      case 1 ->
          "wind-load "
              + lines()
              + " at "
              + pick("L2", "L3", "Roof")
              + " part slot-6 bolted 2 x hex-half isolated by nylon-pad";
      case 2 ->
          "dead-load "
              + line()
              + " at "
              + pick("L2", "L3")
              + " offset "
              + pick("1/4\"", "1\"", "3\"")
              + pick(" left", " right");
      case 3 -> "clip " + lines() + " at " + pick("sill", "head");
      default -> "dead-load " + line() + " at 1'-0\" above L2 part angle-6 bolted 2 x hex-half";
    };
  }

  private static final String HEAD =
      """
      use "../catalog/captured.wall"

      project "Pollard Street Depot" {  // an invented project
        units inches
        criteria {
          wind service
      %s    metal temperature -10 F to 150 F, set at 60 F
          slab deflection 3/8"
          story drift 5/8"
          exposure outdoor
        }
      }

      wall North {
        system captured-6
      """;

  private static final String GRID =
      """
          lines 1..%d spaced %d @ %s
          floors L1..L3, Roof spaced 14'-0", 2 @ 13'-0"
          slab 10" all
          row sill at 2" above L1
          row rail at 3'-0" above L1..L3
          row top at 9'-6" above L1..L3
          row band at 1'-0" below L2..L3
          row head at 4" above Roof
      """;

  private static final String MEMBERS =
      """
          vertical 1, %1$d as jamb
          vertical 2..%2$d as mullion
          horizontal all
          splice all at 2'-0" above L2..L3 gap 5/8"
      """;

  private static final String ANCHORS =
      """
          clip all at sill
          dead-load 2..%1$d at L2, L3, Roof part angle-6 bolted 2 x hex-half isolated by bituminous-paint
          dead-load 1, %2$d at L2, L3, Roof part angle-6 bolted 2 x hex-half isolated by bituminous-paint spread by plate-spread-6
      """;

  private static final String LITES =
      """
          spandrel S1 all
          vision V1 rows rail..top
          vision V2 rows sill..L1.rail
      """;
}
