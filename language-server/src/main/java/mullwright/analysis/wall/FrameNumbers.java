package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.model.Criteria;
import mullwright.quantity.Kind;

/** The numbers of the frame, piece by piece, for whoever shows them. Nothing here judges. */
public final class FrameNumbers {
  /** Equal pieces differ by rounding; the first of them is shown. */
  private static final double SAME = 1e-9;

  private final WallAnalysis analysis;

  public FrameNumbers(WallAnalysis analysis) {
    this.analysis = analysis;
  }

  /** Those of a piece, most wanted first; none of lites and covers. */
  public List<FrameNumber> of(PieceRef piece) {
    return switch (piece.kind()) {
      case VERTICAL -> vertical(analysis.layout().verticals().get(piece.index()));
      case HORIZONTAL -> horizontal(analysis.layout().horizontals().get(piece.index()));
      case SPLICE -> splice(analysis.layout().splices().get(piece.index()));
      case ANCHOR -> anchor(analysis.layout().anchors().get(piece.index()));
      case CELL, COVER -> List.of();
    };
  }

  /** Of each number the one that uses most of its limit, or is largest, over many pieces. */
  public List<FrameNumber> governing(List<PieceRef> pieces) {
    Map<String, FrameNumber> worst = new LinkedHashMap<>();
    for (PieceRef piece : pieces) {
      for (FrameNumber number : of(piece)) {
        worst.merge(
            number.what(),
            number,
            (one, other) -> other.severity() > one.severity() * (1 + SAME) ? other : one);
      }
    }
    return List.copyOf(worst.values());
  }

  /** Moment, stress, deflection, weight and head joint of a length of vertical. */
  public List<FrameNumber> vertical(VerticalPiece piece) {
    List<FrameNumber> numbers = new ArrayList<>();
    VerticalRun run = analysis.runOf(piece);
    run.standing()
        .ifPresent(
            beam -> {
              double from = RunBuilder.from(analysis.layout(), piece);
              double to = RunBuilder.to(analysis.layout(), piece);
              SolvedBeam.Peak moment = beam.moments(from, to).largest();
              numbers.add(
                  FrameNumber.free(
                      "greatest moment",
                      piece.name(),
                      moment.size(),
                      Kind.MOMENT,
                      moment.response().name(),
                      () -> RunTrace.moment(run, moment, "greatest moment", moment.size())));
              bending(
                  VerticalBending.of(analysis, piece),
                  check -> VerticalBending.trace(run, check),
                  piece.name(),
                  numbers);
              deflection(run, piece, numbers);
            });
    numbers.add(
        FrameNumber.free(
            "weight with what hangs on it",
            piece.name(),
            analysis.weightOf(piece),
            Kind.FORCE,
            "",
            () -> WeightTrace.of(analysis, piece)));
    new PlateScrews(analysis.layout()).vertical(run, piece).ifPresent(numbers::add);
    HeadJoint.of(analysis, piece).ifPresent(joint -> joint.numbers(numbers));
    return numbers;
  }

  private static void bending(
      List<BendingCheck> checks,
      Function<BendingCheck, BendingTrace> trace,
      String piece,
      List<FrameNumber> numbers) {
    for (BendingCheck.Limit limit : BendingCheck.Limit.values()) {
      checks.stream()
          .filter(check -> check.limit() == limit)
          .max(Comparator.comparingDouble(BendingCheck::utilisation))
          .ifPresent(
              check ->
                  numbers.add(
                      FrameNumber.held(
                          words(check),
                          piece,
                          check.demand(),
                          check.capacity(),
                          check.kind(),
                          check.peak().response().name(),
                          () -> check.measured().apply(trace.apply(check)),
                          check.allowed())));
    }
  }

  private static String words(BendingCheck check) {
    return switch (check.limit()) {
      case FIBRE -> "bending stress";
      case REINFORCEMENT -> "stress in the reinforcement";
      case BUCKLING ->
          check.kind() == Kind.RATIO
              ? "wind and weight against buckling sideways"
              : "moment against buckling sideways";
    };
  }

  private void deflection(VerticalRun run, VerticalPiece piece, List<FrameNumber> numbers) {
    Criteria criteria = analysis.layout().wall().criteria();
    FrameNumber worst = null;
    for (SpanDeflection span : analysis.deflections(run)) {
      if (run.pieceAt(span.sag().at()).equals(piece) && !span.shortEnd()) {
        SpanLimit limit = SpanLimit.of(span, criteria);
        FrameNumber here =
            FrameNumber.held(
                "deflection under wind",
                piece.name(),
                span.deflection(),
                limit.limit().limit(),
                Kind.LENGTH,
                span.response().name(),
                () -> RunTrace.deflection(span),
                limit::explain);
        worst = worst == null || here.severity() > worst.severity() ? here : worst;
      }
    }
    Optional.ofNullable(worst).ifPresent(numbers::add);
    worst = null;
    for (EdgeDeflection edge : EdgeDeflection.along(analysis, run)) {
      if (run.pieceAt(edge.sag().at()).equals(piece)) {
        SpanLimit limit = SpanLimit.of(SpanLimit.Of.EDGE, edge.length(), criteria);
        FrameNumber here =
            FrameNumber.held(
                "deflection of an edge of glass",
                piece.name(),
                edge.sag().size(),
                limit.limit().limit(),
                Kind.LENGTH,
                edge.sag().response().name(),
                () -> RunTrace.edge(run, edge),
                limit::explain);
        worst = worst == null || here.severity() > worst.severity() ? here : worst;
      }
    }
    Optional.ofNullable(worst).ifPresent(numbers::add);
  }

