package mullwright.check;

import java.util.List;
import mullwright.syntax.SyntaxProblem;

/**
 * Puts a problem of the text's form into words.
 *
 * @param what what is wrong
 * @param mend how to mend it
 * @param replacements texts that may take the place of what is wrong, best first
 */
record SyntaxWords(String what, String mend, List<String> replacements) {
  static SyntaxWords of(SyntaxProblem problem) {
    if (problem instanceof SyntaxProblem.Unexpected it) {
      String found = it.found().isEmpty() ? "The line ends" : Words.quoted(it.found()) + " stands";
      String where = it.inside().isEmpty() ? "" : " in " + it.inside();
      return plain(
          found + " where something else should" + where + ".",
          it.expected().isEmpty()
              ? "Take it out."
              : "Expected: " + Words.either(it.expected()) + ".");
    }
    if (problem instanceof SyntaxProblem.UnknownKeyword it) {
      return new SyntaxWords(
          "No statement here begins with " + Words.quoted(it.word().text()) + ".",
          Words.didYouMean(it.known(), "statement"),
          Words.nearest(it.known()));
    }
    if (problem instanceof SyntaxProblem.ClauseNotTaken it) {
      return plain(
          Words.article(it.statement().spelling()) + " takes no " + it.clause().spelling() + ".",
          it.statement().clauses().isEmpty()
              ? "Take the clause out."
              : "It takes: "
                  + Words.list(it.statement().clauses().stream().map(c -> c.spelling()).toList())
                  + ".");
    }
    if (problem instanceof SyntaxProblem.ClauseTwice it) {
      return plain(
          "The clause " + Words.quoted(it.clause().spelling()) + " is there twice.",
          "Take one of the two out.");
    }
    if (problem instanceof SyntaxProblem.BlockNotTaken it) {
      return plain(
          Words.quoted(it.keyword().text()) + " opens no block here.", "Take the braces out.");
    }
    if (problem instanceof SyntaxProblem.InchMarkMissing it) {
      return new SyntaxWords(
          Words.quoted(it.literal()) + " lacks its inch mark.",
          "Write " + it.literal() + "\".",
          List.of(it.literal() + "\""));
    }
    if (problem instanceof SyntaxProblem.MinusUnclear it) {
      return new SyntaxWords(
          "A minus with a space on one side only can be read in two ways.",
          "Write " + it.asLiteral() + " or " + it.asMinus() + ".",
          List.of(it.asLiteral(), it.asMinus()));
    }
    if (problem instanceof SyntaxProblem.CommaBetweenDigits it) {
      return new SyntaxWords(
          "A comma between two digits can be read in two ways.",
          "Write " + it.asOne() + " for one number or " + it.asTwo() + " for two.",
          List.of(it.asOne(), it.asTwo()));
    }
    if (problem instanceof SyntaxProblem.BareNumber it) {
      return plain(
          "The number " + it.number() + " stands bare after a name.",
          "Put a word between, as in: floor L2 at 13'-0\".");
    }
    if (problem instanceof SyntaxProblem.NotClosed it) {
      return plain(
          switch (it.what()) {
            case STRING -> "The text in quotes does not end on its line.";
            case COMMENT -> "The comment does not end.";
            case BLOCK -> "The block does not end.";
            case PARENTHESIS -> "The parenthesis does not end.";
          },
          switch (it.what()) {
            case STRING -> "Close it with a quote.";
            case COMMENT -> "Close it with */.";
            case BLOCK -> "Close it with }.";
            case PARENTHESIS -> "Close it with ).";
          });
    }
    if (problem instanceof SyntaxProblem.StrayCharacter it) {
      return plain(
          "The language has no use for " + Words.quoted(it.character()) + " here.", "Take it out.");
    }
    SyntaxProblem.TooMuch it = (SyntaxProblem.TooMuch) problem;
    return plain(
        "Too much: the limit of " + it.limit() + " is " + it.allowed() + ".",
        "Split the file, or take out what went wrong.");
  }

  private static SyntaxWords plain(String what, String mend) {
    return new SyntaxWords(what, mend, List.of());
  }
}
