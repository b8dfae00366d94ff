package mullwright.analysis.glass;

import java.util.List;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Whether a fixed or operable lite that is neither in nor beside a door needs safety glazing, by
 * IBC 2406.4.3 (windows), with its four conditions one by one.
 *
 * <p>Required when all hold: (1) area of one pane above 9 ft²; (2) bottom edge less than 18 in
 * above the floor; (3) top edge more than 36 in above the floor; (4) a walking surface within 36
 * in, horizontally, of the plane of the glass, on either side. "Within" is read as 36 in included;
 * the authority may read it otherwise. Doors, wet places, guards and stairs have clauses of their
 * own: {@link HazardousLocation}. Source: International Building Code 2406.4.3, recent editions,
 * from memory.
 */
public final class SafetyGlazing {
  private static final double INCH = 0.0254;
  private static final double AREA = 9 * 144 * INCH * INCH;
  private static final double BOTTOM = 18 * INCH;
  private static final double TOP = 36 * INCH;
  private static final double WALK = 36 * INCH;
  private static final String CLAUSE = "IBC 2406.4.3";

  private static final List<String> EXCEPTIONS =
      List.of(
          "decorative glazing",
          "a protective rail 34 to 38 in high, at least 1 1/2 in tall, bearing 50 lb/ft without"
              + " touching the glass",
          "outboard panes of insulating units 25 ft or more above any walking surface below");

  private SafetyGlazing() {}

  /**
   * A lite and the floor it stands over.
   *
   * @param area exposed area of one pane [m²]
   * @param bottom exposed bottom edge above the walking surface [m]
   * @param top exposed top edge above the walking surface [m]
   * @param walkingDistance horizontal distance from the plane of the glass to the nearest walking
   *     surface on either side [m]
   */
  public record Lite(double area, double bottom, double top, double walkingDistance) {}

  /**
   * One condition of the clause.
   *
   * @param words the condition in words
   * @param measured what the lite has
   * @param limit what it is held against
   * @param unit unit of both
   * @param met whether it holds
   */
  public record Condition(String words, double measured, double limit, String unit, boolean met) {}

  /**
   * The verdict with all it rests on.
   *
   * @param required whether all four conditions hold
   * @param category category the pane must meet if safety glazing is required
   * @param clause the clause applied
   * @param conditions the four conditions in the order of the clause
   * @param notExamined exceptions the clause grants that the four numbers cannot show
   */
  public record Verdict(
      boolean required,
      SafetyCategory category,
      String clause,
      List<Condition> conditions,
      List<String> notExamined) {
    /** Keeps its own copies. */
    public Verdict {
      conditions = List.copyOf(conditions);
      notExamined = List.copyOf(notExamined);
    }
  }

  /** The four conditions and what follows from them. */
  public static Outcome<Verdict> solve(Lite lite) {
    return Guard.range()
        .positive("area", lite.area(), "m²")
        .finite("bottom edge above the floor", lite.bottom(), "m")
        .that(
            lite.top() > lite.bottom(),
            "top edge above the floor",
            lite.top(),
            "m",
            "above the bottom edge")
        .notNegative("distance to the walking surface", lite.walkingDistance(), "m")
        .then(() -> verdict(lite));
  }

  private static Verdict verdict(Lite lite) {
    List<Condition> conditions =
        List.of(
            new Condition(
                "area of one pane is more than 9 ft²",
                lite.area(),
                AREA,
                "m²",
                Limits.above(lite.area(), AREA)),
            new Condition(
                "bottom edge is less than 18 in above the floor",
                lite.bottom(),
                BOTTOM,
                "m",
                Limits.below(lite.bottom(), BOTTOM)),
            new Condition(
                "top edge is more than 36 in above the floor",
                lite.top(),
                TOP,
                "m",
                Limits.above(lite.top(), TOP)),
            new Condition(
                "a walking surface lies within 36 in of the glass",
                lite.walkingDistance(),
                WALK,
                "m",
                !Limits.above(lite.walkingDistance(), WALK)));
    return new Verdict(
        conditions.stream().allMatch(Condition::met),
        SafetyCategory.of(lite.area()),
        CLAUSE,
        conditions,
        EXCEPTIONS);
  }
}
