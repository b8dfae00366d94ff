package mullwright.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import mullwright.syntax.BlockKind;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.SyntaxProblem;

/**
 * Puts a problem of the text's form into words.
 *
 * @param what what is wrong
 * @param mend how to mend it
 * @param replacements texts that may take the place of what is wrong, best first
 */
record SyntaxWords(String what, String mend, List<String> replacements) {
  /** What a word processor makes of a dash or of dots: two dashes of print, two kinds of dots. */
  static final Set<String> DASHES = Set.of("\u2013", "\u2014", "\u2026", "\u2025");

  /** True of those that may be meant as a minus. */
  static boolean isDash(String character) {
    return character.equals("\u2013") || character.equals("\u2014");
  }

  static SyntaxWords of(SyntaxProblem problem) {
    if (problem instanceof SyntaxProblem.Unexpected it) {
      if (it.found().equals("in")) {
        return plain(
            "The word “in” is a direction, not a unit" + inside(it.inside()) + ".",
            "Write inches with their mark, as 36\".");
      }
      return plain(
          (ends(it.found())
                  ? "The line ends too early"
                  : Words.quoted(it.found()) + " cannot stand here")
              + inside(it.inside())
              + ".",
          it.expected().isEmpty()
              ? "Take it out."
              : "Expected: " + Words.either(it.expected()) + example(it.inside()) + ".");
    }
    if (problem instanceof SyntaxProblem.Garbled it) {
      return garbled(it);
    }
    if (problem instanceof SyntaxProblem.UnknownKeyword it) {
      return FirstWords.of(it);
    }
    if (problem instanceof SyntaxProblem.ClauseNotTaken it) {
      return plain(
          "The statement "
              + Words.quoted(it.statement().spelling())
              + " takes no "
              + Words.quoted(it.clause().spelling())
              + ".",
          it.statement().clauses().isEmpty()
              ? "Take it out."
              : "It takes: "
                  + Words.list(it.statement().clauses().stream().map(SyntaxWords::called).toList())
                  + ".");
    }
    if (problem instanceof SyntaxProblem.ClauseTwice it) {
      return plain(
          "The clause " + Words.quoted(it.clause().spelling()) + " stands twice in this statement.",
          "Take one of the two out.");
    }
    if (problem instanceof SyntaxProblem.BlockNotTaken it) {
      return plain(
          Words.quoted(it.keyword().text()) + " opens no block here.", "Take the braces out.");
    }
    if (problem instanceof SyntaxProblem.BraceMissing it && it.alone()) {
      return plain(
          Words.quoted(it.heading()) + " opens a block, and none follows.",
          "Put { and } after it.");
    }
    if (problem instanceof SyntaxProblem.BraceMissing it) {
      return plain(
          "A “{” is missing after " + Words.quoted(it.heading()) + ": its block does not begin.",
          "Put { at the end of this line.");
    }
    if (problem instanceof SyntaxProblem.BlockWordMissing it) {
      return new SyntaxWords(
          "The word that says what these braces hold is missing; by what stands in them it is "
              + Words.quoted(it.word())
              + ".",
          "Write " + it.word() + " {.",
          List.of(it.word() + " {"));
    }
    if (problem instanceof SyntaxProblem.BlockNotClosed it) {
      return plain(
          "The block "
              + (it.block().isEmpty() ? "" : Words.quoted(it.block()) + " ")
              + "does not end.",
          "Put } after its last line.");
    }
    if (problem instanceof SyntaxProblem.BraceTwice) {
      return plain("This “{” is one too many: the block has begun.", "Take it out.");
    }
    if (problem instanceof SyntaxProblem.BraceExtra it) {
      return plain(
          it.block().isEmpty()
              ? "This “}” closes nothing: no block is open here."
              : "This “}” is one too many: what follows still belongs in "
                  + Words.quoted(it.block())
                  + ".",
          "Take it out.");
    }
    if (problem instanceof SyntaxProblem.InchMarkMissing it) {
      return new SyntaxWords(
          Words.quoted(it.literal()) + " lacks its inch mark.",
          "Write " + it.literal() + "\".",
          List.of(it.literal() + "\""));
    }
    if (problem instanceof SyntaxProblem.MinusUnclear it) {
      List<String> offers =
          Stream.of(it.asLiteral(), it.asMinus()).filter(offer -> !offer.isBlank()).toList();
      return new SyntaxWords(
          "A minus with a space on one side only can be read in two ways.",
          "Write " + String.join(" or ", offers) + ".",
          offers);
    }
    if (problem instanceof SyntaxProblem.CommaBetweenDigits it) {
      return new SyntaxWords(
          "A comma between two digits can be read in two ways.",
          "Write " + it.asOne() + " for one number or " + it.asTwo() + " for two.",
          List.of(it.asOne(), it.asTwo()));
    }
    if (problem instanceof SyntaxProblem.BareNumber it) {
      return plain(
          "The number " + Words.quoted(it.number()) + " stands bare after a name.",
          "Put a word between, as in: floor L2 at 13'-0\".");
    }
    if (problem instanceof SyntaxProblem.NotClosed it) {
      return plain(
          switch (it.what()) {
            case STRING -> "The text in quotes does not end on its line.";
            case COMMENT -> "The comment does not end: it is read up to the end of its line.";
            case PARENTHESIS -> "The parenthesis does not end.";
          },
          switch (it.what()) {
            case STRING -> "Close it with a quote.";
            case COMMENT -> "Close it with */.";
            case PARENTHESIS -> "Close it with ).";
          });
    }
    if (problem instanceof SyntaxProblem.StrayCharacter it && it.character().equals("#")) {
      return new SyntaxWords(
          "A comment does not begin with “#”.", "Begin it with //.", List.of("//"));
    }
    if (problem instanceof SyntaxProblem.StrayCharacter it && it.character().equals(".")) {
      return plain(
          "The language has no use for “.” here.", "Write .. for a range; else take it out.");
    }
    if (problem instanceof SyntaxProblem.StrayCharacter it && "&;".contains(it.character())) {
      return plain(
          "The language has no use for " + Words.quoted(it.character()) + " here.",
          "Put a comma between names; else take it out.");
    }
    if (problem instanceof SyntaxProblem.StrayCharacter it && DASHES.contains(it.character())) {
      return plain(
          "The language has no use for " + Words.quoted(it.character()) + " here.",
          "Write .. for a range" + (isDash(it.character()) ? ", - for a minus." : "."));
    }
    if (problem instanceof SyntaxProblem.StrayCharacter it) {
      return plain(
          "The language has no use for " + Words.quoted(it.character()) + " here.", "Take it out.");
    }
    SyntaxProblem.TooMuch it = (SyntaxProblem.TooMuch) problem;
    return tooMuch(it);
  }

