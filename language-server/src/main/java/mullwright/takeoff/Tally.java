package mullwright.takeoff;

import java.math.RoundingMode;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.Fabrication;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;

/** Adds up what is bought, thing by thing and face by face. */
final class Tally {
  /** What is counted together. */
  record Thing(
      Phase phase, String sort, int face, String item, String part, String size, String remark) {}

  /** Sums of one thing; null for what it is not bought by. */
  private static final class Sum {
    private long count;
    private long ticks;
    private boolean byLength;
    private Rational area;
    private Rational mass = Rational.ZERO;
    private boolean massKnown = true;
  }

  private final Map<Thing, Sum> sums = new LinkedHashMap<>();
  private final Fabrication shop;

  Tally(Fabrication shop) {
    this.shop = shop;
  }

  void count(Thing thing, long count) {
    Sum sum = sums.computeIfAbsent(thing, any -> new Sum());
    sum.count += count;
    sum.massKnown = false;
  }

  void length(Thing thing, long count, Length length, Optional<Rational> massPerLength) {
    Sum sum = sums.computeIfAbsent(thing, any -> new Sum());
    sum.count += count;
    sum.ticks += length.ticks();
    sum.byLength = true;
    sum.massKnown &= massPerLength.isPresent();
    if (massPerLength.isPresent()) {
      sum.mass = sum.mass.plus(massPerLength.get().times(length.metres()));
    }
  }

  void area(Thing thing, Rational area, Optional<Rational> mass) {
    Sum sum = sums.computeIfAbsent(thing, any -> new Sum());
    sum.count++;
    sum.area = sum.area == null ? area : sum.area.plus(area);
    sum.massKnown &= mass.isPresent();
    if (mass.isPresent()) {
      sum.mass = sum.mass.plus(mass.get());
    }
  }

  /** The lines, by phase, then by face, then by item in the order first counted. */
  List<TakeoffLine> lines(Faces faces) {
    List<String> items = sums.keySet().stream().map(Thing::item).distinct().toList();
    return sums.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<Thing, Sum> each) -> each.getKey().phase())
                .thenComparing(each -> each.getKey().face())
                .thenComparing(each -> items.indexOf(each.getKey().item())))
        .map(each -> line(each.getKey(), each.getValue(), faces.name(each.getKey().face())))
        .toList();
  }

  private TakeoffLine line(Thing thing, Sum sum, String face) {
    Rational more = Rational.ONE.plus(share(shop.waste(), thing)).plus(share(shop.attic(), thing));
    Length length = new Length(sum.ticks);
    return new TakeoffLine(
        thing.phase(),
        thing.sort(),
        face,
        thing.item(),
        thing.part(),
        thing.size(),
        sum.count,
        sum.byLength ? Optional.of(length) : Optional.empty(),
        Optional.ofNullable(sum.area).map(area -> new Quantity(area, Kind.AREA.dimension())),
        sum.massKnown
            ? Optional.of(new Quantity(sum.mass, Kind.MASS.dimension()))
            : Optional.empty(),
        more.times(sum.count).rounded(RoundingMode.CEILING).longValueExact(),
        sum.byLength ? Optional.of(Length.nearest(length.metres().times(more))) : Optional.empty(),
        thing.remark());
  }

  // what is said of the sort itself wins over what is said of all
  private static Rational share(List<Fabrication.Share> shares, Thing thing) {
    Optional<Fabrication.Share> own =
        shares.stream().filter(share -> share.of().equals(thing.sort())).findFirst();
    Optional<Fabrication.Share> all =
        shares.stream().filter(share -> share.of().isEmpty()).findFirst();
    return own.or(() -> all).map(share -> share.share().value().si()).orElse(Rational.ZERO);
  }
}
