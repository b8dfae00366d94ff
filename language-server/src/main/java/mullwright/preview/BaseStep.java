package mullwright.preview;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.layout.PieceRef;
import mullwright.quantity.UnitSystem;
import mullwright.review.FixingChange;
import mullwright.review.PieceChange;
import mullwright.review.WallReview;

/** What changed since the last commit: a layer over the drawing, and in words. */
final class BaseStep extends CheckedStep {
  private static final int CHANGES_TOLD = 60;

  private final Tables tables;
  private final GitBase base;

  BaseStep(Tables tables, GitBase base) {
    this.tables = tables;
    this.base = base;
  }

  @Override
  Object basis(SceneWall wall) {
    return wall.file().reading();
  }

  @Override
  Object wishes(SceneWall wall, Look look) {
    return List.of(wall.index(), look.base());
  }

  @Override
  List<Slot> nothing() {
    return List.of(new Slot("base"), new Slot("changes"));
  }

  @Override
  List<Slot> paint(SceneWall wall, Look look) {
    if (!look.base()) {
      return nothing();
    }
    try {
      Optional<GitBase.Compared> compared = base.compare(wall.file());
      if (compared.isEmpty()) {
        return told("This file lies in no git repository with a commit: there is nothing before.");
      }
      Optional<WallReview> review =
          compared.get().file().stream()
              .flatMap(file -> file.walls().stream())
              .filter(found -> found.now().isPresent() && found.name().equals(wall.name()))
              .findFirst();
      String since = "Since commit " + compared.get().commit();
      return review
          .map(found -> List.of(layer(found, wall), Slot.of("changes", words(found, wall, since))))
          .orElseGet(() -> told(since + " nothing changed in this wall."));
    } catch (IOException failed) {
      return told("The git repository cannot be read: " + failed.getMessage() + ".");
    }
  }

  private static List<Slot> told(String words) {
    return List.of(new Slot("base"), Slot.of("changes", "<p>" + Markup.escaped(words) + "</p>"));
  }

  private String words(WallReview review, SceneWall wall, String since) {
    UnitSystem units = tables.units(wall.file());
    StringBuilder out = new StringBuilder("<h3>").append(Markup.escaped(since)).append("</h3>");
    out.append("<p class=\"counts\">")
        .append(count(review, PieceChange.What.NEW))
        .append(" new, ")
        .append(count(review, PieceChange.What.CHANGED))
        .append(" changed, ")
        .append(count(review, PieceChange.What.GONE))
        .append(" gone; ")
        .append(review.tripped().size())
        .append(" findings came, ")
        .append(review.mended().size())
        .append(" went.</p><ul>");
    for (int at = 0; at < Math.min(CHANGES_TOLD, review.changes().size()); at++) {
      out.append("<li>").append(Markup.escaped(review.words(at, units))).append("</li>");
    }
    out.append("</ul>");
    int more = review.changes().size() - CHANGES_TOLD;
    return out.append(more > 0 ? "<p>… and " + more + " more.</p>" : "").toString();
  }

  private static long count(WallReview review, PieceChange.What what) {
    return review.pieces().stream().filter(piece -> piece.what() == what).count()
        + review.fixings().stream().filter(fixing -> fixing.what() == what).count();
  }

  private Slot layer(WallReview review, SceneWall wall) {
    Slot layer = new Slot("base");
    Plane plane = DrawingStep.plane(tables.units(wall.file()));
    Pieces now = new Pieces(wall.layout());
    Pieces old = review.old().map(Pieces::new).orElse(now);
    for (PieceChange piece : review.pieces()) {
      boolean gone = piece.what() == PieceChange.What.GONE;
      draw(gone ? old : now, piece.state().ref(), piece.what(), plane, layer);
    }
    for (FixingChange fixing : review.fixings()) {
      boolean gone = fixing.what() == PieceChange.What.GONE;
      draw(
          gone ? old : now,
          fixing.after().or(fixing::before).orElseThrow(),
          fixing.what(),
          plane,
          layer);
    }
    return layer;
  }

  private static void draw(
      Pieces pieces, PieceRef piece, PieceChange.What what, Plane plane, Slot layer) {
    if (piece.kind() == PieceRef.Kind.COVER) {
      return;
    }
    Pieces.Extent extent = pieces.extent(piece);
    String word = what.name().toLowerCase(Locale.ROOT);
    double left = plane.x(extent.left());
    double top = plane.y(extent.top());
    double width = plane.x(extent.right()) - left;
    double height = plane.y(extent.bottom()) - top;
    boolean point = piece.kind() == PieceRef.Kind.SPLICE || piece.kind() == PieceRef.Kind.ANCHOR;
    double grown = point ? 2.4 : 0.3;
    layer.put(
        word + "-" + Pieces.id(piece),
        "<rect class=\""
            + word
            + "\" x=\""
            + Markup.number(left - grown)
            + "\" y=\""
            + Markup.number(top - grown)
            + "\" width=\""
            + Markup.number(width + 2 * grown)
            + "\" height=\""
            + Markup.number(height + 2 * grown)
            + "\"><title>"
            + word
            + "</title></rect>");
  }

  @Override
  public String what() {
    return "what changed";
  }
}
