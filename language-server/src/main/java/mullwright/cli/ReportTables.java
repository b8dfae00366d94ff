package mullwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.check.Finding;
import mullwright.check.Severity;
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
  public List<Sheet> of(SceneFile file, int wall) {
    List<Sheet> sheets = new ArrayList<>();
    Optional<Report.WallAtHand> at =
        file.checked()
            .map(
                checked ->
                    new Report.WallAtHand(
                        file.shown(),
                        units(file),
                        checked.facts().get(wall),
                        errors(checked.findings())));
    at.ifPresent(
        walls -> {
          add(new LengthsReport(), walls, false, sheets);
          add(new CalculationsReport(), walls, true, sheets);
        });
    return sheets;
  }

  private static int errors(List<Finding> findings) {
    return (int) findings.stream().filter(it -> it.severity() == Severity.ERROR).count();
  }

  private static void add(
      Report report, Report.WallAtHand wall, boolean structural, List<Sheet> sheets) {
    for (Document.Section section :
        report.make(List.of(wall), new Report.Options(false)).sections()) {
      for (Table table : section.tables()) {
        PlainTable plain = PlainTable.of(table);
        sheets.add(
            new Sheet(
                structural,
                plain.title(),
                plain.headings(),
                plain.right(),
                plain.rows().stream()
                    .map(row -> new Row(row.cells(), row.names(), row.total()))
                    .toList(),
                plain.said()));
      }
    }
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
