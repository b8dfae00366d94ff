package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import mullwright.review.Disagreement;
import mullwright.workspace.MergeReview;

/** Says where two sides of a merge disagree. */
public final class MergeDocument {
  private static final List<Column> COLUMNS =
      List.of(
          Column.text("kind", "How"),
          Column.text("what", "What"),
          Column.text("base", "Base"),
          Column.text("ours", "Ours"),
          Column.text("theirs", "Theirs"),
          Column.text("merged", "Merged"));

  private MergeDocument() {}

  /** The whole comparison of three. */
  public static Document make(String title, List<MergeReview> files) {
    List<Document.Section> sections = new ArrayList<>();
    for (MergeReview file : files) {
      String text = "The texts do not merge line by line: both sides changed the same lines.";
      List<String> warnings = file.merges() ? List.of() : List.of(text);
      if (!file.merges() && file.walls().isEmpty()) {
        sections.add(new Document.Section(file.file(), file.file(), "", warnings, List.of()));
      }
      for (Map.Entry<String, List<Disagreement>> wall : file.walls().entrySet()) {
        List<List<Entry>> rows = new ArrayList<>();
        wall.getValue().forEach(one -> rows.add(row(one)));
        Table table = new Table("disagreements", "Disagreements", COLUMNS, rows, List.of());
        sections.add(
            new Document.Section(
                file.file() + ", wall " + wall.getKey(),
                file.file(),
                wall.getKey(),
                warnings,
                List.of(table)));
      }
    }
    List<String> closing = new ArrayList<>();
    if (sections.isEmpty()) {
      closing.add("The texts merge, and the sides agree on every wall.");
    }
    closing.add(Caution.WORDS);
    return new Document("merge", title, sections, closing);
  }

  private static List<Entry> row(Disagreement one) {
    return List.of(
        Entry.text(one.kind().words()),
        Entry.text(one.what()),
        Entry.text(one.base().orElse("")),
        Entry.text(one.ours().orElse("")),
        Entry.text(one.theirs().orElse("")),
        Entry.text(one.merged().orElse("")));
  }
}
