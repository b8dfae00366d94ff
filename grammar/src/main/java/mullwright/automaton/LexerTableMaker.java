package mullwright.automaton;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import mullwright.syntax.antlr.WallLexer;
import org.antlr.v4.runtime.Token;

/** Writes the table of the wall grammar's lexer as a Java class, when the grammar is built. */
public final class LexerTableMaker {
  private LexerTableMaker() {}

  /**
   * @param args the folder of sources that the class goes into
   * @throws IOException if it cannot be written; a class that is as it should be stays untouched
   */
  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0], "mullwright", "syntax", "LexerTable.java");
    String source = wallTable().source();
    Files.createDirectories(file.getParent());
    if (!Files.exists(file) || !Files.readString(file).equals(source)) {
      Files.writeString(file, source, StandardCharsets.UTF_8);
    }
  }

  /**
   * The table of the wall grammar. Its state 1 stands before a token, its state 2 before a comment
   * whose end stands nowhere; from both, any character begins a token.
   *
   * @throws IllegalStateException if the grammar no longer makes it so
   */
  public static PackedTable wallTable() {
    Automaton automaton = SubsetConstruction.of(lexer(true), lexer(false)).minimal();
    if (!automaton.starts().equals(List.of(1, 2))) {
      throw new IllegalStateException("comments with and without an end begin alike");
    }
    for (int start : automaton.starts()) {
      for (int state : automaton.next().get(start)) {
        if (automaton.accepts().get(state) == Token.INVALID_TYPE) {
          throw new IllegalStateException("there is a character that is no token");
        }
      }
    }
    return PackedTable.of(automaton);
  }

  private static WallLexer lexer(boolean commentsEnd) {
    return new WallLexer(null) {
      @Override
      protected boolean commentEnds() {
        return commentsEnd;
      }
    };
  }
}
