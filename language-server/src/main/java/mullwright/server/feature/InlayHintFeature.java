package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import mullwright.model.Origin;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Fields;
import mullwright.server.Route;
import mullwright.server.Settings;
import mullwright.server.hint.Figure;
import mullwright.server.hint.Figures;
import mullwright.server.hover.Numbers;
import mullwright.syntax.LineTable;
import mullwright.syntax.Segment;
import mullwright.syntax.SyntaxProblem;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintLabelPart;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * Writes cut lengths, sizes of glass to order and what spacings come to behind the statements that
 * make them.
 *
 * <p>Answers {@code textDocument/inlayHint} and {@code inlayHint/resolve} (LSP 3.17). A hint stands
 * at the end of its line and nowhere else, so none moves while the line before it is typed; a line
 * that cannot be read has none. A statement with more than a few sizes tells the least and the
 * most. How a size came about is worked out when a reader asks; so are the ways to what it hangs
 * on, for clients that resolve {@code tooltip} and {@code label.location}.
 */
@AutoService(Feature.class)
public final class InlayHintFeature implements Feature {
  private static final String RESOLVES = "textDocument.inlayHint.resolveSupport.properties";

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/inlayHint",
            InlayHintParams.class,
            InlayHintParams::getTextDocument,
            (parameters, document, desk) -> {
              Range range = Route.needed(parameters.getRange(), "range");
              List<InlayHint> hints = hints(document, range, desk);
              desk.beside("inlayHint", document, now -> hints(now, range, desk).equals(hints));
              return hints;
            }),
        new Route<>(
            "inlayHint/resolve",
            InlayHint.class,
            (hint, desk) -> {
              Fields.of(hint.getData()).ifPresent(data -> new HintDetails(desk).add(hint, data));
              return hint;
            }));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonObject options = new JsonObject();
    options.addProperty("resolveProvider", true);
    server.add("inlayHintProvider", options);
  }

  /** The figures of a document, as its reader wants them. */
  static Figures figures(Document document, Desk desk) {
    Settings settings = desk.settings(document);
    return new Figures(
        document
            .snapshot()
            .reading(document.path())
            .map(reading -> reading.details())
            .orElse(List.of()),
        Numbers.of(document.file()).in(settings),
        settings,
        origin -> line(document, origin));
  }

  private static int line(Document document, Origin origin) {
    return document
        .snapshot()
        .place(origin)
        .filter(place -> place.path().equals(document.path()))
        .map(place -> document.file().lines().line(place.start()))
        .orElse(-1);
  }

  private static List<InlayHint> hints(Document document, Range range, Desk desk) {
    int from = document.offset(range.getStart());
    int to = document.offset(range.getEnd());
    List<String> resolves = desk.client().words(RESOLVES);
    LineTable lines = document.file().lines();
    Set<Integer> unread = unread(document);
    Map<Integer, InlayHint> byLine = new TreeMap<>();
    Map<Origin, Figure> figures = figures(document, desk).byStatement(desk.cancel());
    for (Map.Entry<Origin, Figure> each : figures.entrySet()) {
      int line = line(document, each.getKey());
      if (line < 0) {
        continue;
      }
      int end = lines.end(line);
      if (end >= from && end <= to && !unread.contains(line)) {
        byLine.computeIfAbsent(
            line, at -> hint(document, end, each.getKey(), each.getValue(), resolves));
      }
    }
    return List.copyOf(byLine.values());
  }

  /** The lines on which something cannot be read. */
  private static Set<Integer> unread(Document document) {
    Set<Integer> unread = new HashSet<>();
    List<Segment> segments = document.file().segments();
    for (int i = 0; i < segments.size(); i++) {
      for (SyntaxProblem problem : segments.get(i).problems()) {
        unread.add(
            document
                .file()
                .lines()
                .line(document.file().segmentStart(i) + problem.range().start()));
      }
    }
    return unread;
  }

  private static InlayHint hint(
      Document document, int end, Origin origin, Figure figure, List<String> resolves) {
    InlayHint hint = new InlayHint(document.position(end), Either.forLeft(figure.label()));
    hint.setPaddingLeft(true);
    if (resolves.contains("label.location") && !figure.ways().isEmpty()) {
      List<InlayHintLabelPart> parts = new ArrayList<>();
      parts.add(new InlayHintLabelPart(figure.label() + " "));
      figure.ways().forEach(way -> parts.add(new InlayHintLabelPart(way)));
      hint.setLabel(Either.forRight(parts));
    }
    if (resolves.contains("tooltip")) {
      hint.setData(HintDetails.data(document.address(), origin));
    } else {
      hint.setTooltip(figure.counts());
    }
    return hint;
  }
}
