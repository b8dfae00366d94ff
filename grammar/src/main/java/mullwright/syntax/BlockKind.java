package mullwright.syntax;

/** The kinds of block: which statements may stand in each is told by {@link StatementKind}. */
public enum BlockKind {
  FILE,
  PROJECT,
  CRITERIA,
  CATALOG,
  CATALOG_ITEM,
  WALL,
  GRID,
  MEMBERS,
  ANCHORS,
  LITES,
  FABRICATION,
  INSTALLATION
}
