package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One slip of the pen, in turn at each word of a wall and of its catalog, is at most one error. */
class OneSlipTest {
  private static final Path EXAMPLES = Path.of("../examples");
  private static final String WALL = "ferry-terminal/east.wall";
  private static final String CATALOG = "catalog/captured.wall";

  /** A slip: what becomes of a word, and of the blank after it; null where it cannot happen. */
  enum Slip {
    LEFT_OUT {
      @Override
      String of(String word, TokenKind kind) {
        return "";
      }
    },
    LETTERS_SWAPPED {
      @Override
      String of(String word, TokenKind kind) {
        boolean keyword =
            kind == TokenKind.KEYWORD || kind == TokenKind.CLAUSE || kind == TokenKind.PROPERTY;
        return keyword && word.length() > 2 && word.charAt(1) != word.charAt(2)
            ? "" + word.charAt(0) + word.charAt(2) + word.charAt(1) + word.substring(3)
            : null;
      }
    },
    PARENTHESIS_OPENED {
      @Override
      String of(String word, TokenKind kind) {
        return kind == TokenKind.LENGTH || kind == TokenKind.NUMBER ? "(" + word : null;
      }
    },
    COMMENT_OPENED {
      @Override
      String of(String word, TokenKind kind) {
        return kind == TokenKind.KEYWORD ? "/* " + word : null;
      }
    },
    FIRST_MARK_LEFT_OUT {
      @Override
      String of(String word, TokenKind kind) {
        return kind == TokenKind.STRING ? word.substring(1) : null;
      }
    },
    LAST_MARK_LEFT_OUT {
      @Override
      String of(String word, TokenKind kind) {
        return kind == TokenKind.STRING || word.endsWith("\"") || word.endsWith("'")
            ? word.substring(0, word.length() - 1)
            : null;
      }
    };

    abstract String of(String word, TokenKind kind);
  }

  @ParameterizedTest
  @EnumSource
  void isAtMostOneErrorInAWall(Slip slip) throws IOException {
    atMostOneError(WALL, CATALOG, slip, 1);
  }

  @ParameterizedTest
  @EnumSource
  void isAtMostOneErrorInACatalog(Slip slip) throws IOException {
    // its parts are much alike: every third word stands for all
    atMostOneError(CATALOG, null, slip, 3);
  }

  private static void atMostOneError(String path, String used, Slip slip, int every)
      throws IOException {
    String right = Files.readString(EXAMPLES.resolve(path), StandardCharsets.UTF_8);
    Map<String, String> texts = new HashMap<>();
    if (used != null) {
      texts.put(used, Files.readString(EXAMPLES.resolve(used), StandardCharsets.UTF_8));
    }
    Rules rules = Rules.find();
    List<String> more = new ArrayList<>();
    int made = 0;
    int told = 0;
    ParsedFile file = ParsedFile.parse(right);
    for (int i = 0; i < file.segments().size(); i++) {
      for (Token token : file.tokens(i)) {
        int start = file.segmentStart(i) + token.range().start();
        int end = file.segmentStart(i) + token.range().end();
        String wrong = isComment(token) ? null : slip.of(right.substring(start, end), token.kind());
        if (wrong == null || made++ % every != 0) {
          continue;
        }
        texts.put(path, right.substring(0, start) + wrong + right.substring(end));
        CheckedText checked = new CheckedText(path, texts, rules);
        assertThat(checked.failures()).isEmpty();
        List<Finding> found = checked.findings();
        told += found.size();
        if (found.size() > 1) {
          String line = right.substring(right.lastIndexOf('\n', start) + 1, end);
          more.add(line + ": " + found.stream().map(Finding::message).toList());
        }
      }
    }
    assertThat(more).isEmpty();
    assertThat(told).isPositive();
  }

  private static boolean isComment(Token token) {
    return token.kind() == TokenKind.COMMENT || token.kind() == TokenKind.DOCUMENTATION;
  }
}
