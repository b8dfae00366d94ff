package mullwright.analysis.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How a beam answers one load case: reactions, and shear, moment, slope and deflection anywhere.
 *
 * <p>Signs as in {@link HingedBeam}. Values at a place are exact polynomials; where one jumps
 * (shear at a support, slope at a hinge) a value at a place is that just after it, unless the name
 * says {@code Before}. Immutable.
 */
public final class BeamResponse {
  private final String name;
  private final Beam beam;
  private final BeamPieces pieces;
  private final PieceStates states;
  private final double[] reactions;

  /** Answers given; the same responses are asked again at each edit of a wall. */
  private final Map<Stretch, Extremes> sags = new ConcurrentHashMap<>(4);

  private record Stretch(double from, double to) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Stretch same && from == same.from && to == same.to;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(from) * 31 + Double.hashCode(to);
    }
  }

  BeamResponse(String name, Beam beam, BeamPieces pieces, PieceStates states, double[] reactions) {
    this.name = name;
    this.beam = beam;
    this.pieces = pieces;
    this.states = states;
    this.reactions = reactions;
  }

  /** Name of the load case or combination. */
  public String name() {
    return name;
  }

  /** The beam that was solved. */
  public Beam beam() {
    return beam;
  }

  /**
   * Force of a support on the beam.
   *
   * @param at place of the support [m]
   * @param force force [N], positive against positive load
   */
  public record Reaction(double at, double force) {}

  /** Reactions from the start of the beam on. */
  public List<Reaction> reactions() {
    List<Reaction> all = new ArrayList<>(beam.supports().size());
    for (Beam.Support support : beam.supports()) {
      all.add(new Reaction(support.at(), reactions[pieces.mesh().nodeAt(support.at())]));
    }
    all.sort((one, other) -> Double.compare(one.at(), other.at()));
    return List.copyOf(all);
  }

  /** Shear just after a place [N]. */
  public double shearAt(double place) {
    return after(place).shear(offset(place));
  }

  /** Shear just before a place [N]. */
  public double shearBefore(double place) {
    int piece = pieceBefore(place);
    return states.piece(pieces, piece).shear(place - pieces.start(piece));
  }

  /** Bending moment [N·m], exactly 0 at a hinge; just after a couple. */
  public double momentAt(double place) {
    return after(place).moment(offset(place));
  }

  /** Slope just after a place, as a pure number. */
  public double slopeAt(double place) {
    return after(place).slope(offset(place));
  }

  /** Slope just before a place, as a pure number. */
  public double slopeBefore(double place) {
    int piece = pieceBefore(place);
    return states.piece(pieces, piece).slope(place - pieces.start(piece));
  }

  /** Deflection [m]. */
  public double deflectionAt(double place) {
    return after(place).deflection(offset(place));
  }

  /** Extreme moments [N·m] of the whole beam. */
  public Extremes moments() {
    return moments(beam.start(), beam.end());
  }

  /** Extreme moments [N·m] between two places. */
  public Extremes moments(double from, double to) {
    Extremes.Search search = new Extremes.Search();
    walk(
        from,
        to,
        (piece, start, low, high) -> {
          for (double s : piece.shearRoots(low, high)) {
            search.offer(start + s, piece.moment(s));
          }
        });
    return search.found();
  }

  /** Extreme shears [N] between two places, both sides of every jump counted. */
  public Extremes shears(double from, double to) {
    Extremes.Search search = new Extremes.Search();
    walk(
        from,
        to,
        (piece, start, low, high) -> {
          for (double s : piece.loadRoots(low, high)) {
            search.offer(start + s, piece.shear(s));
          }
        });
    return search.found();
  }

  /** Extreme deflections [m] between two places. */
  public Extremes deflections(double from, double to) {
    return offLine(from, to, 0, 0);
  }

  /**
   * Extreme deflections [m] between two places, measured from the straight line between the
   * deflected positions of the two: the sag of a glass edge, or of a span whose supports give.
   */
  public Extremes sags(double from, double to) {
    return sags.computeIfAbsent(new Stretch(from, to), it -> sagsOf(it.from, it.to));
  }

  private Extremes sagsOf(double from, double to) {
    double start = deflectionAt(from);
    double slope = to > from ? (deflectionAt(to) - start) / (to - from) : 0;
    return offLine(from, to, start - slope * from, slope);
  }

  /**
   * Sag of one span.
   *
   * @param from place of a support [m]
   * @param to place of the next support [m]
   * @param deflections extreme deflections in the span [m]
   * @param sags extreme deflections in the span from the line between its supports [m]
   */
  public record Span(double from, double to, Extremes deflections, Extremes sags) {}

  /** The spans between neighbouring supports, from the start on; overhangs are no spans. */
  public List<Span> spans() {
    List<Reaction> supports = reactions();
    List<Span> spans = new ArrayList<>();
    for (int i = 0; i + 1 < supports.size(); i++) {
      double from = supports.get(i).at();
      double to = supports.get(i + 1).at();
      Extremes deflections = deflections(from, to);
      boolean still = deflectionAt(from) == 0 && deflectionAt(to) == 0;
      spans.add(new Span(from, to, deflections, still ? deflections : sags(from, to)));
    }
    return List.copyOf(spans);
  }

  /**
   * What happens at a hinge.
   *
   * @param at place [m]
   * @param shearBefore shear just before it [N]
   * @param shearAfter shear just after it [N]; the same unless a force or a support acts there
   * @param deflection deflection [m]
   * @param kink change of slope across it
   */
  public record HingeValue(
      double at, double shearBefore, double shearAfter, double deflection, double kink) {}

  /** The hinges from the start on. */
  public List<HingeValue> hinges() {
    return beam.hinges().stream().map(Beam.Hinge::at).sorted().map(this::hinge).toList();
  }

  private HingeValue hinge(double at) {
    double node = pieces.mesh().node(pieces.mesh().nodeAt(at));
    double kink = slopeAt(node) - slopeBefore(node);
    return new HingeValue(at, shearBefore(node), shearAt(node), deflectionAt(node), kink);
  }

  /** The response to the same loads, each times a factor. */
  public BeamResponse times(double factor) {
    double[] scaled = new double[reactions.length];
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] = factor * reactions[i];
    }
    return new BeamResponse(name, beam, pieces, states.times(factor), scaled);
  }

  /** The response to both cases acting together; both must come from one solution. */
  BeamResponse plus(BeamResponse other) {
    double[] sum = new double[reactions.length];
    for (int i = 0; i < sum.length; i++) {
      sum[i] = reactions[i] + other.reactions[i];
    }
    return new BeamResponse(name, beam, pieces, states.plus(other.states), sum);
  }

  BeamResponse named(String newName) {
    return new BeamResponse(newName, beam, pieces, states, reactions);
  }

  boolean finite() {
    return states.finite();
  }

  private Extremes offLine(double from, double to, double intercept, double slope) {
    Extremes.Search search = new Extremes.Search();
    walk(
        from,
        to,
        (piece, start, low, high) -> {
          for (double s : piece.slopeRoots(slope, low, high)) {
            double line = intercept + slope * (start + s);
            search.offer(start + s, piece.deflection(s) - line);
          }
        });
    return search.found();
  }

  @FunctionalInterface
  private interface Visitor {
    void visit(Piece piece, double start, double low, double high);
  }

  private void walk(double from, double to, Visitor visitor) {
    requireOnBeam(from);
    requireOnBeam(to);
    if (from > to) {
      throw new IllegalArgumentException(from + " m lies after " + to + " m");
    }
    int last = pieceBefore(to);
    for (int i = Math.min(pieces.pieceAt(from), last); i <= last; i++) {
      double start = pieces.start(i);
      double low = Math.max(from - start, 0);
      double high = Math.min(to - start, pieces.length(i));
      visitor.visit(states.piece(pieces, i), start, Math.min(low, high), high);
    }
  }

  private Piece after(double place) {
    requireOnBeam(place);
    return states.piece(pieces, pieces.pieceAt(place));
  }

  private double offset(double place) {
    return place - pieces.start(pieces.pieceAt(place));
  }

  private int pieceBefore(double place) {
    requireOnBeam(place);
    int piece = pieces.pieceAt(place);
    return piece > 0 && pieces.start(piece) == place ? piece - 1 : piece;
  }

  private void requireOnBeam(double place) {
    if (!(place >= beam.start() && place <= beam.end())) {
      throw new IllegalArgumentException(
          place + " m is not on the beam from " + beam.start() + " to " + beam.end() + " m");
    }
  }
}
