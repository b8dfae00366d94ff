package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import mullwright.format.Formatter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is done to a text, reading and laying out answer, and say where what is wrong. */
class BrokenTextTest {
  static Stream<Path> walls() {
    return Fixtures.all().stream();
  }

  @ParameterizedTest
  @MethodSource("walls")
  void cutAtEveryToken(Path wall) {
    ParsedFile file = ParsedFile.parse(Fixtures.read(wall));
    for (List<TextRange> pair : tokenPairs(file)) {
      soundAfter(file, pair.get(0).end(), file.text().length(), "");
    }
  }

  @ParameterizedTest
  @MethodSource("walls")
  void withoutEachToken(Path wall) {
    ParsedFile file = ParsedFile.parse(Fixtures.read(wall));
    for (List<TextRange> pair : tokenPairs(file)) {
      soundAfter(file, pair.get(0).start(), pair.get(0).end(), "");
    }
  }

  @ParameterizedTest
  @MethodSource("walls")
  void withEachTokenTwice(Path wall) {
    ParsedFile file = ParsedFile.parse(Fixtures.read(wall));
    for (List<TextRange> pair : tokenPairs(file)) {
      TextRange token = pair.get(0);
      String twice = file.text().substring(token.start(), token.end()) + " ";
      soundAfter(file, token.start(), token.start(), twice);
    }
  }

  @ParameterizedTest
  @MethodSource("walls")
  void withEachTokenAndTheNextSwapped(Path wall) {
    ParsedFile file = ParsedFile.parse(Fixtures.read(wall));
    String text = file.text();
    for (List<TextRange> pair : tokenPairs(file)) {
      TextRange left = pair.get(0);
      TextRange right = pair.get(1);
      String swapped =
          text.substring(right.start(), right.end())
              + text.substring(left.end(), right.start())
              + text.substring(left.start(), left.end());
      soundAfter(file, left.start(), right.end(), swapped);
    }
  }

  @Test
  void deepNesting() {
    for (String open : List.of("(", "{", "{\n", "a {\n", "wall A {\n", "-", "(-")) {
      for (String start : List.of("", "let x = ", "wall A {\ngrid {\nrow R at ")) {
        sound(start + open.repeat(100_000));
      }
    }
    sound("let x = " + "(".repeat(100_000) + "1" + ")".repeat(100_000));
    sound("{".repeat(100_000) + "}".repeat(100_000));
  }

  @Test
  void aSumOfManyTermsIsRefusedNotFollowed() {
    ParsedFile file = sound("let x = 1" + " + 1".repeat(100_000));
    assertThat(file.problems())
        .extracting(ParsedFile.FileProblem::problem)
        .hasExactlyElementsOfTypes(SyntaxProblem.TooMuch.class);
  }

  @Test
  void nestingWithinTheLimitIsRead() {
    int depth = SyntaxLimits.NESTING;
    assertThat(sound("let x = " + "(".repeat(depth) + "1" + ")".repeat(depth)).problems())
        .isEmpty();
    assertThat(sound("let x = " + "(".repeat(depth + 1) + "1" + ")".repeat(depth + 1)).problems())
        .hasSize(1);
  }

  @Test
  void fourMegabytes() {
    String line = "    row R1 at 3'-0\" above L1 only C..F // a row\n";
    String wall = "wall W {\n  grid {\n" + line.repeat(100) + "  }\n}\n";
    String walls = wall.repeat(SyntaxLimits.FILE_LENGTH / wall.length());
    assertThat(ParsedFile.parse(walls).problems()).isEmpty();
  }

