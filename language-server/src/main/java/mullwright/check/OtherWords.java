package mullwright.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.model.Origin;
import mullwright.model.Role;
import mullwright.syntax.BlockKind;
import mullwright.syntax.SyntaxProblem;
import mullwright.syntax.TextRange;

/**
 * Words of the trade that a line may well begin with, though a statement of the language begins
 * with another: {@code door D1 …} for {@code opening door D1 …}.
 */
final class OtherWords {
  /** Kinds of opening, which stand after the word {@code opening}. */
  static final Set<String> OPENINGS = Set.of("door", "void", "louvre", "vent");

  /** Where the names end that a line is about: before a remark or a comment, or with the line. */
  private static final Pattern END =
      Pattern.compile("\\s*(?:\\b(?:note|verify|hold)\\s*\"|//|/\\*|\\r|\\n|$)");

  private OtherWords() {}

  /** How the line begins in the language; empty if the word is none of these. */
  static String of(SyntaxProblem.UnknownKeyword unknown) {
    String word = unknown.word().text();
    if (unknown.block() == BlockKind.GRID && OPENINGS.contains(word)) {
      return "opening " + word;
    }
    if (unknown.block() == BlockKind.LITES && word.equals("glass")) {
      return "vision or spandrel";
    }
    if (unknown.block() == BlockKind.MEMBERS && isVertical(word)) {
      return "vertical, and as " + word + " after its lines";
    }
    return "";
  }

  private static boolean isVertical(String word) {
    return Arrays.stream(Role.values())
        .anyMatch(role -> role.vertical() && role.spelling().equals(word));
  }

  /** The edits that make the line one of the language. */
  static List<Fix> fixes(SyntaxProblem.UnknownKeyword unknown, Origin at, String text) {
    String word = unknown.word().text();
    return switch (unknown.block()) {
      case GRID ->
          OPENINGS.contains(word) ? List.of(Fixes.replace(at, "opening " + word)) : List.of();
      case LITES ->
          word.equals("glass")
              ? List.of(Fixes.replace(at, "vision"), Fixes.replace(at, "spandrel"))
              : List.of();
      case MEMBERS -> isVertical(word) ? vertical(word, at, text) : List.of();
      default -> List.of();
    };
  }

  private static List<Fix> vertical(String role, Origin at, String text) {
    Matcher end = END.matcher(text).region(at.range().end(), text.length());
    if (!end.find() || text.substring(at.range().end(), end.start()).isBlank()) {
      return List.of();
    }
    Origin last = new Origin(at.file(), at.segment(), new TextRange(end.start(), end.start()));
    List<Fix.Edit> edits = new ArrayList<>();
    edits.add(new Fix.Edit(at, "vertical"));
    edits.add(new Fix.Edit(last, " as " + role));
    String said = text.substring(at.range().end(), end.start()).strip();
    return List.of(new Fix("Write vertical " + said + " as " + role, edits));
  }
}
