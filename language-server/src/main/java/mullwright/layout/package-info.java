/**
 * Where every piece, end, joint, opening and lite is, by the conventions of measure.
 *
 * <p>Entry: {@link mullwright.layout.WallLayout}, made from a {@link mullwright.model.Wall} and its
 * catalog by {@code LayoutBuilder}. All lengths are exact. It knows no load, judges nothing and
 * never fails: where the model left something open, the pieces that depend on it are left out.
 *
 * <p>Axes: x to the right along the developed wall from its first line, y up from the project
 * datum, z out of the wall.
 */
package mullwright.layout;
