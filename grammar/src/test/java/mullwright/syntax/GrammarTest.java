package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import mullwright.syntax.antlr.WallLexer;
import mullwright.syntax.antlr.WallParser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.atn.DecisionState;
import org.antlr.v4.runtime.atn.LL1Analyzer;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is promised of the grammar itself. */
class GrammarTest {
  @Test
  void everyDecisionIsMadeOnOneToken() {
    LL1Analyzer analyzer = new LL1Analyzer(WallParser._ATN);
    for (DecisionState decision : WallParser._ATN.decisionToState) {
      IntervalSet seen = new IntervalSet();
      for (IntervalSet ahead : analyzer.getDecisionLookahead(decision)) {
        String rule = WallParser.ruleNames[decision.ruleIndex];
        assertThat(ahead).as(rule).isNotNull();
        assertThat(seen.and(ahead).isNil()).as("%s: %s", rule, ahead).isTrue();
        seen.addAll(ahead);
      }
    }
  }

  @Test
  void noWordIsAKeywordOfTheLexer() {
    for (int type = 1; type <= WallLexer.VOCABULARY.getMaxTokenType(); type++) {
      String literal = WallLexer.VOCABULARY.getLiteralName(type);
      assertThat(literal == null ? "" : literal).doesNotContainPattern("[A-Za-z]");
    }
  }

  @Test
  void theBuilderHasAMethodForEveryStatement() throws ReflectiveOperationException {
    int statements = 0;
    for (Method method : WallParser.StatementContext.class.getDeclaredMethods()) {
      if (ParserRuleContext.class.isAssignableFrom(method.getReturnType())) {
        StatementBuilder.class.getDeclaredMethod(visit(method.getName()), method.getReturnType());
        statements++;
      }
    }
    assertThat(statements).isEqualTo(StatementKind.values().length);
  }

  @Test
  void theBuilderHasAMethodForEveryClause() throws ReflectiveOperationException {
    int clauses = 0;
    for (Class<?> context : WallParser.class.getDeclaredClasses()) {
      if (context.getSuperclass() == WallParser.ClauseContext.class) {
        String label = context.getSimpleName().replace("Context", "");
        ClauseBuilder.class.getDeclaredMethod(visit(label), context);
        clauses++;
      }
    }
    assertThat(clauses).isGreaterThan(10);
  }

  private static String visit(String label) {
    return "visit" + label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
  }

  @ParameterizedTest
  @EnumSource(StatementKind.class)
  void everyStatementHasAToken(StatementKind kind) {
    assertThat(WallLexer.VOCABULARY.getSymbolicName(Keywords.type(kind))).isEqualTo(kind.name());
  }

  @ParameterizedTest
  @EnumSource(StatementKind.class)
  void namesAreChosenInTheStatementsWhoseRuleHasASelection(StatementKind kind) {
    Class<?> rule =
        Arrays.stream(WallParser.class.getDeclaredClasses())
            .filter(context -> has(context, kind.name()))
            .findFirst()
            .orElseThrow();
    assertThat(kind.form().selects()).isEqualTo(has(rule, "selection"));
    boolean opens = has(rule, "block") && kind != StatementKind.UNKNOWN;
    assertThat(kind.opens().isPresent()).isEqualTo(opens);
  }

  private static boolean has(Class<?> context, String name) {
    return Arrays.stream(context.getDeclaredMethods()).anyMatch(it -> it.getName().equals(name));
  }

  @ParameterizedTest
  @EnumSource(ClauseWord.class)
  void everyClauseHasAToken(ClauseWord word) {
    assertThat(Keywords.clauseOf(Keywords.type(word))).isEqualTo(word);
  }

  /** A word added here can no longer be a name in that block without quotes: think twice. */
  @Test
  void statementWordsAreTheseAndNoOthers() {
    assertThat(words(BlockKind.FILE)).isEqualTo("catalog let project units use wall");
    assertThat(words(BlockKind.PROJECT)).isEqualTo("criteria fabrication let revision units");
    assertThat(words(BlockKind.CRITERIA)).isEmpty();
    assertThat(words(BlockKind.CATALOG)).isEqualTo("let units");
    assertThat(words(BlockKind.CATALOG_ITEM)).isEmpty();
    assertThat(words(BlockKind.WALL))
        .isEqualTo(
            "anchors criteria fabrication finish grid installation let lites members system units");
    assertThat(words(BlockKind.GRID))
        .isEqualTo("corner face floor floors joint let line lines opening row slab");
    assertThat(words(BlockKind.MEMBERS))
        .isEqualTo("bracket end-dam horizontal reinforce splice vertical");
    assertThat(words(BlockKind.ANCHORS)).isEqualTo("clip dead-load wind-load");
    assertThat(words(BlockKind.LITES)).isEqualTo("spandrel vision");
    assertThat(words(BlockKind.FABRICATION)).isEmpty();
    assertThat(words(BlockKind.INSTALLATION)).isEqualTo("ladder stick");
  }

  private static String words(BlockKind block) {
    return String.join(" ", Keywords.words(block));
  }

  /** Words that no statement about the wall may use as a name without quotes. */
  @Test
  void reservedWordsAreTheseAndNoOthers() {
    List<String> reserved =
        List.of(
            ("above all as at bays bedded below bolted by clear edge every except from gap hold"
                    + " isolated like lines mark mass mirrored note offset only operable part rows"
                    + " skip slab sleeve spaced spread start through to verify with")
                .split(" "));
    List<String> candidates = new ArrayList<>(reserved);
    candidates.addAll(
        List.of(
            ("head sill jamb mullion floor floors row face corner joint opening line vertical"
                    + " horizontal splice bracket in out up down left right of x equal others on"
                    + " glass splices behind before system finish F C m mm units let wall")
                .split(" ")));
    List<String> refused =
        candidates.stream()
            .filter(
                word ->
                    !ParsedFile.parse("wall W {\nlites {\nvision " + word + "\n}\n}")
                        .problems()
                        .isEmpty())
            .toList();
    assertThat(refused).isEqualTo(reserved);
    assertThat(Arrays.stream(ClauseWord.values()).map(word -> word.spelling().split(" ")[0]))
        .allMatch(word -> word.isEmpty() || reserved.contains(word));
    for (String word : reserved) {
      String quoted = "wall W {\nlites {\nvision \"" + word + "\"\n}\n}";
      assertThat(ParsedFile.parse(quoted).problems()).as(word).isEmpty();
    }
  }
}
