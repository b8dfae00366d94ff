package mullwright.syntax;

import java.util.List;

/**
 * The statements between braces.
 *
 * @param closed false if the closing brace is missing (reported once; the block ends where it must)
 * @param range from the opening to the closing brace, both included
 */
public record Block(BlockKind kind, List<Statement> statements, boolean closed, TextRange range) {
  public Block {
    statements = List.copyOf(statements);
  }
}
