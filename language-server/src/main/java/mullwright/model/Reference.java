package mullwright.model;

/**
 * A place in the text that names a symbol; the definition itself is one too.
 *
 * @param symbol what is named
 * @param origin the name, without quotes' neighbours
 * @param definition true where the symbol gets its name
 */
public record Reference(Symbol symbol, Origin origin, boolean definition) {
  @Override
  public int hashCode() {
    return origin.hashCode() * 31 + symbol.name().hashCode();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Reference same
        && definition == same.definition
        && origin.equals(same.origin)
        && symbol.equals(same.symbol);
  }
}
