package mullwright.server.feature;

import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.derivation.DerivationText;
import mullwright.derivation.Standing;
import mullwright.model.Origin;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Fields;
import mullwright.server.hint.Figure;
import mullwright.server.hover.Numbers;
import mullwright.server.hover.Page;
import mullwright.syntax.TextRange;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintLabelPart;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;

/** What a reader who asks about a hint gets: how its figure came about, the ways to its inputs. */
record HintDetails(Desk desk) {
  private static final int LINES = 40;

  /** What a hint must remember to be asked about. */
  static JsonObject data(String address, Origin origin) {
    JsonObject data = new JsonObject();
    data.addProperty("uri", address);
    data.addProperty("segment", origin.segment());
    data.addProperty("start", origin.range().start());
    data.addProperty("end", origin.range().end());
    return data;
  }

  /** Adds them; a hint whose statement is gone stays as it is. */
  void add(InlayHint hint, Fields data) {
    Optional<Document> document = data.text("uri").flatMap(desk::document);
    Optional<Integer> segment = data.number("segment");
    Optional<Integer> start = data.number("start");
    Optional<Integer> end = data.number("end");
    boolean whole = segment.isPresent() && start.isPresent() && end.isPresent();
    if (document.isEmpty() || !whole || start.get() < 0 || end.get() < start.get()) {
      return;
    }
    Origin origin =
        new Origin(document.get().path(), segment.get(), new TextRange(start.get(), end.get()));
    InlayHintFeature.figures(document.get(), desk)
        .of(origin)
        .ifPresent(figure -> add(hint, figure, document.get()));
  }

  private static void add(InlayHint hint, Figure figure, Document document) {
    List<Derivation> workings = figure.workings();
    hint.setTooltip(tooltip(figure, workings, Numbers.of(document.file())));
    if (hint.getLabel().isRight()) {
      List<InlayHintLabelPart> parts = hint.getLabel().getRight();
      for (int way = 0; way < figure.ways().size() && way + 1 < parts.size(); way++) {
        Derivation input = figure.input(way);
        place(input, document).ifPresent(parts.get(way + 1)::setLocation);
        parts.get(way + 1).setTooltip(input.name());
      }
    }
  }

  private static MarkupContent tooltip(Figure figure, List<Derivation> workings, Numbers numbers) {
    List<String> lines = new ArrayList<>();
    for (Derivation working : workings) {
      lines.addAll(DerivationText.allLines(working, numbers.first()));
    }
    if (lines.size() > LINES) {
      lines.subList(LINES, lines.size()).clear();
      lines.add("…");
    }
    Page page = new Page(figure.label());
    figure.counts().lines().forEach(page::line);
    return new MarkupContent(MarkupKind.MARKDOWN, page.working(lines).markdown());
  }

  /** Where what somebody wrote for it stands: the last such step of this file, else any. */
  private static Optional<Location> place(Derivation input, Document document) {
    Optional<Location> found = Optional.empty();
    for (Derivation step : input.steps()) {
      if (step.standing() == Standing.STATED
          && step.locus().orElse(null) instanceof Origin origin
          && (found.isEmpty() || origin.file().equals(document.path()))) {
        found = document.view().location(origin);
      }
    }
    return found;
  }
}
