package mullwright.report.ifc;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.quantity.Length;

/**
 * Collects what is told of the things in a file, and writes each set of facts once for all things
 * it is true of.
 */
final class Descriptions {
  private final StepFile file;
  private final GlobalIds ids;
  private final Map<Told, List<StepValue.Reference>> told = new LinkedHashMap<>();

  /** A named set of facts; {@code quantities} if they are measured. */
  private record Told(String name, boolean quantities, List<Fact> facts) {}

  /**
   * One fact.
   *
   * @param entity of the IFC that holds it
   * @param value as the file spells it
   */
  record Fact(String entity, String name, String value) {
    static Fact label(String name, String words) {
      return property(name, StepValue.typed("IFCLABEL", StepValue.text(words)));
    }

    static Fact identifier(String name, String words) {
      return property(name, StepValue.typed("IFCIDENTIFIER", StepValue.text(words)));
    }

    static Fact truth(String name, boolean value) {
      return property(name, StepValue.typed("IFCBOOLEAN", StepValue.truth(value)));
    }

    static Fact whole(String name, int number) {
      return property(name, StepValue.typed("IFCINTEGER", StepValue.whole(number)));
    }

    /** A length [mm]. */
    static Fact length(String name, Length length) {
      return property(name, StepValue.typed("IFCLENGTHMEASURE", StepValue.real(length)));
    }

    /** A number of the unit the type is measured in by the file. */
    static Fact measure(String name, String type, BigDecimal value) {
      return property(name, StepValue.typed(type, StepValue.real(value)));
    }

    private static Fact property(String name, StepValue value) {
      return new Fact("IFCPROPERTYSINGLEVALUE", name, value.spelling());
    }

    /** A measured length [mm]. */
    static Fact quantity(String name, Length length) {
      return new Fact("IFCQUANTITYLENGTH", name, StepValue.real(length).spelling());
    }

    /** A measured area [m²]. */
    static Fact area(String name, BigDecimal area) {
      return new Fact("IFCQUANTITYAREA", name, StepValue.real(area).spelling());
    }

    /** A measured volume [m³]. */
    static Fact volume(String name, BigDecimal volume) {
      return new Fact("IFCQUANTITYVOLUME", name, StepValue.real(volume).spelling());
    }

    /** A mass [kg]. */
    static Fact mass(String name, BigDecimal mass) {
      return new Fact("IFCQUANTITYWEIGHT", name, StepValue.real(mass).spelling());
    }
  }

  Descriptions(StepFile file, GlobalIds ids) {
    this.file = file;
    this.ids = ids;
  }

  /** Tells properties of a thing. */
  void properties(StepValue.Reference of, String set, List<Fact> facts) {
    tell(new Told(set, false, List.copyOf(facts)), of);
  }

  /** Tells quantities of a thing. */
  void quantities(StepValue.Reference of, String set, List<Fact> facts) {
    tell(new Told(set, true, List.copyOf(facts)), of);
  }

  private void tell(Told what, StepValue.Reference of) {
    if (!what.facts().isEmpty()) {
      told.computeIfAbsent(what, any -> new ArrayList<>()).add(of);
    }
  }

  /** Writes all of them. */
  void write() {
    told.forEach(this::write);
  }

  private void write(Told what, List<StepValue.Reference> of) {
    List<StepValue.Reference> facts = what.facts().stream().map(fact -> write(fact)).toList();
    String name = what.name() + " " + what.facts();
    StepValue.Reference set =
        what.quantities()
            ? file.add(
                "IFCELEMENTQUANTITY",
                ids.of(name),
                StepValue.NONE,
                StepValue.text(what.name()),
                StepValue.NONE,
                StepValue.NONE,
                StepValue.list(facts))
            : file.add(
                "IFCPROPERTYSET",
                ids.of(name),
                StepValue.NONE,
                StepValue.text(what.name()),
                StepValue.NONE,
                StepValue.list(facts));
    file.add(
        "IFCRELDEFINESBYPROPERTIES",
        ids.of("of " + name),
        StepValue.NONE,
        StepValue.NONE,
        StepValue.NONE,
        StepValue.list(of),
        set);
  }

  private StepValue.Reference write(Fact fact) {
    StepValue value = new StepValue.Spelt(fact.value());
    return fact.entity().equals("IFCPROPERTYSINGLEVALUE")
        ? file.share(
            fact.entity(), StepValue.text(fact.name()), StepValue.NONE, value, StepValue.NONE)
        : file.share(
            fact.entity(),
            StepValue.text(fact.name()),
            StepValue.NONE,
            StepValue.NONE,
            value,
            StepValue.NONE);
  }
}
