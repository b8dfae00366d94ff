package mullwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.model.Origin;
import mullwright.model.Role;
import mullwright.syntax.BlockKind;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;

/**
 * What the language begins a line with for which the trade also has another word: {@code opening
 * door D1 …} for {@code door D1 …}.
 *
 * @param begins how the line may begin, the likeliest first; empty if the word is none of these
 * @param role that follows the names the line is about, after the word {@code as}; mostly empty
 */
record OtherWords(List<String> begins, String role) {
  /** Where the names end that a line is about: before a remark or a comment, or with the line. */
  private static final String END = "\\s*(?:\\b(?:note|verify|hold)\\s*\"|//|/\\*|\\r|\\n|$)";

  /**
   * What a line with that first word is to say in that block; of a word of another block, what it
   * says there.
   */
  static OtherWords of(Word first, BlockKind block) {
    String word = first.text().toLowerCase(Locale.ROOT);
    if (block == BlockKind.MEMBERS && isVertical(word)) {
      return new OtherWords(List.of("vertical"), word);
    }
    return switch (word) {
      case "axis", "column", "gridline" -> say("line");
      case "axes", "columns", "gridlines" -> say("lines");
      case "level", "storey", "story" -> say("floor");
      case "levels", "storeys", "stories" -> say("floors");
      case "rows" -> say("row");
      case "sill", "head" -> block == BlockKind.GRID ? say("row " + word) : say();
      case "rail", "transom" -> say(block == BlockKind.GRID ? "row " + word : "horizontal");
      case "door", "void", "louvre", "vent" -> say("opening " + word);
      case "doors" -> say("opening door");
      case "louver" -> say("opening louvre");
      case "window" -> say("opening vent");
      case "mullion", "mullions", "jamb", "jambs", "post", "posts", "verticals" -> say("vertical");
      case "rails", "transoms", "horizontals" -> say("horizontal");
      case "steel" -> say("reinforce");
      case "glass" -> block == BlockKind.LITES ? say("vision", "spandrel") : say("vision");
      case "glazing", "lite", "pane" -> say("vision");
      case "panel" -> say("spandrel");
      case "anchor" -> say("dead-load");
      default -> say();
    };
  }

  private static OtherWords say(String... begins) {
    return new OtherWords(List.of(begins), "");
  }

  private static boolean isVertical(String word) {
    for (Role role : Role.values()) {
      if (role.vertical() && role.spelling().equals(word)) {
        return true;
      }
    }
    return false;
  }

  /** How the line begins, as a sentence says it. */
  String words() {
    String beginning = Words.either(begins);
    return role.isEmpty() ? beginning : beginning + ", and as " + role + " after its lines";
  }

  /** Texts that make the line one of the language if they take the place of the word alone. */
  List<String> replacements() {
    return role.isEmpty() ? begins : List.of();
  }

  /** The edits that make the line one of the language where more than the word changes. */
  List<Fix> fixes(Origin at, String text) {
    if (role.isEmpty()) {
      return List.of();
    }
    Matcher end = Pattern.compile(END).matcher(text).region(at.range().end(), text.length());
    if (!end.find() || text.substring(at.range().end(), end.start()).isBlank()) {
      return List.of();
    }
    Origin last = new Origin(at.file(), at.segment(), new TextRange(end.start(), end.start()));
    List<Fix.Edit> edits = new ArrayList<>();
    edits.add(new Fix.Edit(at, begins.get(0)));
    edits.add(new Fix.Edit(last, " as " + role));
    String said = text.substring(at.range().end(), end.start()).strip();
    return List.of(new Fix("Write " + begins.get(0) + " " + said + " as " + role, edits));
  }
}
