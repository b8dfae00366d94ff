package mullwright.preview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.wall.FrameNumber;
import mullwright.analysis.wall.FrameNumbers;
import mullwright.analysis.wall.VerticalRun;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.check.WallFacts;
import mullwright.layout.PieceRef;
import mullwright.layout.VerticalPiece;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/** Loads, moments and deflections of one vertical laid over the drawing, with its numbers. */
final class DiagramStep extends CheckedStep {
  private final Tables tables;

  DiagramStep(Tables tables) {
    this.tables = tables;
  }

  @Override
  Object basis(SceneWall wall) {
    return wall.facts().orElseThrow().analysis();
  }

  @Override
  Object wishes(SceneWall wall, Look look) {
    return List.of(look.at(), tables.units(wall.file()));
  }

  @Override
  List<Slot> nothing() {
    return List.of(new Slot("diagrams"), new Slot("numbers"));
  }

  @Override
  List<Slot> paint(SceneWall wall, Look look) {
    Optional<VerticalPiece> piece =
        new Pieces(wall.layout())
            .of(look.at())
            .filter(found -> found.kind() == PieceRef.Kind.VERTICAL)
            .map(found -> wall.layout().verticals().get(found.index()));
    if (piece.isEmpty() || wall.facts().isEmpty()) {
      return nothing();
    }
    WallFacts facts = wall.facts().get();
    UnitSystem units = tables.units(wall.file());
    VerticalRun run = facts.analysis().runOf(piece.get());
    Slot drawn = new Slot("diagrams");
    new Diagrams(wall.layout(), run, DrawingStep.plane(units), units).draw(drawn);
    return List.of(drawn, Slot.of("numbers", numbers(facts.analysis(), run, piece.get(), units)));
  }

  private String numbers(
      WallAnalysis analysis, VerticalRun run, VerticalPiece asked, UnitSystem units) {
    StringBuilder out = new StringBuilder();
    String line = analysis.layout().wall().grid().lines().get(asked.line()).name();
    out.append("<h3>Vertical ").append(Markup.escaped(line)).append("</h3>");
    if (run.standing().isEmpty()) {
      out.append("<p>").append(Markup.escaped(why(run))).append("</p>");
    }
    List<FrameNumber> all = new ArrayList<>();
    FrameNumbers numbers = new FrameNumbers(analysis);
    run.pieces().forEach(piece -> all.addAll(numbers.vertical(piece)));
    if (!all.isEmpty()) {
      out.append(
          "<table><thead><tr><th scope=\"col\">Number</th><th scope=\"col\" class=\"right\">Value"
              + "</th><th scope=\"col\" class=\"right\">Limit</th><th scope=\"col\">By</th></tr>"
              + "</thead><tbody>");
      String last = "";
      for (FrameNumber number : all) {
        if (run.pieces().size() > 1 && !number.piece().equals(last)) {
          out.append("<tr class=\"head\"><th scope=\"rowgroup\" colspan=\"4\">")
              .append(Markup.escaped(number.piece()))
              .append("</th></tr>");
          last = number.piece();
        }
        row(number, units, out);
      }
      out.append("</tbody></table>");
    }
    return out.append("<p class=\"caution\">")
        .append(Markup.escaped(tables.caution()))
        .append("</p>")
        .toString();
  }

  private static void row(FrameNumber number, UnitSystem units, StringBuilder out) {
    boolean over = number.limit().isPresent() && number.value() > number.limit().get();
    out.append(over ? "<tr class=\"over\">" : "<tr>")
        .append("<th scope=\"row\">")
        .append(Markup.escaped(number.what()))
        .append("</th><td class=\"right\">")
        .append(printed(number.value(), number.kind(), units))
        .append(over ? " <b>over</b>" : "")
        .append("</td><td class=\"right\">")
        .append(number.limit().map(limit -> printed(limit, number.kind(), units)).orElse(""))
        .append("</td><td>")
        .append(Markup.escaped(number.loads()))
        .append("</td></tr>");
  }

  private static String printed(double si, Kind kind, UnitSystem units) {
    return Markup.escaped(QuantityPrinter.in(units, Quantity.ofSi(si, kind), kind));
  }

  private static String why(VerticalRun run) {
    if (run.beam().isEmpty()) {
      return "No moments to show: nothing loads it, or its profile states no Ix.";
    }
    return "No moments to show: as it is held now it would move without bending.";
  }

  @Override
  public String what() {
    return "the diagrams";
  }
}
