package mullwright.server.completion;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.model.PartKind;
import mullwright.model.PartSchema;
import mullwright.model.Role;
import mullwright.quantity.Kind;
import mullwright.quantity.Unit;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import org.eclipse.lsp4j.CompletionItemKind;

/** What the line of a property may go on with, by its patterns and what of it is written. */
final class PropertyOffers {
  /** What {@code wind} names most often; any other word is a zone too. */
  static final List<String> ZONES = List.of("field", "edge");

  /** What {@code wind exposure} takes. */
  private static final List<String> WIND_EXPOSURES = List.of("B", "C", "D");

  /** What most parts are made of; any other metal may be named. */
  private static final List<String> METALS = List.of("aluminium", "steel", "stainless");

  /** Sorts of what parts metals, or is put on them. */
  private static final List<String> KINDS =
      List.of("paint", "pad", "tape", "coating", "washer", "plating");

  private final LineContext line;
  private final Names names;
  private final Set<Offer> offers = new LinkedHashSet<>();

  private PropertyOffers(LineContext line, Names names) {
    this.line = line;
    this.names = names;
  }

  /** Best first. */
  static Set<Offer> of(PartSchema.Property property, LineContext line, Names names) {
    PropertyOffers all = new PropertyOffers(line, names);
    List<List<PhraseSteps.Item>> phrases = all.phrases();
    if (phrases.isEmpty()) {
      all.offers.addAll(names.lets());
      return all.offers;
    }
    List<PhraseSteps.Item> written = phrases.get(phrases.size() - 1);
    List<List<PhraseSteps.Item>> before = phrases.subList(0, phrases.size() - 1);
    for (String pattern : begunBy(written, patterns(property, before))) {
      for (PhraseSteps.Step step : PhraseSteps.next(pattern, written)) {
        all.step(step, before);
      }
    }
    return all.offers;
  }

  /** After a phrase of wind pressures come others, after data of the site more of these. */
  private static List<String> patterns(
      PartSchema.Property property, List<List<PhraseSteps.Item>> before) {
    List<String> patterns = property.patterns();
    if (!property.word().equals("wind") || before.isEmpty()) {
      return patterns;
    }
    List<PhraseSteps.Item> first = before.get(0);
    for (int i = 0; i < PartSchema.WIND_PRESSURES; i++) {
      if (PhraseSteps.fits(patterns.get(i), first)) {
        return i == 0 ? List.of() : patterns.subList(i, i + 1);
      }
    }
    return patterns.subList(PartSchema.WIND_PRESSURES, patterns.size());
  }

  /** Where the first word is one that a pattern begins with, it is no name of the writer's. */
  private static List<String> begunBy(List<PhraseSteps.Item> written, List<String> patterns) {
    if (written.isEmpty()) {
      return patterns;
    }
    String first = written.get(0).text();
    List<String> begun =
        patterns.stream()
            .filter(pattern -> List.of(pattern.split(" ")[0].split("\\|")).contains(first))
            .toList();
    return begun.isEmpty() ? patterns : begun;
  }

  /**
   * What is written, parted at the commas; empty where a value is being reckoned, which only a
   * value can go on with.
   */
  private List<List<PhraseSteps.Item>> phrases() {
    List<List<PhraseSteps.Item>> phrases = new ArrayList<>();
    List<PhraseSteps.Item> items = new ArrayList<>();
    phrases.add(items);
    boolean joins = false;
    for (int i = 0; i < line.afterClause().size(); i++) {
      Token token = line.afterClause().get(i);
      String word = line.words().get(i);
      int last = items.size() - 1;
      boolean operator = token.kind() == TokenKind.OPERATOR || word.equals("(");
      if (token.kind() == TokenKind.COMMA) {
        items = new ArrayList<>();
        phrases.add(items);
      } else if (token.kind() == TokenKind.UNIT && last >= 0) {
        items.set(last, new PhraseSteps.Item(PhraseSteps.Item.Sort.VALUE, word));
      } else if (joins && last >= 0) {
        items.set(last, new PhraseSteps.Item(PhraseSteps.Item.Sort.VALUE, word));
      } else if (!operator && token.kind() != TokenKind.SIGN && !word.equals(")")) {
        items.add(new PhraseSteps.Item(sort(token.kind(), word), word));
      }
      joins = operator;
    }
    return joins ? List.of() : phrases;
  }

