package mullwright.model;

import java.util.List;
import mullwright.quantity.Length;

/**
 * A simple outline of a profile from which area and section properties can be computed: rectangles,
 * hollow or solid, added together.
 *
 * <p>Each rectangle is placed by its left and back edge: x along the wall from the profile's centre
 * line, z out of the wall from the profile's back.
 */
public record Outline(List<Rectangle> rectangles) {
  public Outline {
    rectangles = List.copyOf(rectangles);
  }

  /**
   * @param x left edge, from the centre line
   * @param z back edge, from the back of the profile
   * @param width along the wall
   * @param depth out of the wall
   * @param hole true if it is taken away
   */
  public record Rectangle(Length x, Length z, Length width, Length depth, boolean hole) {}
}
