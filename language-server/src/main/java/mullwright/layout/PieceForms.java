package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Given;
import mullwright.model.LiteUse;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * What makes a piece the piece it is, as text: two pieces are equal if their forms are.
 *
 * <p>The form of a bar is its profile, length, ends and holes. A piece that can be turned end for
 * end has the form of whichever way round comes first, so that a left and a right one with the same
 * holes are one. A profile with unlike sides cannot be turned, nor a plate with weeps.
 */
public final class PieceForms {
  private final WallLayout layout;
  private final HolePlaces holes;

  private PieceForms(WallLayout layout, HolePlaces holes) {
    this.layout = layout;
    this.holes = holes;
  }

  /** The forms of a layout's pieces. */
  public static PieceForms of(WallLayout layout, HolePlaces holes) {
    return new PieceForms(layout, holes);
  }

  /** The form of a vertical. */
  public String vertical(VerticalPiece piece) {
    return bar(
        "vertical",
        piece.profile(),
        piece.length(),
        holes.bottom(piece),
        holes.top(piece),
        holes.vertical(piece.index()));
  }

  /** The form of a horizontal. */
  public String horizontal(HorizontalPiece piece) {
    EndCut ends = holes.ends(piece);
    return bar(
        "horizontal", piece.profile(), piece.length(), ends, ends, holes.horizontal(piece.index()));
  }

  private static String bar(
      String kind,
      Part.Profile profile,
      Length length,
      EndCut first,
      EndCut last,
      List<DrilledHole> holes) {
    String head = kind + " " + profile.name() + " " + length.ticks() + notch(profile);
    String straight = head + ends(first, last) + holes(holes);
    if (!turns(profile)) {
      return straight;
    }
    List<DrilledHole> turned = new ArrayList<>(holes.size());
    for (int i = holes.size() - 1; i >= 0; i--) {
      turned.add(holes.get(i).turned(length));
    }
    turned.sort(DrilledHole.ORDER);
    String other = head + ends(last, first) + holes(turned);
    return other.compareTo(straight) < 0 ? other : straight;
  }

  /** True if it is the same whichever end is up. */
  static boolean turns(Part.Profile profile) {
    return profile.biteLeft().value().equals(profile.biteRight().value())
        && profile.legLeft().map(Given::value).equals(profile.legRight().map(Given::value));
  }

  private static String notch(Part.Profile profile) {
    return profile
        .notch()
        .map(notch -> " notch " + notch.along().ticks() + "x" + notch.back().ticks())
        .orElse("");
  }

  private static String ends(EndCut first, EndCut last) {
    return first.equals(EndCut.SQUARE) && last.equals(EndCut.SQUARE)
        ? ""
        : " ends " + end(first) + " " + end(last);
  }

  private static String end(EndCut end) {
    return end.slant().ticks() + (end.sleeve().isEmpty() ? "" : "+" + end.sleeve());
  }

  // what is drilled, not what for; a part without a pattern stands for its holes
  private static String holes(List<DrilledHole> holes) {
    List<String> told = new ArrayList<>(holes.size());
    for (DrilledHole hole : holes) {
      String place = hole.along().ticks() + hole.side().words();
      told.add(
          hole.placed()
              ? place + "/" + hole.back().get().ticks() + "/" + hole.diameter().get().ticks()
              : place + "/" + hole.count() + " " + hole.purpose().words() + " " + hole.part());
    }
    // the order may not hang on what a hole is for
    told.sort(null);
    StringBuilder all = new StringBuilder();
    told.forEach(each -> all.append(' ').append(each));
    return all.toString();
  }

  /** The form of a plate or cap; its fasteners follow from its length. */
  public String cover(int index) {
    CoverPiece cover = layout.covers().get(index);
    StringBuilder form = new StringBuilder(cover.vertical() ? "vertical " : "horizontal ");
    form.append(cover.what()).append(' ').append(cover.part());
    form.append(' ').append(cover.length().ticks());
    EndCut ends = holes.ends(cover);
    form.append(ends(ends, ends));
    for (Weep weep : holes.weepsOf(index)) {
      form.append(" weep ").append(weep.x().minus(cover.start()).ticks());
    }
    return form.toString();
  }

  /** The form of a lite; of an opening by others, and of a cell nothing fills, none. */
  public static Optional<String> lite(Cell cell) {
    if (!Glazed.lite(cell)) {
      return Optional.empty();
    }
    LiteUse use = cell.use().orElseThrow();
    StringBuilder form = new StringBuilder("lite ").append(use.glass().value());
    form.append(' ').append(cell.glassWidth().ticks());
    form.append('x').append(cell.glassHeight().ticks());
    cell.glass()
        .ifPresent(
            glass ->
                glass
                    .layers()
                    .forEach(
                        layer ->
                            form.append(' ')
                                .append(layer.what())
                                .append(layer.thickness().ticks())
                                .append(layer.words())));
    if (use.operable()) {
      form.append(" operable");
    }
    if (!cell.rectangular()) {
      // nobody measured its slope: it is like no other
      form.append(" shaped ").append(cell.name());
    }
    return Optional.of(form.toString());
  }
}
