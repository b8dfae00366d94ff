package mullwright.server.hover;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.model.PartKind;
import mullwright.model.PartSchema;
import mullwright.syntax.BlockKind;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.workspace.Cursor;

/** The pages of property words: what they tell, how they are written, what is taken without. */
public final class Words {
  private Words() {}

  /** The properties that may stand where the cursor is, empty if it is in no block of them. */
  public static Optional<PartSchema> schema(Cursor cursor) {
    if (cursor.block() == BlockKind.CATALOG_ITEM) {
      List<Statement> around = cursor.enclosing();
      for (int i = around.size() - 1; i >= 0; i--) {
        Optional<PartKind> kind = PartKind.of(around.get(i).keyword().text());
        if (around.get(i).block().isPresent() && kind.isPresent()) {
          return kind.map(PartSchema::of);
        }
      }
      return Optional.empty();
    }
    return switch (cursor.block()) {
      case CRITERIA -> Optional.of(PartSchema.criteria());
      case FABRICATION -> Optional.of(PartSchema.fabrication());
      case PROJECT -> Optional.of(PartSchema.project());
      case WALL -> Optional.of(PartSchema.wall());
      default -> Optional.empty();
    };
  }

  static Optional<Page> property(Cursor cursor, Statement statement) {
    return schema(cursor)
        .flatMap(schema -> schema.find(statement.keyword().text()))
        .map(Words::page);
  }

  /** The page of a statement's keyword: what it says and how it is written. */
  public static Page page(StatementKind kind) {
    return new Page(kind.spelling())
        .line(sentence(kind.meaning()))
        .fact("written", Forms.line(kind));
  }

  /** The page of a clause. */
  public static Page page(ClauseWord word) {
    return new Page(word.spelling()).line(sentence(word.meaning()));
  }

  /** Words as a sentence. */
  public static String sentence(String words) {
    return words.isEmpty()
        ? ""
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }

  /** The page of a property. */
  public static Page page(PartSchema.Property property) {
    Page page = new Page(property.word());
    page.line(sentence(property.meaning()));
    page.fact("written", property.word() + " " + property.pattern());
    property
        .byDefault()
        .ifPresent(taken -> page.fact("if not stated", taken.text() + " (" + taken.source() + ")"));
    if (property.repeats()) {
      page.line("May stand on several lines.");
    }
    return page;
  }
}