  /** Of a statement without clauses its whole form is the best help. */
  private static String example(String statement) {
    return switch (statement) {
      case "corner" -> ", as in corner 5 90 deg";
      case "slab" -> ", as in slab 14\" L13, L14";
      case "joint" -> ", as in joint F..G";
      case "opening" -> ", as in opening door D1 bays 2..3";
      default -> "";
    };
  }

  /** The forces of a bracket have no word of their own. */
  private static String called(ClauseWord clause) {
    return clause == ClauseWord.LOADS ? "forces" : clause.spelling();
  }

  private static SyntaxWords garbled(SyntaxProblem.Garbled it) {
    String found = Words.quoted(it.found());
    String write = "Write " + Words.either(it.meant());
    return switch (it.how()) {
      case MISSPELT ->
          new SyntaxWords(
              found + " is no word of the language" + inside(it.inside()) + ".",
              it.meant().equals(List.of(","))
                  ? "Put a comma between the names."
                  : "Did you mean " + Words.either(it.meant()) + "?",
              it.meant());
      case RUN_TOGETHER ->
          new SyntaxWords(
              found + " is two words without a blank between" + inside(it.inside()) + ".",
              write + ".",
              it.meant());
      case WORD_LEFT_OUT ->
          new SyntaxWords(
              "The word before " + found + " is missing" + inside(it.inside()) + ".",
              write + ".",
              it.meant());
      case COMMA_LEFT_OUT ->
          plain(
              "The comma before " + found + " is missing" + inside(it.inside()) + ".",
              "Put a comma between the names.");
      case RANGE_LEFT_OUT ->
          plain(
              "The .. before " + found + " is missing" + inside(it.inside()) + ".",
              "Put .. between the two, for the space from the one to the other.");
      case RANGE_IN_WORDS ->
          new SyntaxWords(
              found + " is no range" + inside(it.inside()) + ": a range is written with two dots.",
              write + ".",
              it.meant());
      case COMMA_OR_RANGE_LEFT_OUT ->
          plain(
              "The comma or the .. before " + found + " is missing" + inside(it.inside()) + ".",
              "Put a comma between the names, or .. if those between are meant too.");
      case WORD_OR_COMMA_LEFT_OUT ->
          new SyntaxWords(
              "The word or the comma before " + found + " is missing" + inside(it.inside()) + ".",
              write + ", or put a comma before it if it is one more name.",
              it.meant());
    };
  }

  private static SyntaxWords tooMuch(SyntaxProblem.TooMuch it) {
    return switch (it.limit()) {
      case "length" ->
          plain(
              "The file is longer than " + it.allowed() + " characters: it is not read.",
              "Split it, and bring the parts together by use.");
      case "nesting" ->
          plain(
              "Blocks or parentheses stand more than " + it.allowed() + " deep in one another.",
              "Close those that are done, or take some out.");
      case "tokens" ->
          plain(
              "This block is longer than "
                  + it.allowed()
                  + " words, values, marks and lines: it is not read.",
              "Split it, and bring the parts together by use.");
      case "operators" ->
          plain(
              "This value has more than " + it.allowed() + " operators.",
              "Give parts of it names by let.");
      default ->
          plain(
              "There are more than " + it.allowed() + " mistakes here: the others are not shown.",
              "Mend the first ones.");
    };
  }

  private static boolean ends(String found) {
    return found.isEmpty() || found.equals("end of line");
  }

  /** Where in the language the mistake is, as the end of a sentence. */
  private static String inside(String inside) {
    if (inside.isEmpty() || inside.equals(BlockKind.FILE.name())) {
      return "";
    }
    return inside.startsWith("after ") ? ", " + inside : ", in " + Words.quoted(inside);
  }

  private static SyntaxWords plain(String what, String mend) {
    return new SyntaxWords(what, mend, List.of());
  }
}
