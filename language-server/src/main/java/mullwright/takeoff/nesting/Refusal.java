package mullwright.takeoff.nesting;

/** Why a {@link NestingProblem} has no plan, told so that the reader can mend it. */
public sealed interface Refusal {

  /** One sentence: what, where, why and how to mend it; lengths in the problem's unit. */
  String message();

  /**
   * A part is longer than any bar can yield.
   *
   * @param part index of the longest such part
   * @param length of the part
   * @param stock index of the longest stock
   * @param usable length of that stock between its trimmed ends
   */
  record PartLongerThanStock(int part, long length, int stock, long stockLength, long usable)
      implements Refusal {
    @Override
    public String message() {
      return "part "
          + (part + 1)
          + " of length "
          + length
          + " is longer than the "
          + usable
          + " usable on the longest stock ("
          + stockLength
          + " before trimming): splice the part or add a stock of at least "
          + (length + stockLength - usable);
    }
  }

  /** There are parts but no stock. */
  record NoStock() implements Refusal {
    @Override
    public String message() {
      return "there is no stock to cut from: add a stock length";
    }
  }

  /**
   * An unlimited stock costs nothing, so cost says nothing.
   *
   * @param stock its index
   */
  record FreeStock(int stock) implements Refusal {
    @Override
    public String message() {
      return "stock "
          + (stock + 1)
          + " costs nothing and is not limited: give it a cost, or the number of bars on the rack";
    }
  }

  /**
   * The bars to be had cannot hold all parts, or no way to make them do was found.
   *
   * @param certain true if it is proved that they cannot
   */
  record StockRunsOut(boolean certain) implements Refusal {
    @Override
    public String message() {
      return (certain
              ? "the bars to be had cannot hold all parts"
              : "no way was found to cut all parts from the bars to be had")
          + ": raise the number available or add a stock without limit";
    }
  }

  /**
   * A number is beyond what is computed at all.
   *
   * @param what the thing counted
   * @param found its number
   * @param limit the most allowed
   */
  record TooMany(String what, long found, long limit) implements Refusal {
    @Override
    public String message() {
      return found
          + " "
          + what
          + " are more than the "
          + limit
          + " that one cutting layout may have: divide the order";
    }
  }
}