  /** Moment, stress, deflection and sag of a horizontal. */
  public List<FrameNumber> horizontal(HorizontalPiece piece) {
    List<FrameNumber> numbers = new ArrayList<>();
    HorizontalSpan span = analysis.spanOf(piece);
    span.wind()
        .ifPresent(
            beam -> {
              SolvedBeam.Peak moment = beam.moments(0, span.length()).largest();
              numbers.add(
                  FrameNumber.free(
                      "greatest moment",
                      piece.name(),
                      moment.size(),
                      Kind.MOMENT,
                      moment.response().name(),
                      () ->
                          HorizontalTrace.moment(span, moment, "greatest moment", moment.size())));
            });
    bending(
        HorizontalBending.of(span),
        check -> HorizontalBending.trace(span, check),
        piece.name(),
        numbers);
    span.wind()
        .ifPresent(
            beam -> {
              SolvedBeam.Peak sag = beam.sag(0, span.length());
              SpanLimit limit =
                  SpanLimit.of(
                      SpanLimit.Of.SPAN, span.length(), analysis.layout().wall().criteria());
              numbers.add(
                  FrameNumber.held(
                      "deflection under wind",
                      piece.name(),
                      sag.size(),
                      limit.limit().limit(),
                      Kind.LENGTH,
                      sag.response().name(),
                      () -> HorizontalTrace.deflection(span, sag),
                      limit::explain));
            });
    WeightSag.of(analysis, span)
        .ifPresent(
            sag ->
                numbers.add(
                    FrameNumber.held(
                        "sag under glass",
                        piece.name(),
                        sag.sag().size(),
                        sag.limit().limit(),
                        Kind.LENGTH,
                        "weight",
                        sag::measured,
                        sag::explain)));
    double[] ends = analysis.weightFrom(piece);
    double end = Math.max(ends[0], ends[ends.length - 1]);
    if (end > 0) {
      numbers.add(
          FrameNumber.free(
              "weight at an end",
              piece.name(),
              end,
              Kind.FORCE,
              "weight",
              () -> WeightTrace.end(analysis, piece, end)));
    }
    new PlateScrews(analysis.layout()).horizontal(span).ifPresent(numbers::add);
    return numbers;
  }

  /** Movement at a splice, and what passes through it. */
  public List<FrameNumber> splice(SpliceJoint joint) {
    List<FrameNumber> numbers = new ArrayList<>();
    JointMovement.of(analysis, joint).ifPresent(movement -> movement.numbers(numbers));
    VerticalRun run = analysis.runOf(analysis.layout().verticals().get(joint.below()));
    run.standing()
        .ifPresent(
            beam -> {
              SolvedBeam.Peak shear = beam.shear(joint.y().toMetres());
              numbers.add(
                  FrameNumber.free(
                      "shear through the sleeve",
                      joint.name(),
                      shear.size(),
                      Kind.FORCE,
                      shear.response().name(),
                      () -> RunTrace.shear(run, shear)));
            });
    VerticalPiece above = analysis.layout().verticals().get(joint.above());
    if (analysis.holdOf(above).landing() instanceof WeightLanding.OnClosedJoint) {
      numbers.add(
          FrameNumber.free(
              "weight through the closed joint",
              joint.name(),
              analysis.weightOf(above),
              Kind.FORCE,
              "weight",
              () -> WeightTrace.of(analysis, above)));
    }
    return numbers;
  }

  /** What an anchor carries, and the slot it needs. */
  public List<FrameNumber> anchor(PlacedAnchor anchor) {
    List<FrameNumber> numbers = new ArrayList<>();
    for (AnchorDemand demand : AnchorDemand.all(analysis, anchor)) {
      numbers.add(
          new FrameNumber(
              "load " + demand.direction(),
              anchor.name(),
              demand.newtons(),
              Kind.FORCE,
              demand.capacity().map(given -> given.value().toSi()),
              demand.loads(),
              demand::explain,
              demand.capacity().map(given -> demand::limit)));
    }
    SlabCouple.of(analysis, anchor).ifPresent(couple -> couple.numbers(anchor, numbers));
    SlotMovement.of(analysis, anchor).ifPresent(slot -> slot.numbers(numbers));
    return numbers;
  }
}
