package mullwright.bench;

import java.util.List;

/**
 * A change of one thing of a tower, as a drafter makes it: what is written in the place of what.
 *
 * @param name what is changed
 * @param block the block of the wall it stands in
 * @param one the statement before
 * @param other the statement after; of the same length in all but the last, which moves all that
 *     follows it in the text
 */
public record LocalEdit(String name, String block, String one, String other) {
  /** One of each kind. */
  public static final List<LocalEdit> ALL =
      List.of(
          new LocalEdit(
              "a splice's height",
              "members",
              "splice 7 at 2'-1\" above L5 gap 5/8\"",
              "splice 7 at 2'-2\" above L5 gap 5/8\""),
          new LocalEdit(
              "a horizontal",
              "members",
              "horizontal L5.rail as intermediate bays 14..15",
              "horizontal L5.rail as beam-6       bays 14..15"),
          new LocalEdit(
              "an anchor",
              "anchors",
              "dead-load 7 at L5 offset 1/4\" right",
              "dead-load 7 at L5 offset 1/8\" right"),
          new LocalEdit(
              "the glass of a bay",
              "lites",
              "vision V1 rows L5.rail..L5.top bays 14..15",
              "vision V2 rows L5.rail..L5.top bays 14..15"),
          new LocalEdit(
              "a splice's gap, written longer",
              "members",
              "splice 15 at 2'-1\" above L4 gap 5/8\"",
              "splice 15 at 2'-1\" above L4 gap 11/16\""));
}
