package mullwright.report;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.UnitSystem;
import mullwright.takeoff.MarkLedger;

/**
 * One report on walls. Its class is found by itself ({@code @AutoService(Report.class)}); the order
 * of its rows is part of what it promises.
 */
public interface Report {
  /** Its name: {@code lengths}. */
  String name();

  /** What it tells of those walls. */
  Document make(List<WallAtHand> walls, Options options);

  /**
   * How it is wanted.
   *
   * @param each true to list every piece by itself, false to count equal ones together
   */
  record Options(boolean each) {}

  /**
   * A wall with what a report may look at.
   *
   * @param file its path as shown to the reader
   * @param units the system its file is written in
   * @param errors how many errors the rules found in it and in the files it uses
   * @param ledger of the marks issued for its file, if one is kept
   */
  record WallAtHand(
      String file,
      UnitSystem units,
      mullwright.check.WallFacts facts,
      int errors,
      Optional<MarkLedger> ledger) {
    /** A wall no marks have been issued for. */
    public WallAtHand(String file, UnitSystem units, mullwright.check.WallFacts facts, int errors) {
      this(file, units, facts, errors, Optional.empty());
    }

    /** The same with its ledger. */
    public WallAtHand with(MarkLedger kept) {
      return new WallAtHand(file, units, facts, errors, Optional.of(kept));
    }
  }
}
