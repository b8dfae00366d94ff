package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import mullwright.analysis.beam.BeamAnswer;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.model.Part;

/** Says what of a member or a splice could not be checked, and which fact is missing. */
public final class NotChecked {
  private static final String OUT_OF_RANGE = "its numbers are out of the method's range";

  private NotChecked() {}

  /** One clause for each; none for what is neither. */
  public static List<String> of(WallAnalysis analysis, PieceRef piece) {
    return switch (piece.kind()) {
      case VERTICAL -> vertical(analysis, analysis.layout().verticals().get(piece.index()));
      case HORIZONTAL -> horizontal(analysis, analysis.layout().horizontals().get(piece.index()));
      case SPLICE -> splice(analysis, analysis.layout().splices().get(piece.index()));
      default -> List.of();
    };
  }

  private static List<String> splice(WallAnalysis analysis, SpliceJoint joint) {
    if (JointMovement.of(analysis, joint).isPresent()) {
      return List.of();
    }
    if (analysis.layout().wall().criteria().temperature().isEmpty()) {
      return List.of("movement at a splice, since the project gives no temperature of the metal");
    }
    List<VerticalPiece> verticals = analysis.layout().verticals();
    List<String> loose =
        Stream.of(verticals.get(joint.below()), verticals.get(joint.above()))
            .filter(piece -> JointMovement.growsFrom(analysis, piece, joint).isEmpty())
            .map(VerticalPiece::name)
            .toList();
    return List.of(
        "movement at a splice, since "
            + String.join(" and ", loose)
            + (loose.size() == 1 ? " has" : " have")
            + " no dead-load anchor to grow from");
  }

  private static List<String> vertical(WallAnalysis analysis, VerticalPiece piece) {
    List<String> found = new ArrayList<>();
    VerticalRun run = analysis.runOf(piece);
    if (run.beam().isEmpty()) {
      found.add(
          run.pieces().stream().allMatch(p -> Unstated.ofWind(p.profile()).isEmpty())
              ? "bending, since no wind bears on it"
              : "bending, since a profile of the run does not state Ix");
      return found;
    }
    if (run.standing().isEmpty()) {
      found.add(
          run.answer().filter(BeamAnswer.Mechanism.class::isInstance).isPresent()
              ? "bending, since too little holds it"
              : "bending, since " + OUT_OF_RANGE);
      return found;
    }
    strength(piece.profile(), found);
    for (RunBar bar : run.bars()) {
      if (bar.part().sx().isEmpty() || bar.part().yield().isEmpty()) {
        found.add("stress of " + bar.part().name() + ", which does not state Sx or yield");
      }
    }
    return found;
  }

  private static List<String> horizontal(WallAnalysis analysis, HorizontalPiece piece) {
    List<String> found = new ArrayList<>();
    HorizontalSpan span = analysis.spanOf(piece);
    Part.Profile profile = piece.profile();
    if (!span.level()) {
      found.add("bending and sag, since it slopes");
      return found;
    }
    if (span.wind().isEmpty()) {
      List<String> lacks = Unstated.ofWind(profile);
      found.add(
          "bending under wind, since "
              + (lacks.isEmpty() ? "no wind bears on it" : lacking(profile, lacks)));
    }
    List<String> stress = Unstated.ofStressByWeight(profile);
    if (span.weight().isEmpty()) {
      List<String> lacks = Unstated.ofWeight(profile);
      found.add(
          "sag under glass, since " + (lacks.isEmpty() ? OUT_OF_RANGE : lacking(profile, lacks)));
    } else if (!stress.isEmpty()) {
      found.add("stress by weight, since " + lacking(profile, stress));
    }
    strength(profile, found);
    return found;
  }

  private static void strength(Part.Profile profile, List<String> found) {
    List<String> stress = Unstated.ofStress(profile);
    List<String> buckling = Unstated.ofBuckling(profile);
    if (!stress.isEmpty()) {
      found.add("stress, since " + lacking(profile, stress));
    } else if (ProfileMetal.allowable(profile).isEmpty()) {
      found.add(
          "stress, since the strengths of "
              + profile.alloy().get().value()
              + " are not tabulated here");
    } else if (!buckling.isEmpty()) {
      found.add("buckling sideways, since " + lacking(profile, buckling));
    }
  }

  private static String lacking(Part.Profile profile, List<String> facts) {
    return profile.name() + " does not state " + String.join(" and ", facts);
  }
}
