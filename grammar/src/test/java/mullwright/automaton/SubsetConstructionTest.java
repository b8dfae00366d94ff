package mullwright.automaton;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.Lexer;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.tool.LexerGrammar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Small grammars become the automata that they should. */
class SubsetConstructionTest {
  private static final String ALPHABET = "abc";
  private static final int LONGEST = 7;

  /** (a|b)*abb, the textbooks' example, has four states; here one more, where nothing matches. */
  @Test
  void theTextbooksExampleHasItsStates() {
    Automaton automaton = SubsetConstruction.of(lexer("A: [ab]* 'abb';")).minimal();
    assertThat(automaton.starts()).containsExactly(1);
    assertThat(automaton.accepts()).containsExactly(0, 0, 0, 0, 1);
    assertThat(automaton.firsts()).containsExactly(0, (int) 'a', (int) 'b', (int) 'c');
    assertThat(automaton.classes()).containsExactly(0, 1, 2, 0);
    assertThat(automaton.next())
        .containsExactly(
            List.of(0, 0, 0, 0),
            List.of(0, 2, 1, 0),
            List.of(0, 2, 3, 0),
            List.of(0, 2, 4, 0),
            List.of(0, 2, 1, 0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A: 'a'+; B: 'ab'; C: 'abb' 'c'*; STRAY: .;",
        "A: 'a'; B: 'a'; C: [ab]; STRAY: .;",
        "A: [ab]+ -> skip; B: 'ab'; C: .;",
        "A: 'a' -> skip; B: ('b' | 'ab') -> skip; C: 'aba' | 'c'+; STRAY: .;",
        "A: F 'c' F; B: F; C: ~[ab]; STRAY: .; fragment F: 'a' G* | 'b'; fragment G: 'b' | 'cc';",
        "A: (F | G)+ 'b'; B: 'a' ('bc')*; STRAY: .; fragment F: 'aa'; fragment G: 'aab';",
        "A: F 'b'; STRAY: .; fragment F: 'a' -> skip;",
        "A: {true}? 'ab' | 'b' {true}? 'b'; STRAY: .;"
      })
  void itFindsWhatTheRuntimeFinds(String rules) {
    Lexer lexer = lexer(rules);
    Automaton automaton = SubsetConstruction.of(lexer);
    Automaton minimal = automaton.minimal();
    assertThat(minimal.next().size()).isLessThanOrEqualTo(automaton.next().size());
    for (String text : texts()) {
      List<Integer> tokens = new ArrayList<>();
      lexer.setInputStream(CharStreams.fromString(text));
      for (Token token : lexer.getAllTokens()) {
        tokens.addAll(List.of(token.getType(), token.getStartIndex()));
      }
      assertThat(tokens(automaton, text)).as(text).isEqualTo(tokens);
      assertThat(tokens(minimal, text)).as(text).isEqualTo(tokens);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          A: 'a' -> pushMode(M); mode M; B: 'b'; | there are modes
          A: 'a' -> channel(HIDDEN);             | a rule has a command other than skip
          A: 'a' .*? 'b';                        | a loop is not greedy
          A: 'a' A? 'b';                         | a rule calls itself
          A: 'a'*;                               | a token may be empty
          A: 'a' EOF;                            | a token ends with the text
          """)
  void whatNoTableCanHoldIsRefused(String rules, String why) {
    Lexer lexer = lexer(rules);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SubsetConstruction.of(lexer))
        .withMessageEndingWith(why);
  }

  private static Lexer lexer(String rules) {
    try {
      return new LexerGrammar("lexer grammar T; " + rules)
          .createLexerInterpreter(CharStreams.fromString(""));
    } catch (org.antlr.runtime.RecognitionException e) {
      throw new IllegalArgumentException(rules, e);
    }
  }

  /** All texts of the alphabet. */
  private static List<String> texts() {
    List<String> texts = new ArrayList<>(List.of(""));
    for (int i = 0; texts.get(i).length() < LONGEST; i++) {
      for (int letter = 0; letter < ALPHABET.length(); letter++) {
        texts.add(texts.get(i) + ALPHABET.charAt(letter));
      }
    }
    return texts;
  }

  private static List<Integer> tokens(Automaton automaton, String text) {
    List<Integer> tokens = new ArrayList<>();
    for (int at = 0; at < text.length(); ) {
      int start = at;
      int type = 0;
      int state = automaton.starts().get(0);
      for (int i = start; i < text.length(); i++) {
        int range = automaton.firsts().size() - 1;
        while (automaton.firsts().get(range) > text.charAt(i)) {
          range--;
        }
        state = automaton.next().get(state).get(range);
        if (automaton.accepts().get(state) != 0) {
          type = automaton.accepts().get(state);
          at = i + 1;
        }
      }
      if (type != Lexer.SKIP) {
        tokens.addAll(List.of(type, start));
      }
    }
    return tokens;
  }
}
