package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Parts what loads a vertical at its supports, so that each part takes the wind of its own span.
 *
 * <p>By site data the effective wind area of a span is its length × the mean width that loads it,
 * at least a third of the length (ASCE 7, 26.2). What reaches beyond the last support is a span of
 * its own, on the safe side; up to {@link EndHold#GREATEST_SHARE} of the span beside it, it goes
 * with that span. Cell by cell the zone and the height stay the cell's.
 */
final class SpanWind {
  private final List<Tributary> whole;
  private final List<Tributary> parts = new ArrayList<>();

  private SpanWind(List<Tributary> whole) {
    this.whole = whole;
  }

  /**
   * The loads of a run from {@code bottom} to {@code top} [m], by height.
   *
   * @param whole the loads, cell by cell
   * @param supports what holds the run, from below, none twice at one height
   */
  static List<Tributary> of(
      List<Tributary> whole, List<RunSupport> supports, double bottom, double top) {
    SpanWind wind = new SpanWind(whole);
    int last = supports.size() - 1;
    if (last < 1) {
      wind.part(bottom, top, wind.strip(bottom, top));
    }
    for (int i = 0; i < last; i++) {
      double from = supports.get(i).y();
      double to = supports.get(i + 1).y();
      MemberWind.Strip strip = wind.strip(from, to);
      double longest = EndHold.GREATEST_SHARE * (to - from);
      if (i == 0) {
        wind.part(bottom, from, from - bottom > longest ? wind.strip(bottom, from) : strip);
      }
      wind.part(from, to, strip);
      if (i == last - 1) {
        wind.part(to, top, top - to > longest ? wind.strip(to, top) : strip);
      }
    }
    wind.parts.sort(Comparator.comparingDouble(Tributary::from).thenComparingInt(Tributary::cell));
    return wind.parts;
  }

  private MemberWind.Strip strip(double from, double to) {
    double loaded = 0;
    for (Tributary tributary : whole) {
      double over = Math.min(to, tributary.to()) - Math.max(from, tributary.from());
      loaded += tributary.width() * Math.max(0, over);
    }
    return new MemberWind.Strip(to - from, loaded / (to - from));
  }

  private void part(double from, double to, MemberWind.Strip strip) {
    for (Tributary tributary : whole) {
      double start = Math.max(from, tributary.from());
      double end = Math.min(to, tributary.to());
      if (start < end) {
        MemberWind cell = tributary.wind();
        parts.add(
            new Tributary(
                tributary.cell(),
                start,
                end,
                tributary.width(),
                MemberWind.of(cell.wind(), cell.cell(), strip)));
      }
    }
  }
}
