package mullwright.preview;

import java.util.List;
import mullwright.quantity.UnitSystem;

/** Makes the tables that stand beside the drawing; handed in by whoever knows reports. */
public interface Tables {
  /** What tables tell of. */
  enum About {
    /** What is to be cut and ordered. */
    SCHEDULE,
    /** What nature does to it: structural results. */
    CALCULATIONS
  }

  /**
   * Those of one wall, in the order they are shown.
   *
   * @param file checked
   * @param wall which of its walls
   */
  List<Sheet> of(SceneFile file, int wall, About about);

  /** The system of units a file is written in. */
  UnitSystem units(SceneFile file);

  /** The words that stand with all structural results. */
  String caution();

  /**
   * A table.
   *
   * @param right by column, true if its cells stand to the right
   * @param notes words above the rows
   */
  record Sheet(
      String title,
      List<String> headings,
      List<Boolean> right,
      List<Row> rows,
      List<String> notes) {
    public Sheet {
      headings = List.copyOf(headings);
      right = List.copyOf(right);
      rows = List.copyOf(rows);
      notes = List.copyOf(notes);
    }
  }

  /**
   * A row.
   *
   * @param pieces it tells of, as the shop names them
   * @param total true if it sums up others
   */
  record Row(List<String> cells, List<String> pieces, boolean total) {
    public Row {
      cells = List.copyOf(cells);
      pieces = List.copyOf(pieces);
    }
  }
}
