package mullwright.server.hover;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.layout.GlassSizes;
import mullwright.model.Catalog;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.model.PartSchema;
import mullwright.quantity.Kind;
import mullwright.server.Document;
import mullwright.syntax.Argument;
import mullwright.syntax.Argument.Phrase;
import mullwright.syntax.Expression;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;

/** The page of a part of a catalog: its properties as stated, and the defaults it leans on. */
final class PartPages {
  private final Document document;
  private final int segment;
  private final Numbers numbers;

  /**
   * @param document the file the part stands in
   */
  PartPages(Document document, int segment) {
    this.document = document;
    this.segment = segment;
    this.numbers = Numbers.of(document.file());
  }

  /** The page of a part, from its statement. */
  Page page(Statement part, Catalog catalog) {
    String name =
        part.argument(Argument.Name.class).map(argument -> argument.word().text()).orElse("");
    Page page = new Page(part.keyword().text() + " " + name);
    part.documentation().ifPresent(page::line);
    Set<String> stated = new LinkedHashSet<>();
    for (Statement property : statements(part)) {
      stated.add(property.keyword().text());
      page.fact(property.keyword().text(), value(property));
    }
    Optional<PartKind> kind = PartKind.of(part.keyword().text());
    kind.ifPresent(
        known -> {
          for (PartSchema.Property property : PartSchema.of(known).properties()) {
            property
                .byDefault()
                .filter(taken -> !stated.contains(property.word()))
                .ifPresent(
                    taken ->
                        page.fact(
                            property.word(), taken.text() + ", default (" + taken.source() + ")"));
          }
        });
    catalog
        .find(Part.Glass.class, name)
        .filter(glass -> kind.filter(PartKind.GLASS::equals).isPresent())
        .flatMap(GlassSizes::massPerArea)
        .ifPresent(mass -> page.fact("mass by area", numbers.of(mass, Kind.MASS_PER_AREA)));
    return page;
  }

  private static List<Statement> statements(Statement part) {
    return part.block().map(block -> block.statements()).orElse(List.of());
  }

  /** The property's phrases as written, each value also in the other system. */
  String value(Statement property) {
    boolean lengths = takesLengths(property);
    List<String> phrases = new ArrayList<>();
    for (Argument argument : property.arguments()) {
      if (argument instanceof Phrase phrase) {
        List<String> parts = new ArrayList<>();
        for (Phrase.Part part : phrase.parts()) {
          parts.add(part(part, lengths));
        }
        phrases.add(String.join(" ", parts));
      } else if (argument instanceof Argument.Value value) {
        phrases.add(part(new Phrase.Part.Measured(value.expression()), lengths));
      } else if (!(argument instanceof Argument.Name)) {
        phrases.add(text(argument.range()));
      }
    }
    return phrases.isEmpty() ? "yes" : String.join(", ", phrases);
  }

  /** Whether a bare number of that property is a length; where none is asked for it is a count. */
  private static boolean takesLengths(Statement property) {
    if (property.kind() == StatementKind.LET) {
      return true;
    }
    for (PartKind kind : PartKind.values()) {
      Optional<PartSchema.Property> known = PartSchema.of(kind).find(property.keyword().text());
      if (known.filter(taken -> taken.pattern().contains("LENGTH")).isPresent()) {
        return true;
      }
    }
    return false;
  }

  private String part(Phrase.Part part, boolean lengths) {
    if (part instanceof Phrase.Part.Measured measured
        && measured.expression() instanceof Expression.Literal literal
        && (lengths || literal.unit() != null || literal.hasMarks())) {
      String unit = literal.unit() == null ? "" : literal.unit().text();
      return numbers
          .literal(literal.number(), unit)
          .map(PartPages::withoutKind)
          .orElse(text(part.range()));
    }
    return text(part.range());
  }

  /** {@code "second moment of area: 9.35 in4 (…)"} without its first half. */
  private static String withoutKind(String told) {
    int colon = told.indexOf(": ");
    return colon < 0 ? told : told.substring(colon + 2);
  }

  private String text(TextRange range) {
    String text = document.file().segments().get(segment).text();
    return text.substring(range.start(), Math.min(range.end(), text.length()));
  }
}
