package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import mullwright.automaton.LexerTableMaker;
import mullwright.automaton.PackedTable;
import org.antlr.v4.runtime.Token;
import org.junit.jupiter.api.Test;

/** The lexer by the table finds the tokens of the lexer that ANTLR generates, of any text. */
class TableLexerTest {
  private static final List<Path> FOLDERS =
      List.of(
          Path.of("../examples"),
          Path.of("../language-server/src/test/resources"),
          Path.of("src/test/resources"));

  /** Rich in what the grammar tells apart, and in what it nearly does. */
  private static final List<String> PIECES =
      List.of(
          ("0 1 2 9 12 1/2 5' 6\" .5 1.5 1e3 2E-4 ' \" \u2018 \u2019 \u201C \u201D \u2032 \u2033 - \u2212"
                  + " \u2013 / // /* */ /** **/ * . .. ... { } ( ) , @ = + % \u00B0 \u00B0F \u00B7 C"
                  + " F K e E a x Z _ mm lb/ft kN\u00B7m a-b a.b 5-6 5'-6 \u00AA \u00E9 \u03A9 \u0436"
                  + " \u5899 \uFB01 \u0301 \u00B2 \u00BD \u20AC \u00D7 \uD83D \uDE00 \uD83D\uDE00 \uD800"
                  + " \uFFFD \uFFFF \u0000 \u001B \u007F \u0080 & # \\ ; :")
              .split(" "));

  private static final List<String> SPACES =
      List.of(
          " ", "  ", "\t", "\f", "\u000B", "\u00A0", "\u1680", "\u2003", "\u202F", "\u205F",
          "\u3000", "\uFEFF", "\u200B", "\u0085", "\u2028", "\n", "\r", "\r\n", "\n\r", "\n\n");

  @Test
  void theTableIsThatOfTheGrammarAsItStands() {
    PackedTable anew = LexerTableMaker.wallTable();
    assertThat(new String(LexerTable.NEXT)).isEqualTo(anew.next());
    assertThat(new String(LexerTable.ACCEPTS)).isEqualTo(anew.accepts());
    assertThat(new String(LexerTable.ASCII)).isEqualTo(anew.ascii());
    assertThat(new String(LexerTable.FIRSTS)).isEqualTo(anew.firsts());
    assertThat(new String(LexerTable.CLASSES)).isEqualTo(anew.classes());
  }

  @Test
  void everyWallHasTheSameTokens() {
    walls().forEach(TableLexerTest::hold);
  }

  @Test
  void soHasEveryWallThatIsCutOffSomewhere() {
    SplittableRandom random = new SplittableRandom(1);
    for (String wall : walls()) {
      int start = random.nextInt(wall.length());
      int last = Math.min(wall.length(), start + 250);
      for (int end = start; end <= last; end++) {
        hold(wall.substring(0, end), start);
      }
    }
  }

  @Test
  void soHasAnyText() {
    SplittableRandom random = new SplittableRandom(2);
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(40); length > 0; length--) {
        text.append(piece(random));
      }
      hold(text.toString());
    }
  }

  @Test
  void soHasEveryWallWithSlips() {
    SplittableRandom random = new SplittableRandom(3);
    for (String wall : walls()) {
      StringBuilder slipped = new StringBuilder(wall);
      for (int i = 0; i < 100; i++) {
        int start = random.nextInt(slipped.length() + 1);
        int end = Math.min(slipped.length(), start + random.nextInt(4));
        slipped.replace(start, end, random.nextInt(4) == 0 ? "" : piece(random));
        int from = Math.max(0, start - 100);
        hold(slipped.substring(from, Math.min(slipped.length(), start + 100)));
      }
      hold(slipped.toString());
    }
  }

  @Test
  void soHasEveryCharacterAloneAndAmongOthers() {
    for (int character = 0; character <= Character.MAX_VALUE; character++) {
      String one = Character.toString((char) character);
      hold(one + "a" + one + "1" + one + "\"" + one + "/*" + one + "*/");
    }
  }

  private static String piece(SplittableRandom random) {
    List<String> from = random.nextInt(4) == 0 ? SPACES : PIECES;
    return from.get(random.nextInt(from.size()));
  }

  private static List<String> walls() {
    List<String> walls = new ArrayList<>();
    for (Path folder : FOLDERS) {
      try (Stream<Path> files = Files.walk(folder)) {
        files
            .filter(f -> f.toString().endsWith(".wall"))
            .sorted()
            .map(Fixtures::read)
            .forEach(walls::add);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    assertThat(walls).hasSizeGreaterThan(100);
    return walls;
  }

  /** Holds that the table finds the tokens of a text that the generated lexer finds. */
  static void hold(String text) {
    hold(text, 0);
  }

  private static void hold(String text, int start) {
    assertThat(tokens(text, start)).as(text).isEqualTo(GeneratedLexer.tokens(text, start));
  }

  private static List<Integer> tokens(String text, int start) {
    TableLexer lexer = new TableLexer(text, start);
    List<Integer> tokens = new ArrayList<>();
    WallToken token;
    do {
      token = lexer.next();
      tokens.addAll(List.of(token.getType(), token.start(), token.end()));
    } while (token.getType() != Token.EOF);
    return tokens;
  }
}
