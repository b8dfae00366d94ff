package mullwright.report;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.UnitSystem;
import mullwright.syntax.Argument;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;

/**
 * The system of units a file is written in: that of its first {@code units} statement, else the one
 * most of its lengths are written in, else feet and inches.
 */
public final class FileUnits {
  private FileUnits() {}

  /** The system of a file; feet and inches if there is none. */
  public static UnitSystem of(Optional<ParsedFile> file) {
    return file.map(FileUnits::of).orElse(UnitSystem.US);
  }

  private static UnitSystem of(ParsedFile file) {
    for (Segment segment : file.segments()) {
      Optional<UnitSystem> stated = stated(segment.statements());
      if (stated.isPresent()) {
        return stated.get();
      }
    }
    return mostWritten(file.text());
  }

  private static Optional<UnitSystem> stated(List<Statement> statements) {
    for (Statement statement : statements) {
      Optional<UnitSystem> here =
          statement.kind() == StatementKind.UNITS
              ? statement.argument(Argument.Name.class).map(name -> system(name.word().text()))
              : statement.block().flatMap(block -> stated(block.statements()));
      if (here.isPresent()) {
        return here;
      }
    }
    return Optional.empty();
  }

  private static UnitSystem system(String word) {
    return word.startsWith("m") ? UnitSystem.SI : UnitSystem.US;
  }

  private static UnitSystem mostWritten(String text) {
    int inches = 0;
    int metric = 0;
    for (int at = 1; at < text.length(); at++) {
      boolean afterDigit = Character.isDigit(text.charAt(at - 1));
      if (afterDigit && (text.charAt(at) == '"' || text.charAt(at) == '\'')) {
        inches++;
      } else if (afterDigit && text.startsWith(" mm", at)) {
        metric++;
      }
    }
    return metric > inches ? UnitSystem.SI : UnitSystem.US;
  }
}
