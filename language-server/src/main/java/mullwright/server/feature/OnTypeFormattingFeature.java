package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.syntax.LineTable;
import mullwright.syntax.Literals;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import org.eclipse.lsp4j.DocumentOnTypeFormattingParams;
import org.eclipse.lsp4j.TextEdit;

/**
 * Puts right what was just typed: the spelling of feet and inches, the indentation of a new line
 * and of a closing brace.
 *
 * <p>Answers {@code textDocument/onTypeFormatting} (LSP 3.17). A length that may still go on
 * ({@code 5'-6} before a space: perhaps {@code 5'-6 1/2"} is meant) is left alone until its mark, a
 * comma or the end of the line says that it is done. Nothing but the line in hand and the one
 * before moves.
 */
@AutoService(Feature.class)
public final class OnTypeFormattingFeature implements Feature {
  private static final String NEW_LINE = "\n";
  private static final List<String> MORE = List.of("\"", ",", "}");

  /** Marks of inches. */
  private static final String INCHES = "\"\u2033\u201d";

  private static final int STEP = 2;
  private static final int CONTINUED = 4;

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/onTypeFormatting",
            DocumentOnTypeFormattingParams.class,
            DocumentOnTypeFormattingParams::getTextDocument,
            (parameters, document, desk) ->
                edits(
                    document,
                    document.offset(Route.needed(parameters.getPosition(), "position")),
                    Route.needed(parameters.getCh(), "ch"))));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonArray more = new JsonArray();
    MORE.forEach(more::add);
    JsonObject options = new JsonObject();
    options.addProperty("firstTriggerCharacter", NEW_LINE);
    options.add("moreTriggerCharacter", more);
    server.add("documentOnTypeFormattingProvider", options);
  }

  static List<TextEdit> edits(Document document, int offset, String typed) {
    List<TextEdit> edits = new ArrayList<>();
    LineTable lines = document.file().lines();
    int line = lines.line(offset);
    switch (typed) {
      case NEW_LINE -> {
        if (line > 0) {
          spell(document, lines.start(line - 1), lines.end(line - 1), edits);
        }
        indent(document, line, edits);
      }
      case "}" -> indent(document, line, edits);
      case "\"" -> spell(document, lines.start(line), offset, edits);
      case "," -> spell(document, lines.start(line), ended(document, offset), edits);
      default -> {
        // not asked for
      }
    }
    return edits;
  }

  /** Up to where lengths are done with: one that a comma parts from its mark is not. */
  private static int ended(Document document, int offset) {
    String text = document.file().text();
    boolean parted = offset < text.length() && INCHES.indexOf(text.charAt(offset)) >= 0;
    return parted ? offset - 2 : offset;
  }

  /** Spells the lengths of a stretch of one line. */
  private static void spell(Document document, int from, int to, List<TextEdit> edits) {
    int segment = document.file().segmentAt(from);
    int start = document.file().segmentStart(segment);
    for (Token token : document.file().tokens(segment)) {
      int first = start + token.range().start();
      int last = start + token.range().end();
      if (token.kind() == TokenKind.LENGTH && first >= from && last <= to) {
        String written = document.file().text().substring(first, last);
        String spelt = Literals.spelling(written);
        if (!spelt.equals(written)) {
          edits.add(new TextEdit(document.range(first, last), spelt));
        }
      }
    }
  }

  /** Two blanks for every brace it stands in, four more if it goes on with a statement. */
  private static void indent(Document document, int line, List<TextEdit> edits) {
    String text = document.file().text();
    LineTable lines = document.file().lines();
    int start = lines.start(line);
    int first = start;
    while (first < lines.end(line) && (text.charAt(first) == ' ' || text.charAt(first) == '\t')) {
      first++;
    }
    // a new line belongs to the statement before it
    int segment = document.file().segmentAt(Math.max(0, start - 1));
    int base = document.file().segmentStart(segment);
    int depth = 0;
    Token before = null;
    for (Token token : document.file().tokens(segment)) {
      int at = base + token.range().start();
      if (at >= start) {
        break;
      }
      boolean comment =
          token.kind() == TokenKind.COMMENT || token.kind() == TokenKind.DOCUMENTATION;
      if (comment && base + token.range().end() > first) {
        // inside a comment of several lines nothing is anybody's business
        return;
      }
      if (token.kind() == TokenKind.BRACE) {
        depth = Math.max(0, depth + (text.charAt(at) == '{' ? 1 : -1));
      }
      before = comment ? before : token;
    }
    boolean closes = first < text.length() && text.charAt(first) == '}';
    boolean goesOn =
        !closes
            && before != null
            && (before.kind() == TokenKind.COMMA || before.kind() == TokenKind.OPERATOR);
    int wanted = STEP * Math.max(0, depth - (closes ? 1 : 0)) + (goesOn ? CONTINUED : 0);
    String indentation = " ".repeat(wanted);
    if (!text.substring(start, first).equals(indentation)) {
      edits.add(new TextEdit(document.range(start, first), indentation));
    }
  }
}
