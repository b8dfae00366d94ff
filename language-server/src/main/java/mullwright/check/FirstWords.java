package mullwright.check;

import java.util.List;
import java.util.Optional;
import mullwright.syntax.SyntaxProblem;

/**
 * A first word that no statement of its block begins with, in words: it may be a slip of the pen,
 * the trade's other word for what the language has one word for, or a line of another block.
 */
final class FirstWords {
  private FirstWords() {}

  static SyntaxWords of(SyntaxProblem.UnknownKeyword it) {
    String word = it.word().text();
    List<String> near = Words.near(word, it.known());
    if (!near.isEmpty()) {
      return noStatement(it, Words.didYouMean(word, it.known(), "statement"), near);
    }
    OtherWords meant = OtherWords.of(it.word(), it.block());
    boolean means = !meant.begins().isEmpty();
    String first = means ? meant.begins().get(0).split(" ")[0] : "";
    if (it.known().contains(first)) {
      return noStatement(it, "Write " + meant.words() + ".", meant.replacements());
    }
    Optional<String> place = OtherPlace.of(word, it.block());
    if (place.isPresent()) {
      return new SyntaxWords(
          Words.quoted(word) + " cannot stand here.",
          "It stands " + place.get() + ": put it there.",
          List.of());
    }
    if (means) {
      String there =
          OtherPlace.of(first, it.block()).map(where -> ", which stands " + where).orElse("");
      return noStatement(
          it,
          "What may be meant is " + Words.quoted(meant.begins().get(0)) + there + ".",
          List.of());
    }
    return noStatement(it, Words.didYouMean(word, it.known(), "statement"), List.of());
  }

  private static SyntaxWords noStatement(
      SyntaxProblem.UnknownKeyword it, String mend, List<String> replacements) {
    return new SyntaxWords(
        "No statement here begins with " + Words.quoted(it.word().text()) + ".",
        mend,
        replacements);
  }
}