  @Test
  void aBlockOfTooManyWordsIsSkippedAlone() {
    String most = "row a\n".repeat(SyntaxLimits.TOKENS_PER_SEGMENT / 3 - 10);
    String start = "wall W {\ngrid {\n";
    assertThat(sound("units mm\n" + start + most + "}\n}\nunits mm\n").segments())
        .allSatisfy(segment -> assertThat(segment.statements()).hasSize(1));
    ParsedFile file = sound("units mm\n" + start + most + most + "wall V {\n}\nunits mm\n");
    assertThat(file.segments()).hasSize(4);
    assertThat(file.problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.segment()).isEqualTo(1));
    assertThat(file.tokens(1)).isEmpty();
    assertThat(Formatter.format(file)).contains("\nwall V {\n}\nunits mm\n");
  }

  @Test
  void beyondTheLargestFileNothingIsRead() {
    String text = "units mm\n".repeat(SyntaxLimits.FILE_LENGTH / 9 + 1);
    ParsedFile file = sound(text);
    assertThat(file.segments()).hasSize(1);
    assertThat(file.problems()).hasSize(1);
    assertThat(file.edit(0, text.length(), "units mm\n"))
        .satisfies(
            small -> {
              assertThat(small.problems()).isEmpty();
              assertThat(small.segments().get(0).statements()).hasSize(1);
            });
  }

  @Test
  void problemsEndAtALimit() {
    ParsedFile segment = sound("wall W {\n" + "?\n".repeat(1_000) + "}\n");
    assertThat(segment.problems()).hasSize(SyntaxLimits.PROBLEMS_PER_SEGMENT + 1);
    ParsedFile file = sound("foo\n".repeat(1_000));
    assertThat(file.problems()).hasSize(SyntaxLimits.PROBLEMS_PER_FILE + 1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "\u0000",
        "\u0000\u0000 wall \u0000",
        "\uD83D",
        "\uDE00\uD83D",
        "wall \uD83D\uDE00 {\n}",
        "\uFEFFunits mm",
        "\r",
        "\r\n\r",
        "\u2028\u2029\u0085",
        "/*",
        "*/",
        "/",
        "\"",
        "'",
        "5'-",
        "let x = 5'-",
        "let x =",
        "let",
        "}",
        "}}}}",
        "{",
        ",",
        "..",
        "wall",
        "wall W",
        "wall W {",
        "use",
        "/// told",
        "//",
        "\t\t",
        "let x = 9999999999999999999999999999999e999999999"
      })
  void oddText(String text) {
    sound(text);
  }

  @Test
  void randomCharacters() {
    SplittableRandom random = new SplittableRandom(20260302);
    String pool =
        "wallgrid ABL12.,'\"-+*/(){}@=\n\r\t/*\u2032\u2033\u201C\u201D\u00B0%\u00B7\uD83D\u0000\u00e9";
    for (int i = 0; i < 3_000; i++) {
      StringBuilder text = new StringBuilder("wall W {\n grid {\n");
      int length = random.nextInt(60);
      for (int j = 0; j < length; j++) {
        text.append(pool.charAt(random.nextInt(pool.length())));
      }
      sound(text.toString());
    }
  }

  /** Each token of the file with the next. */
  private static List<List<TextRange>> tokenPairs(ParsedFile file) {
    List<TextRange> all = new ArrayList<>();
    for (int i = 0; i < file.segments().size(); i++) {
      for (Token token : file.tokens(i)) {
        if (token.kind() != TokenKind.COMMENT) {
          all.add(file.absolute(i, token.range()));
        }
      }
    }
    List<List<TextRange>> pairs = new ArrayList<>();
    for (int i = 0; i + 1 < all.size(); i++) {
      pairs.add(all.subList(i, i + 2));
    }
    return pairs;
  }

  private static void soundAfter(ParsedFile file, int start, int end, String replacement) {
    ParsedFile edited = file.edit(start, end, replacement);
    sound(edited);
    if (edited.text().length() % 10 == 0) {
      // laying out is the dear part: every tenth text stands for all
      RoundTrip.check(edited.text());
    }
  }

  private static ParsedFile sound(String text) {
    ParsedFile file = text.length() < 10_000 ? RoundTrip.check(text) : ParsedFile.parse(text);
    sound(file);
    return file;
  }

  /** Fails unless all of the file has its place. */
  private static void sound(ParsedFile file) {
    StringBuilder text = new StringBuilder();
    for (Segment segment : file.segments()) {
      text.append(segment.text());
      int length = segment.text().length();
      int last = 0;
      for (SyntaxProblem problem : segment.problems()) {
        TextRange range = problem.range();
        boolean placed = range.start() >= last && range.length() > 0 && range.end() <= length;
        assertThat(placed).as("%s in <%s>", problem, segment.text()).isTrue();
        last = range.start();
      }
      inside(segment.statements(), new TextRange(0, length));
    }
    assertThat(text.toString()).isEqualTo(file.text());
  }

  /** Statements follow each other, and everything of one lies inside it. */
  private static void inside(List<Statement> statements, TextRange outer) {
    int last = outer.start();
    for (Statement statement : statements) {
      TextRange range = statement.range();
      within(range, new TextRange(last, outer.end()));
      statement.arguments().forEach(argument -> within(argument.range(), range));
      statement.clauses().forEach(clause -> within(clause.range(), range));
      statement.remarks().forEach(remark -> within(remark.range(), range));
      if (statement.block().isPresent()) {
        within(statement.block().get().range(), range);
        inside(statement.block().get().statements(), statement.block().get().range());
      }
      last = range.end();
    }
  }

  private static void within(TextRange inner, TextRange outer) {
    if (inner.length() == 0 || inner.start() < outer.start() || inner.end() > outer.end()) {
      throw new AssertionError(inner + " is not inside " + outer);
    }
  }
}
