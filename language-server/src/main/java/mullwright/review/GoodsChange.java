package mullwright.review;

import mullwright.quantity.Rational;

/** More or less of one thing. */
public record GoodsChange(Goods.Item item, Goods.Amount before, Goods.Amount after) {
  /** How many more, less if negative. */
  public long count() {
    return after.count() - before.count();
  }

  /** True if it is bought by length. */
  public boolean byLength() {
    return !before.metres().equals(Rational.ZERO) || !after.metres().equals(Rational.ZERO);
  }

  /** True if it is bought by area. */
  public boolean byArea() {
    return !before.squareMetres().equals(Rational.ZERO)
        || !after.squareMetres().equals(Rational.ZERO);
  }
}
