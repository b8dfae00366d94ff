package mullwright.drawing;

/** Room on the paper that is taken, so that letters do not fall on letters. */
public final class Taken {
  private final Squares<Boolean> squares = new Squares<>();

  /** True if nothing there is taken. */
  public boolean free(Box box) {
    return !squares.any(box, box::overlaps);
  }

  /** Takes it. */
  public void take(Box box) {
    squares.put(box, Boolean.TRUE);
  }

  /** Takes it if it is free; true if it was. */
  public boolean takeIfFree(Box box) {
    boolean free = free(box);
    if (free) {
      take(box);
    }
    return free;
  }
}
