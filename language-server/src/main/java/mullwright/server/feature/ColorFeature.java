package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.syntax.Argument;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.Color;
import org.eclipse.lsp4j.ColorInformation;
import org.eclipse.lsp4j.ColorPresentation;
import org.eclipse.lsp4j.ColorPresentationParams;
import org.eclipse.lsp4j.DocumentColorParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;

/**
 * The colours that finishes state, and how a colour that was picked is written.
 *
 * <p>Answers {@code textDocument/documentColor} and {@code textDocument/colorPresentation} (LSP
 * 3.17). Finishes are opaque: how much of a picked colour shines through is left out.
 */
@AutoService(Feature.class)
public final class ColorFeature implements Feature {
  private static final int HEX = 16;
  private static final int FULL = 255;

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
                "textDocument/documentColor",
                DocumentColorParams.class,
                DocumentColorParams::getTextDocument,
                (parameters, document, desk) -> colors(document, desk.cancel()))
            .orElse(List.of()),
        Route.ofDocument(
                "textDocument/colorPresentation",
                ColorPresentationParams.class,
                ColorPresentationParams::getTextDocument,
                (parameters, document, desk) ->
                    written(
                        Route.needed(parameters.getColor(), "color"),
                        Route.needed(parameters.getRange(), "range")))
            .orElse(List.of()));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("colorProvider", true);
  }

  static List<ColorInformation> colors(Document document, Cancel cancel) {
    List<ColorInformation> colors = new ArrayList<>();
    List<Segment> segments = document.file().segments();
    for (int i = 0; i < segments.size(); i++) {
      cancel.check();
      gather(document, i, segments.get(i).statements(), false, colors);
    }
    return colors;
  }

  private static void gather(
      Document document,
      int segment,
      List<Statement> statements,
      boolean ofFinish,
      List<ColorInformation> colors) {
    for (Statement statement : statements) {
      String keyword = statement.keyword().text();
      if (ofFinish && keyword.equals("colour")) {
        statement.arguments().forEach(it -> color(document, segment, it, colors));
      }
      boolean finish = statement.kind() == StatementKind.CATALOG_PART && keyword.equals("finish");
      statement
          .block()
          .ifPresent(block -> gather(document, segment, block.statements(), finish, colors));
    }
  }

  private static void color(
      Document document, int segment, Argument argument, List<ColorInformation> colors) {
    if (argument instanceof Argument.Phrase phrase) {
      for (Argument.Phrase.Part part : phrase.parts()) {
        if (part instanceof Argument.Phrase.Part.Quoted quoted) {
          Word string = quoted.string();
          TextRange inQuotes = new TextRange(string.range().start() + 1, string.range().end() - 1);
          if (string.text().matches("#[0-9a-fA-F]{6}")) {
            colors.add(
                new ColorInformation(document.range(segment, inQuotes), color(string.text())));
          }
        }
      }
    }
  }

  private static Color color(String text) {
    int rgb = Integer.parseInt(text.substring(1), HEX);
    return new Color(
        (rgb >> 16 & FULL) / (double) FULL,
        (rgb >> 8 & FULL) / (double) FULL,
        (rgb & FULL) / (double) FULL,
        1);
  }

  private static List<ColorPresentation> written(Color color, Range range) {
    String text =
        String.format(
            Locale.ROOT,
            "#%02x%02x%02x",
            part(color.getRed()),
            part(color.getGreen()),
            part(color.getBlue()));
    return List.of(new ColorPresentation(text, new TextEdit(range, text)));
  }

  private static long part(double share) {
    return Math.round(Math.max(0, Math.min(1, share)) * FULL);
  }
}
