package mullwright.syntax;

/**
 * A brace that waits for its other half.
 *
 * @param brace the brace; of no length if the text lacks it
 * @param inside the kind of block, or null inside braces that hold clauses or nothing of use
 * @param clausesOf the statement whose clauses the braces hold, or null
 * @param first the first token of the line it stands on
 * @param missing true if the text lacks it
 */
record OpenBrace(
    WallToken brace, BlockKind inside, StatementKind clausesOf, WallToken first, boolean missing) {
  boolean holdsClauses() {
    return clausesOf != null;
  }

  boolean skipped() {
    return inside == null && clausesOf == null;
  }

  /** The word that opens the block. */
  String word() {
    return first == brace ? "" : first.getText();
  }
}