  private PhraseSteps.Item.Sort sort(TokenKind kind, String word) {
    return switch (kind) {
      case NUMBER -> PhraseSteps.Item.Sort.BARE;
      case LENGTH, REFERENCE -> PhraseSteps.Item.Sort.VALUE;
      case STRING -> PhraseSteps.Item.Sort.QUOTED;
      case RANGE -> PhraseSteps.Item.Sort.RANGE;
      default ->
          names.lets().stream().anyMatch(let -> let.text().equals(word))
              ? PhraseSteps.Item.Sort.LET
              : PhraseSteps.Item.Sort.WORD;
    };
  }

  private void step(PhraseSteps.Step step, List<List<PhraseSteps.Item>> before) {
    if (step.fixed()) {
      for (String word : step.token().split("\\|")) {
        boolean begun = step.after().isEmpty() && !word.equals("plus") && begun(word, before);
        if (!begun) {
          offers.add(Offer.of(word, CompletionItemKind.Keyword, line.keyword()));
        }
      }
      return;
    }
    for (Kind kind : Kind.values()) {
      if (kind.name().equals(step.token())) {
        if (step.unit()) {
          units(kind);
        } else {
          offers.addAll(names.lets());
        }
        return;
      }
    }
    for (PartKind kind : PartKind.values()) {
      if (kind.name().equals(step.token())) {
        Optional<Role> role = kind == PartKind.PROFILE ? role(line.keyword()) : Optional.empty();
        offers.addAll(role.map(names::profilesFor).orElseGet(() -> names.parts(List.of(kind))));
        return;
      }
    }
    switch (step.token()) {
      case "WORD" -> word(step.after());
      case "LEVEL" -> {
        offers.addAll(names.floors());
        offers.addAll(names.rows());
      }
      case "NAMES" -> offers.addAll(names.floors());
      case "WORDS" -> values(usual(line.keyword(), names), line.keyword());
      default -> {
        // a number, a text, words of the writer's own
      }
    }
  }

  private static boolean begun(String word, List<List<PhraseSteps.Item>> before) {
    return before.stream().anyMatch(items -> !items.isEmpty() && items.get(0).text().equals(word));
  }

  /** Words a property usually takes, where any may stand; none if nobody can guess them. */
  static List<String> usual(String property, Names names) {
    return switch (property) {
      case "metal" -> METALS;
      case "kind" -> KINDS;
      case "alloy" -> List.of("6063-T6", "6063-T5", "6061-T6");
      case "head" -> List.of("hex", "pan", "flat");
      case "finish" -> texts(names.parts(List.of(PartKind.FINISH)));
      case "on-hand" -> texts(names.parts(List.of(PartKind.PROFILE, PartKind.REINFORCEMENT)));
      default -> List.of();
    };
  }

  private static List<String> texts(List<Offer> offers) {
    return offers.stream().map(Offer::text).toList();
  }

  /** Words that any text may choose, and those that most texts do. */
  private void word(String after) {
    switch (line.keyword()) {
      case "wind" -> {
        if (after.equals("exposure")) {
          values(WIND_EXPOSURES, "how open the country round it is");
        } else if (line.words().isEmpty()) {
          values(ZONES, "zone of wind pressure");
        }
      }
      case "metal" -> values(METALS, "metal");
      case "kind" -> values(KINDS, "sort");
      case "finish" -> offers.addAll(names.parts(List.of(PartKind.FINISH)));
      case "on-hand" ->
          offers.addAll(
              names.parts(
                  after.equals("in")
                      ? List.of(PartKind.FINISH)
                      : List.of(
                          PartKind.PROFILE,
                          PartKind.REINFORCEMENT,
                          PartKind.PRESSURE_PLATE,
                          PartKind.FACE_CAP)));
      default -> {
        // nobody can guess it
      }
    }
  }

  private void values(List<String> words, String what) {
    words.forEach(word -> offers.add(Offer.of(word, CompletionItemKind.Value, what)));
  }

  private static Optional<Role> role(String word) {
    for (Role role : Role.values()) {
      if (role.spelling().equals(word)) {
        return Optional.of(role);
      }
    }
    return Optional.empty();
  }

  private void units(Kind kind) {
    for (Unit unit : Unit.of(kind)) {
      offers.add(unit(unit, kind));
    }
  }

  /** A unit, spelled as it is typed: {@code F} for {@code °F}. */
  static Offer unit(Unit unit, Kind kind) {
    String spelling = unit.symbol().startsWith("°") ? unit.symbol().substring(1) : unit.symbol();
    return Offer.of(
        spelling,
        CompletionItemKind.Unit,
        kind.words(),
        new Topic("unit", kind.name(), unit.symbol()));
  }
}
