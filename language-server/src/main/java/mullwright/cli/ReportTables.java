package mullwright.cli;

import java.util.ArrayList;
import java.util.List;
import mullwright.preview.SceneFile;
import mullwright.preview.Tables;
import mullwright.quantity.UnitSystem;
import mullwright.report.CalculationsReport;
import mullwright.report.Caution;
import mullwright.report.Document;
import mullwright.report.FileUnits;
import mullwright.report.LengthsReport;
import mullwright.report.PlainTable;
import mullwright.report.Report;
import mullwright.report.Table;

/** The tables that stand beside the live drawing, made by the reports. */
final class ReportTables implements Tables {
  @Override
  public List<Sheet> of(SceneFile file, int wall, About about) {
    Report report = about == About.SCHEDULE ? new LengthsReport() : new CalculationsReport();
    return file.checked()
        .map(
            checked ->
                new Report.WallAtHand(
                    file.shown(), units(file), checked.facts().get(wall), file.errors()))
        .map(at -> sheets(report.make(List.of(at), new Report.Options(false))))
        .orElse(List.of());
  }

  private static List<Sheet> sheets(Document document) {
    List<Sheet> sheets = new ArrayList<>();
    for (Document.Section section : document.sections()) {
      for (Table table : section.tables()) {
        PlainTable plain = PlainTable.of(table);
        sheets.add(
            new Sheet(
                plain.title(),
                plain.headings(),
                plain.right(),
                plain.rows().stream()
                    .map(row -> new Row(row.cells(), row.names(), row.total()))
                    .toList(),
                plain.said()));
      }
    }
    return sheets;
  }

  @Override
  public UnitSystem units(SceneFile file) {
    return FileUnits.of(file.snapshot().file(file.path()));
  }

  @Override
  public String caution() {
    return Caution.WORDS;
  }
}
