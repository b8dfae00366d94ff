package mullwright.drawing;

import java.util.function.Consumer;

/**
 * Something small that is drawn many times; forms that can say "the same again" do.
 *
 * @param name one word in lower case, unlike that of any other symbol
 * @param paint draws it round the origin
 */
public record Symbol(String name, Consumer<Surface> paint) {
  @Override
  public boolean equals(Object other) {
    return other instanceof Symbol same && name.equals(same.name);
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }
}
