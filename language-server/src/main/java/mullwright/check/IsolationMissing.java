package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.metal.GalvanicSeries;
import mullwright.analysis.metal.MetalContact;
import mullwright.analysis.wall.PartContact;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.Given;
import mullwright.model.Members;
import mullwright.model.Origin;
import mullwright.syntax.ClauseWord;

/**
 * Two metals that touch and would corrode, with nothing between: bare steel on aluminium, or metals
 * too far apart in the galvanic series for the exposure.
 *
 * <p>The baser metal is eaten at the anchor, out of sight. Aluminum Design Manual, section M.7;
 * anodic-index practice.
 */
@AutoService(Rule.class)
public final class IsolationMissing implements AnchorRule, WallRule {
  @Override
  public About about() {
    return About.of(Group.ISOLATION, Severity.ERROR);
  }

  @Override
  public void check(PlacedAnchor it, WallFacts facts, Findings found) {
    for (PartContact contact : facts.analysis().contacts().of(it)) {
      if (doubtful(contact) && facts.readWhole()) {
        tell(contact, it.use().origin(), it.name(), facts, found);
      }
    }
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    for (Members.Reinforce reinforce : facts.wall().members().reinforcements()) {
      pieceOf(reinforce, facts)
          .ifPresent(
              piece ->
                  facts
                      .analysis()
                      .contacts()
                      .of(reinforce, piece)
                      .filter(contact -> doubtful(contact) && facts.readWhole())
                      .ifPresent(
                          contact ->
                              tell(
                                  contact,
                                  reinforce.origin(),
                                  "reinforcement of " + piece.name(),
                                  facts,
                                  found)));
    }
  }

  private static Optional<VerticalPiece> pieceOf(Members.Reinforce reinforce, WallFacts facts) {
    return facts.layout().verticals().stream()
        .filter(piece -> piece.line() == reinforce.line())
        .filter(
            piece ->
                reinforce.from().map(f -> f.elevation().isShorterThan(piece.top())).orElse(true))
        .findFirst();
  }

  // a bolt passes through what isolates, so only a metal that no isolation cures is told of it
  private static boolean wrong(PartContact contact) {
    return contact.is(MetalContact.State.WRONG_METAL)
        || (!contact.fastener() && contact.is(MetalContact.State.MISSING));
  }

  private static boolean doubtful(PartContact contact) {
    return wrong(contact) || (contact.result().isEmpty() && !contact.isolated());
  }

  private static void tell(
      PartContact contact, Origin origin, String piece, WallFacts facts, Findings found) {
    if (wrong(contact)) {
      tellWrong(contact, origin, piece, facts, found);
    } else {
      for (Given<String> metal : List.of(contact.metal(), contact.profileMetal())) {
        if (!metal.value().isBlank() && GalvanicSeries.find(metal.value()).isEmpty()) {
          tellUnknown(metal, contact, origin, piece, found);
          return;
        }
      }
    }
  }

  /** A metal misspelt would pass for one that may touch any other. */
  private static void tellUnknown(
      Given<String> metal, PartContact contact, Origin origin, String piece, Findings found) {
    List<String> known = GalvanicSeries.known();
    Findings.Draft draft =
        found
            .at(origin)
            .piece(piece)
            .what(
                "Whether the "
                    + contact.metal().value()
                    + " of "
                    + contact.part()
                    + " may touch the "
                    + contact.profileMetal().value()
                    + " of "
                    + contact.profile()
                    + " cannot be told: no metal "
                    + Words.quoted(metal.value())
                    + " is known.")
            .mend(Words.didYouMean(metal.value(), known, "metal"))
            .related(metal.origin(), "its metal");
    for (String candidate : Words.near(metal.value(), known)) {
      draft.fix(Fixes.replace(metal.origin(), candidate));
    }
  }

  private static void tellWrong(
      PartContact contact, Origin origin, String piece, WallFacts facts, Findings found) {
    MetalContact.Result result = contact.result().orElseThrow();
    boolean otherMetal = result.state() == MetalContact.State.WRONG_METAL;
    Findings.Draft draft =
        found
            .at(origin)
            .piece(piece)
            .what(
                "The "
                    + contact.metal().value()
                    + " of "
                    + contact.part()
                    + " touches the "
                    + contact.profileMetal().value()
                    + " of "
                    + contact.profile()
                    + (otherMetal ? ": " : " with nothing between: ")
                    + result.rule().words()
                    + "; source: "
                    + result.rule().source()
                    + ".")
            .mend(
                otherMetal
                    ? "Take another metal: galvanized, or 300-series stainless steel."
                    : "Put an isolation between: isolated by a part of the catalog.")
            .related(contact.metal().origin(), "its metal");
    contact.difference().ifPresent(draft::measured);
    contact.threshold().ifPresent(draft::limit);
    if (!otherMetal) {
      StatementEdits edits = new StatementEdits(facts.text());
      for (String isolation : new AnchorEdits(facts).isolations()) {
        String clause = ClauseWord.ISOLATED_BY.spelling() + " " + Words.asName(isolation);
        edits
            .addClause(origin, clause)
            .map(edit -> new Fix("Isolate by " + isolation, List.of(edit)))
            .ifPresent(draft::fix);
      }
    }
  }
}
