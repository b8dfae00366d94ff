package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Origin;
import mullwright.quantity.Length;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.hover.Numbers;
import mullwright.syntax.LineTable;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * Writes cut lengths and glass sizes to order behind the statements that make them.
 *
 * <p>Answers {@code textDocument/inlayHint} (LSP 3.17). A hint stands at the end of its line and
 * nowhere else, so none moves while the line before it is typed; a statement with more than a few
 * sizes tells the least and the most. Each distinct size is in the tooltip with its count.
 */
@AutoService(Feature.class)
public final class InlayHintFeature implements Feature {
  private static final int TOLD = 3;

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/inlayHint",
            InlayHintParams.class,
            InlayHintParams::getTextDocument,
            (parameters, document, desk) -> {
              Range range = Route.needed(parameters.getRange(), "range");
              return hints(
                  document,
                  document.offset(range.getStart()),
                  document.offset(range.getEnd()),
                  desk.cancel());
            }));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("inlayHintProvider", true);
  }

  /** A length, or a width and a height, and how it reads. */
  private record Size(Length first, Length second, String words) implements Comparable<Size> {
    @Override
    public int compareTo(Size other) {
      int byFirst = first.compareTo(other.first);
      return byFirst != 0 ? byFirst : second.compareTo(other.second);
    }
  }

  /** The sizes of one statement and how many there are of each. */
  private static final class Sizes {
    private final Map<Size, Integer> counts = new TreeMap<>();

    void add(Size size) {
      counts.merge(size, 1, Integer::sum);
    }

    String label() {
      List<String> all = counts.keySet().stream().map(Size::words).distinct().toList();
      return all.size() <= TOLD
          ? String.join(" · ", all)
          : all.get(0) + " … " + all.get(all.size() - 1) + " (" + all.size() + " sizes)";
    }

    String tooltip() {
      StringBuilder text = new StringBuilder();
      counts.forEach(
          (size, count) ->
              text.append(text.length() == 0 ? "" : "\n")
                  .append(count)
                  .append(" × ")
                  .append(size.words));
      return text.toString();
    }
  }

  static List<InlayHint> hints(Document document, int from, int to, Cancel cancel) {
    Numbers numbers = Numbers.of(document.file());
    Map<Origin, Sizes> sizes = new LinkedHashMap<>();
    List<WallLayout> layouts =
        document
            .snapshot()
            .reading(document.path())
            .map(reading -> reading.layouts())
            .orElse(List.of());
    for (WallLayout layout : layouts) {
      cancel.check();
      collect(layout, numbers, sizes);
    }
    LineTable lines = document.file().lines();
    Map<Integer, InlayHint> byLine = new TreeMap<>();
    sizes.forEach(
        (origin, told) ->
            document
                .snapshot()
                .place(origin)
                .filter(place -> place.path().equals(document.path()))
                .ifPresent(
                    place -> {
                      int line = lines.line(place.start());
                      int end = lines.end(line);
                      if (end >= from && end <= to) {
                        byLine.putIfAbsent(line, hint(document, end, told));
                      }
                    }));
    return List.copyOf(byLine.values());
  }

  private static InlayHint hint(Document document, int end, Sizes sizes) {
    InlayHint hint = new InlayHint(document.position(end), Either.forLeft(sizes.label()));
    hint.setPaddingLeft(true);
    hint.setTooltip(sizes.tooltip());
    return hint;
  }

  private static void collect(WallLayout layout, Numbers numbers, Map<Origin, Sizes> sizes) {
    for (VerticalPiece piece : layout.verticals()) {
      of(sizes, piece.origin()).add(cut(piece.length(), numbers));
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      of(sizes, piece.origin()).add(cut(piece.length(), numbers));
    }
    for (Cell cell : layout.cells()) {
      if (cell.use().isPresent() && cell.opening().isEmpty()) {
        String words = numbers.order(cell.glassWidth()) + " × " + numbers.order(cell.glassHeight());
        of(sizes, cell.use().get().origin())
            .add(new Size(cell.glassWidth(), cell.glassHeight(), words));
      }
    }
  }

  private static Size cut(Length length, Numbers numbers) {
    return new Size(length, Length.ZERO, numbers.cutShort(length));
  }

  private static Sizes of(Map<Origin, Sizes> sizes, Origin origin) {
    return sizes.computeIfAbsent(origin, statement -> new Sizes());
  }
}
