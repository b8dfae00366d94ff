package mullwright.check;

/**
 * One check of the catalogue.
 *
 * <p>A rule implements one of the reaches below this interface; its class is found by itself
 * ({@code @AutoService(Rule.class)}). Its name follows from its class: {@code SpliceUnsupported} is
 * {@code splice-unsupported}, explained by the page {@code splice-unsupported.md} and held by the
 * fixtures of that name.
 */
public interface Rule {
  /** Group, severity and former names. */
  About about();

  /** The rule's name, from its class's. */
  default String name() {
    StringBuilder name = new StringBuilder();
    for (char letter : getClass().getSimpleName().toCharArray()) {
      if (Character.isUpperCase(letter) && name.length() > 0) {
        name.append('-');
      }
      name.append(Character.toLowerCase(letter));
    }
    return name.toString();
  }

  /** One sentence: what it finds, from its page. */
  default String summary() {
    return page().summary();
  }

  /** The page that explains it. */
  default RulePage page() {
    return RulePage.of(name());
  }
}
