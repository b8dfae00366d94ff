package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.strength.AluminumAllowable;
import mullwright.analysis.strength.BendingStress;
import mullwright.analysis.strength.LateralTorsionalBuckling;
import mullwright.analysis.strength.LoadSharing;
import mullwright.analysis.strength.SteelAllowable;
import mullwright.derivation.Derivation;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;

/**
 * Bending at one place of a member, ready to be held against its limits.
 *
 * @param profile what bends
 * @param peak moment about the strong axis on member and reinforcement together [N·m]; positive
 *     where the outer flange is compressed
 * @param bars reinforcement along this place
 * @param weak moment about the weak axis [N·m], 0 or more
 * @param unbraced unbraced length of the compressed flange [m]
 * @param braces between what it is taken
 */
record Bending(
    Part.Profile profile,
    SolvedBeam.Peak peak,
    List<RunBar> bars,
    double weak,
    double unbraced,
    String braces) {
  private static final double SAFE_SHAPE = 1;

  /** Everything it can be held against; what the catalog does not state is left out. */
  List<BendingCheck> checks() {
    List<BendingCheck> checks = new ArrayList<>();
    Optional<AluminumAllowable.Result> allowable = ProfileMetal.allowable(profile);
    modulus().ifPresent(s -> allowable.ifPresent(limit -> checks.add(fibre(s, limit))));
    modulus()
        .flatMap(any -> buckling())
        .ifPresent(buckling -> checks.add(sideways(buckling, allowable)));
    for (RunBar bar : bars) {
      if (bar.part().sx().isPresent() && bar.part().yield().isPresent()) {
        checks.add(inBar(bar));
      }
    }
    return checks;
  }

  /** Share of the moment a bar of that rigidity takes; the member's own for its own. */
  private double share(double rigidity) {
    double all = rigidity();
    for (RunBar bar : bars) {
      all += bar.rigidity();
    }
    return all > 0 ? rigidity / all : 1;
  }

  private double rigidity() {
    return profile.ix().map(ix -> ix.value().toSi()).orElse(0.0)
        * Stiffness.modulus(profile.metal().value());
  }

  private double inMember() {
    return Math.abs(peak.value()) * (bars.isEmpty() ? 1 : share(rigidity()));
  }

  /** The lesser of the moduli at the two fibres. */
  private Optional<Given<Quantity>> modulus() {
    Optional<Given<Quantity>> one = profile.sxOutside();
    Optional<Given<Quantity>> other = profile.sxInside();
    if (one.isEmpty() || other.isEmpty()) {
      return one.or(() -> other);
    }
    return one.get().value().toSi() <= other.get().value().toSi() ? one : other;
  }

  private double weakStress() {
    return profile.sy().map(sy -> weak / sy.value().toSi()).orElse(0.0);
  }

  private BendingCheck fibre(Given<Quantity> s, AluminumAllowable.Result limit) {
    double stress = inMember() / s.value().toSi() + weakStress();
    return new BendingCheck(
        BendingCheck.Limit.FIBRE,
        peak,
        Kind.STRESS,
        stress,
        limit.stress(),
        0,
        peak.value() > 0,
        profile.name(),
        moment -> fibreStress(s, stress, moment),
        () -> ProfileMetal.explain(profile, limit));
  }

  private Derivation fibreStress(Given<Quantity> s, double stress, BendingTrace moment) {
    Derivation modulus = Inputs.quantity("section modulus", s, Kind.SECTION_MODULUS);
    if (weakStress() == 0) {
      return BendingStress.STRESS.explain(
          "bending stress", stress, Kind.STRESS, memberMoment("moment", moment), modulus);
    }
    return Derivation.computed(
        "bending stress",
        stress,
        Kind.STRESS,
        "moment by wind ÷ section modulus + moment by weight ÷ weak section modulus",
        BendingStress.STRESS.source(),
        memberMoment("moment by wind", moment),
        modulus,
        moment.weak("moment by weight", weak),
        Inputs.quantity("weak section modulus", profile.sy().orElseThrow(), Kind.SECTION_MODULUS));
  }

  private Derivation memberMoment(String name, BendingTrace moment) {
    if (bars.isEmpty()) {
      return moment.strong(name, Math.abs(peak.value()));
    }
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(moment.strong("moment on both", Math.abs(peak.value())));
    inputs.add(shareOf("share of the member", rigidity()));
    return Derivation.computed(
        name,
        inMember(),
        Kind.MOMENT,
        "moment on both × share of the member",
        LoadSharing.SHARE.source(),
        inputs.toArray(Derivation[]::new));
  }

  private Derivation shareOf(String name, double rigidity) {
    double all = rigidity();
    for (RunBar bar : bars) {
      all += bar.rigidity();
    }
    return Derivation.computed(
        name,
        rigidity / all,
        Kind.RATIO,
        "its rigidity ÷ sum of all rigidities, modulus × second moment",
        LoadSharing.SHARE.source());
  }

  private Optional<LateralTorsionalBuckling.Result> buckling() {
    Optional<Given<Quantity>> compressed =
        peak.value() > 0 ? profile.sxOutside() : profile.sxInside();
    Optional<Given<Quantity>> s = compressed.or(this::modulus);
    if (profile.iy().isEmpty() || profile.j().isEmpty() || unbraced <= 0) {
      return Optional.empty();
    }
    double elastic = s.orElseThrow().value().toSi();
    double plastic = Math.max(elastic, profile.zx().map(z -> z.value().toSi()).orElse(elastic));
    return ProfileMetal.alloy(profile)
        .flatMap(
            alloy ->
                LateralTorsionalBuckling.solve(
                        new LateralTorsionalBuckling.Input(
                            unbraced,
                            elastic,
                            plastic,
                            profile.iy().get().value().toSi(),
                            profile.j().get().value().toSi(),
                            SAFE_SHAPE,
                            alloy.compressiveYield(),
                            mullwright.analysis.strength.AluminumAlloy.MODULUS))
                    .solved());
  }

  private BendingCheck sideways(
      LateralTorsionalBuckling.Result buckling, Optional<AluminumAllowable.Result> allowable) {
    double along = allowable.map(limit -> weakStress() / limit.stress()).orElse(0.0);
    boolean both = along > 0;
    double demand = both ? inMember() / buckling.allowable() + along : inMember();
    return new BendingCheck(
        BendingCheck.Limit.BUCKLING,
        peak,
        both ? Kind.RATIO : Kind.MOMENT,
        demand,
        both ? 1 : buckling.allowable(),
        unbraced,
        peak.value() > 0,
        profile.name(),
        moment ->
            both
                ? together(buckling, allowable.orElseThrow(), demand, moment)
                : memberMoment("moment", moment),
        () ->
            both
                ? Derivation.computed(
                    "greatest sum", 1.0, Kind.RATIO, "1", ProfileMetal.INTERACTION)
                : allowedMoment(buckling));
  }

  private Derivation together(
      LateralTorsionalBuckling.Result buckling,
      AluminumAllowable.Result limit,
      double sum,
      BendingTrace moment) {
    return Derivation.computed(
        "sum of both shares",
        sum,
        Kind.RATIO,
        "moment by wind ÷ allowable moment + stress by weight ÷ allowable stress",
        ProfileMetal.INTERACTION,
        memberMoment("moment by wind", moment),
        allowedMoment(buckling),
        Derivation.computed(
            "stress by weight",
            weakStress(),
            Kind.STRESS,
            "moment by weight ÷ weak section modulus",
            BendingStress.STRESS.source(),
            moment.weak("moment by weight", weak),
            Inputs.quantity(
                "weak section modulus", profile.sy().orElseThrow(), Kind.SECTION_MODULUS)),
        ProfileMetal.explain(profile, limit));
  }

  private Derivation allowedMoment(LateralTorsionalBuckling.Result buckling) {
    return LateralTorsionalBuckling.ALLOWABLE.explain(
        "allowable moment",
        buckling.allowable(),
        Kind.MOMENT,
        ProfileMetal.bucklingMoment(profile, buckling, unbraced, braces));
  }

  private BendingCheck inBar(RunBar bar) {
    double allowed =
        SteelAllowable.solve(bar.part().yield().orElseThrow().value().toSi())
            .solved()
            .map(SteelAllowable.Result::stress)
            .orElse(Double.MIN_NORMAL);
    Given<Quantity> s = bar.part().sx().orElseThrow();
    double share = share(bar.rigidity());
    double stress = share * Math.abs(peak.value()) / s.value().toSi();
    return new BendingCheck(
        BendingCheck.Limit.REINFORCEMENT,
        peak,
        Kind.STRESS,
        stress,
        allowed,
        0,
        peak.value() > 0,
        bar.part().name(),
        moment ->
            Derivation.computed(
                "bending stress of the reinforcement",
                stress,
                Kind.STRESS,
                "moment on both × share of the reinforcement ÷ section modulus",
                LoadSharing.SHARE.source(),
                moment.strong("moment on both", Math.abs(peak.value())),
                shareOf("share of the reinforcement", bar.rigidity()),
                Inputs.quantity("section modulus", s, Kind.SECTION_MODULUS)),
        () ->
            SteelAllowable.STRESS.explain(
                "allowable stress",
                allowed,
                Kind.STRESS,
                Inputs.quantity("yield strength", bar.part().yield().orElseThrow(), Kind.STRESS)));
  }
}
