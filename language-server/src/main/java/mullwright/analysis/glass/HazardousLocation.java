package mullwright.analysis.glass;

import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;
import mullwright.analysis.glass.SafetyGlazing.Condition;

/**
 * Whether a lite needs safety glazing because of a door, a guard, water or a stair near it, by the
 * other clauses of IBC 2406.4, each with its conditions one by one.
 *
 * <p>.1 in a door: always. .2 beside a door: bottom edge below 60 in and within 24 in of either
 * vertical edge of the closed door. .4 in a guard: always. .5 near water: bottom edge below 60 in
 * and within 60 in of the water's edge. .6 beside a stair or ramp: bottom edge below 60 in, unless
 * 36 in or more away. .7 at the bottom landing: bottom edge below 60 in and within 60 in of the
 * lowest tread. "Within" includes the limit. Editions differ in the wording beside doors. Source:
 * International Building Code 2406.4, recent editions, from memory.
 */
public final class HazardousLocation {
  private static final double INCH = 0.0254;
  private static final double HEAD = 60 * INCH;
  private static final double ARC = 24 * INCH;
  private static final double REACH = 60 * INCH;
  private static final double STAIR = 36 * INCH;

  private HazardousLocation() {}

  /** What is near the lite. */
  public enum Place {
    /** The lite is in a door. */
    IN_DOOR("2406.4.1"),
    /** The lite is beside a door; distance from the nearer vertical edge of the closed door. */
    BESIDE_DOOR("2406.4.2"),
    /** The lite is in a guard or railing. */
    IN_GUARD("2406.4.4"),
    /** The lite is near a pool, bath or shower; horizontal distance from the water's edge. */
    NEAR_WATER("2406.4.5"),
    /** The lite is beside a stair, ramp or landing between flights; horizontal distance from it. */
    BESIDE_STAIR("2406.4.6"),
    /** The lite is near the foot of a stair; horizontal distance from the bottom tread. */
    BOTTOM_LANDING("2406.4.7");

    private final String clause;

    Place(String clause) {
      this.clause = clause;
    }
  }

  /**
   * A lite near something hazardous.
   *
   * @param place what is near it
   * @param area exposed area of one pane [m²]
   * @param bottom exposed bottom edge above the walking surface there [m]
   * @param distance horizontal distance as the place says [m]; 0 in a door or guard
   */
  public record Lite(Place place, double area, double bottom, double distance) {}

  /**
   * The verdict with all it rests on.
   *
   * @param required whether all conditions hold
   * @param category category by pane area; most doors ask for category II whatever the area
   * @param clause the clause applied
   * @param conditions its conditions; empty where the place alone decides
   */
  public record Verdict(
      boolean required, SafetyCategory category, String clause, List<Condition> conditions) {
    /** Keeps its own copy. */
    public Verdict {
      conditions = List.copyOf(conditions);
    }
  }

  /** Conditions of the clause and what follows from them. */
  public static Outcome<Verdict> solve(Lite lite) {
    return Guard.range()
        .positive("area", lite.area(), "m²")
        .finite("bottom edge above the floor", lite.bottom(), "m")
        .notNegative("horizontal distance", lite.distance(), "m")
        .then(
            () -> {
              List<Condition> conditions = conditions(lite);
              return new Verdict(
                  conditions.stream().allMatch(Condition::met),
                  lite.place() == Place.IN_DOOR
                      ? SafetyCategory.CATEGORY_II
                      : SafetyCategory.of(lite.area()),
                  "IBC " + lite.place().clause,
                  conditions);
            });
  }

  private static List<Condition> conditions(Lite lite) {
    List<Condition> conditions = new ArrayList<>();
    if (lite.place() == Place.IN_DOOR || lite.place() == Place.IN_GUARD) {
      return conditions;
    }
    conditions.add(
        new Condition(
            "bottom edge is less than 60 in above the floor",
            lite.bottom(),
            HEAD,
            "m",
            Limits.below(lite.bottom(), HEAD)));
    double far = lite.distance();
    conditions.add(
        switch (lite.place()) {
          case BESIDE_DOOR -> within("the door edge lies within 24 in", far, ARC);
          case NEAR_WATER -> within("the water's edge lies within 60 in", far, REACH);
          case BOTTOM_LANDING -> within("the bottom tread lies within 60 in", far, REACH);
          default ->
              new Condition(
                  "the stair or ramp lies less than 36 in away",
                  far,
                  STAIR,
                  "m",
                  Limits.below(far, STAIR));
        });
    return conditions;
  }

  private static Condition within(String words, double distance, double limit) {
    return new Condition(words, distance, limit, "m", !Limits.above(distance, limit));
  }
}
