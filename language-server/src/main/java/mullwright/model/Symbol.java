package mullwright.model;

/**
 * Something with a name.
 *
 * @param scope the wall a line, floor, row or opening belongs to; "" for parts, walls, projects and
 *     file-level lets
 * @param name full name
 * @param definition where its name stands
 */
public record Symbol(Kind kind, String scope, String name, Origin definition) {
  /** What can have a name. */
  public enum Kind {
    PROJECT,
    WALL,
    FACE,
    LINE,
    FLOOR,
    ROW,
    OPENING,
    LET,
    PART
  }

  @Override
  public int hashCode() {
    return name.hashCode() * 31 + definition.hashCode();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Symbol same
        && kind == same.kind
        && name.equals(same.name)
        && scope.equals(same.scope)
        && definition.equals(same.definition);
  }
}
