package mullwright.report.kept;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import mullwright.check.Finding;
import mullwright.check.Group;
import mullwright.check.Severity;
import mullwright.check.Waiting;
import mullwright.derivation.Derivation;
import mullwright.model.Origin;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.UnitSystem;
import mullwright.report.CheckPart;
import mullwright.report.CheckReport;
import mullwright.report.Excerpt;
import mullwright.report.Spot;
import mullwright.syntax.TextRange;
import mullwright.workspace.Packing;

/**
 * What was found in a file as bytes, and back: everything any form of the report tells. Numbers are
 * kept exactly; how they came about is not, as no report of a check tells it.
 */
final class PartBytes {
  private PartBytes() {}

  /** How something is written. */
  private interface Writing<T> {
    void to(DataOutputStream out, T what) throws IOException;
  }

  /** How it is read. */
  private interface Reading<T> {
    T from(DataInputStream in) throws IOException;
  }

  static byte[] write(CheckPart part) {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      DataOutputStream out = new DataOutputStream(bytes);
      text(out, part.path());
      out.writeInt(part.walls());
      out.writeInt(part.units().size());
      for (Map.Entry<String, UnitSystem> one : new TreeMap<>(part.units()).entrySet()) {
        text(out, one.getKey());
        text(out, one.getValue().name());
      }
      all(out, part.items(), PartBytes::item);
      all(
          out,
          part.allowed(),
          (to, one) -> {
            item(to, one.item());
            text(to, one.reason());
          });
      all(
          out,
          part.waiting(),
          (to, one) -> {
            text(to, one.file());
            text(to, one.wall());
            all(
                to,
                List.copyOf(new TreeSet<>(one.groups())),
                (groups, it) -> text(groups, it.name()));
          });
      return bytes.toByteArray();
    } catch (IOException impossible) {
      // memory has no faults of a disk
      throw new UncheckedIOException(impossible);
    }
  }

  /**
   * The part again.
   *
   * @throws IOException or IllegalArgumentException if {@link #write} did not write it
   */
  static CheckPart read(byte[] bytes) throws IOException {
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
    String path = text(in);
    int walls = in.readInt();
    Map<String, UnitSystem> units = new TreeMap<>();
    int files = Packing.count(in);
    for (int at = 0; at < files; at++) {
      units.put(text(in), UnitSystem.valueOf(text(in)));
    }
    List<CheckReport.Item> items = all(in, PartBytes::item);
    List<CheckReport.AllowedItem> allowed =
        all(in, from -> new CheckReport.AllowedItem(item(from), text(from)));
    List<Waiting> waiting = all(in, PartBytes::waiting);
    return new CheckPart(path, walls, units, items, allowed, waiting, List.of());
  }

  private static Waiting waiting(DataInputStream in) throws IOException {
    String file = text(in);
    String wall = text(in);
    List<Group> groups = all(in, from -> Group.valueOf(text(from)));
    return new Waiting(file, wall, Set.copyOf(groups));
  }

  private static void item(DataOutputStream out, CheckReport.Item item) throws IOException {
    Finding finding = item.finding();
    text(out, finding.rule());
    out.writeByte(finding.severity().ordinal());
    text(out, finding.origin().file());
    out.writeInt(finding.origin().segment());
    out.writeInt(finding.origin().range().start());
    out.writeInt(finding.origin().range().end());
    text(out, finding.piece());
    text(out, finding.what());
    text(out, finding.mend());
    number(out, finding.measured());
    number(out, finding.limit());
    spot(out, item.spot());
    Excerpt shown = item.excerpt();
    out.writeInt(shown.line());
    text(out, shown.text());
    out.writeInt(shown.start());
    out.writeInt(shown.end());
    out.writeInt(shown.furtherLines());
    all(
        out,
        item.related(),
        (to, other) -> {
          spot(to, other.spot());
          text(to, other.word());
        });
    all(
        out,
        item.fixes(),
        (to, mend) -> {
          text(to, mend.title());
          all(
              to,
              mend.edits(),
              (edits, edit) -> {
                spot(edits, edit.spot());
                text(edits, edit.text());
              });
        });
  }

  private static CheckReport.Item item(DataInputStream in) throws IOException {
    String rule = text(in);
    Severity severity = one(Severity.values(), in.readByte());
    Origin origin = new Origin(text(in), in.readInt(), new TextRange(in.readInt(), in.readInt()));
    Finding finding =
        new Finding(
            rule,
            severity,
            origin,
            text(in),
            text(in),
            text(in),
            number(in),
            number(in),
            List.of(),
            List.of());
    return new CheckReport.Item(
        finding,
        spot(in),
        new Excerpt(in.readInt(), text(in), in.readInt(), in.readInt(), in.readInt()),
        all(in, from -> new CheckReport.RelatedSpot(spot(from), text(from))),
        all(
            in,
            from ->
                new CheckReport.Mend(
                    text(from),
                    all(from, edit -> new CheckReport.MendEdit(spot(edit), text(edit))))));
  }

  private static void spot(DataOutputStream out, Spot spot) throws IOException {
    text(out, spot.file());
    out.writeInt(spot.line());
    out.writeInt(spot.column());
    out.writeInt(spot.endLine());
    out.writeInt(spot.endColumn());
  }

  private static Spot spot(DataInputStream in) throws IOException {
    return new Spot(text(in), in.readInt(), in.readInt(), in.readInt(), in.readInt());
  }

  private static void number(DataOutputStream out, Optional<Derivation> number) throws IOException {
    out.writeBoolean(number.isPresent());
    if (number.isPresent()) {
      Rational si = number.get().value().si();
      text(out, number.get().name());
      out.writeByte(number.get().kind().ordinal());
      Packing.bytes(out, si.numerator().toByteArray());
      Packing.bytes(out, si.denominator().toByteArray());
    }
  }

  private static Optional<Derivation> number(DataInputStream in) throws IOException {
    if (!in.readBoolean()) {
      return Optional.empty();
    }
    String name = text(in);
    Kind kind = one(Kind.values(), in.readByte());
    Rational numerator = Rational.of(new BigInteger(Packing.bytes(in)));
    BigInteger denominator = new BigInteger(Packing.bytes(in));
    Rational si =
        denominator.equals(BigInteger.ONE)
            ? numerator
            : numerator.dividedBy(Rational.of(denominator));
    return Optional.of(
        Derivation.computed(
            name,
            new Quantity(si, kind.dimension()),
            kind,
            "as found",
            "an earlier check of the same text"));
  }

  private static <T> T one(T[] values, int at) throws IOException {
    if (at < 0 || at >= values.length) {
      throw new IOException("damaged");
    }
    return values[at];
  }

  private static <T> void all(DataOutputStream out, List<T> list, Writing<T> writing)
      throws IOException {
    out.writeInt(list.size());
    for (T one : list) {
      writing.to(out, one);
    }
  }

  private static <T> List<T> all(DataInputStream in, Reading<T> reading) throws IOException {
    int count = Packing.count(in);
    List<T> list = new ArrayList<>(count);
    for (int at = 0; at < count; at++) {
      list.add(reading.from(in));
    }
    return list;
  }

  private static void text(DataOutputStream out, String text) throws IOException {
    Packing.text(out, text);
  }

  private static String text(DataInputStream in) throws IOException {
    return Packing.text(in);
  }
}
