package mullwright.review;

/** How much more or less of a thing is bought. */
public record GoodsChange(Goods.Item item, Goods.Amount before, Goods.Amount after) {
  /** Pieces more; negative for less. */
  public long count() {
    return after.count() - before.count();
  }
}
