package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A name may be of the letters of any script (general category L of the Unicode Standard, chapter
 * 4); other signs beyond ASCII are no part of one.
 */
class LettersTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"Ost", "Süd", "Ωμέγα", "Стена", "墙", "جدار", "ªº", "Ǆ", "ʰ", "x_é9", "Ñ-2.b"})
  void wordsOfAnyScriptAreNames(String name) {
    ParsedFile file = ParsedFile.parse("wall " + name + " {\n}\n");
    assertThat(problems(file)).isEmpty();
    assertThat(file.text()).contains(name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a½", "a×b", "a–b", "a²", "a→", "a😀", "a\u0301", "a\uD800", "€"})
  void otherSignsAreNot(String name) {
    assertThat(problems(ParsedFile.parse("wall " + name + " {\n}\n"))).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 'e', 'K', 0x7F, 0xA0, 0xB0, 0xB7, 0x2019, 0x201C, 0x2033, 0x2212, 0xFEFF})
  void signsThatTheGrammarNamesAreSeenAsTheyAre(int sign) {
    assertThat(TableLexer.classOf((char) sign))
        .isNotEqualTo(TableLexer.classOf(TableLexer.OTHER_LETTER));
  }

  @ParameterizedTest
  @ValueSource(ints = {'Z', '_', 0xAA, 0xB5, 0xE9, 0x3A9, 0x5899, 0xFFDC})
  void allOtherLettersAreSeenAsOne(int letter) {
    assertThat(TableLexer.classOf((char) letter))
        .isEqualTo(TableLexer.classOf(TableLexer.OTHER_LETTER));
  }

  private static java.util.List<SyntaxProblem> problems(ParsedFile file) {
    return file.segments().stream().flatMap(segment -> segment.problems().stream()).toList();
  }
}
