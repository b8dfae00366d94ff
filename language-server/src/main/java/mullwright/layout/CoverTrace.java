package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import mullwright.derivation.Derivation;
import mullwright.quantity.Length;

/** Tells how the length of a pressure plate or face cap came about. */
final class CoverTrace {
  private final LengthTrace lengths;
  private final Frame frame;
  private final Trace trace;
  private final EndTrace ends;
  private final List<CoverCutter.Cover> covers;

  CoverTrace(LengthTrace lengths, Frame frame, Trace trace, EndTrace ends) {
    this.lengths = lengths;
    this.frame = frame;
    this.trace = trace;
    this.ends = ends;
    this.covers = CoverCutter.covers(frame);
  }

  private CoverCutter.Cover sheet(CoverPiece piece) {
    return covers.stream().filter(cover -> cover.what() == piece.what()).findFirst().orElseThrow();
  }

  Derivation onVertical(CoverPiece cover, VerticalPiece piece) {
    return Derivation.computed(
        "cut length",
        cover.length(),
        "upper end − lower end",
        Trace.PRACTICE,
        cover.end().equals(piece.top())
            ? lengths.upperEnd(piece)
            : end("upper end", cover, piece.line(), true),
        cover.start().equals(piece.bottom())
            ? lengths.lowerEnd(piece)
            : end("lower end", cover, piece.line(), false));
  }

  private Derivation end(String name, CoverPiece cover, int line, boolean upper) {
    Length y = upper ? cover.end() : cover.start();
    for (Side side : Side.values()) {
      int bay = frame.lines.bay(line, side);
      if (bay < 0) {
        continue;
      }
      for (Bar bar : frame.bars.ofBay(bay)) {
        if (atStockJoint(bar, cover, line, upper)) {
          return stockJoint(name, bar, cover, line, upper);
        }
        for (boolean lower : new boolean[] {true, false}) {
          RunEnd edge = RunEnd.at(bar, frame.lines.x(line), lower);
          if (edge.known() && edge.height().equals(y)) {
            return trace.edge(name, bar, edge.x(), lower);
          }
        }
      }
      for (Span span : frame.openings.of(bay)) {
        if (span.bottom().equals(y) || span.top().equals(y)) {
          return trace.place(
              name, span.top().equals(y) ? span.opening().top() : span.opening().bottom());
        }
      }
    }
    throw new IllegalArgumentException("not of this layout: " + cover.name());
  }

  private boolean atStockJoint(Bar bar, CoverPiece cover, int line, boolean upper) {
    Length half = sheet(cover).joint().value().half();
    Length joint = upper ? cover.end().plus(half) : cover.start().minus(half);
    return bar.yAt(frame.lines.x(line)).equals(joint);
  }

  private Derivation stockJoint(String name, Bar bar, CoverPiece cover, int line, boolean upper) {
    Derivation row = trace.row(bar, frame.lines.x(line));
    return Derivation.computed(
        name,
        upper ? cover.end() : cover.start(),
        row.name() + (upper ? " − " : " + ") + "½ stock joint",
        Trace.PRACTICE,
        row,
        Trace.given("stock joint", sheet(cover).joint()));
  }

  Derivation onHorizontal(CoverPiece cover, HorizontalPiece piece) {
    CoverCutter.Cover sheet = sheet(cover);
    String words = cover.what() == CoverPiece.What.PRESSURE_PLATE ? "plate width" : "cap face";
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(trace.spacing(piece.leftLine(), piece.rightLine()));
    String formula = "line spacing";
    boolean legLeft = ends.hasLeg(piece, Side.RIGHT);
    boolean legRight = ends.hasLeg(piece, Side.LEFT);
    if (!legLeft && !legRight) {
      formula += " − " + words;
    } else {
      formula += ends.cover(piece, Side.RIGHT, words, inputs);
      formula += ends.cover(piece, Side.LEFT, words, inputs);
    }
    if (!legLeft || !legRight) {
      inputs.add(Trace.given(words, sheet.width()));
    }
    inputs.add(Trace.given("end gap", sheet.end()));
    Bar bar = frame.bars.in(piece.firstBay(), piece.row());
    return LengthTrace.along(
        bar,
        cover.end().minus(cover.start()),
        sheet.width(),
        cover.length(),
        formula + " − 2 × end gap",
        inputs);
  }
}
