package mullwright.report;

import java.util.List;

/**
 * What a report says, before anybody decides how it looks.
 *
 * @param name as programs know it: {@code lengths}
 * @param closing words after the last section
 */
public record Document(String name, String title, List<Section> sections, List<String> closing) {
  public Document {
    sections = List.copyOf(sections);
    closing = List.copyOf(closing);
  }

  /**
   * What is said of one wall.
   *
   * @param file its path as shown to the reader
   * @param warnings what a reader must know before he uses the tables
   */
  public record Section(
      String title, String file, String wall, List<String> warnings, List<Table> tables) {
    public Section {
      warnings = List.copyOf(warnings);
      tables = List.copyOf(tables);
    }
  }
}
