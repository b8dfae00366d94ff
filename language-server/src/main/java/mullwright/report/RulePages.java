package mullwright.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.check.About;
import mullwright.check.Rule;
import mullwright.check.RulePage;
import mullwright.check.Rules;

/** The page of every rule: what it says, why, how it is decided, an example and its mend. */
public final class RulePages {
  private static final int OFFERED = 3;

  private final Rules rules;

  /** The pages of those rules. */
  public RulePages(Rules rules) {
    this.rules = rules;
  }

  /** A rule's page for a terminal; empty if no rule has or had that name. */
  public Optional<String> page(String name, int width, Paint paint) {
    return rules.named(name).map(rule -> page(rule, name, width, paint));
  }

  private static String page(Rule rule, String asked, int width, Paint paint) {
    About about = rule.about();
    StringBuilder out = new StringBuilder();
    out.append(paint.bold(rule.name()))
        .append("  ")
        .append(paint.severity(about.severity(), words(about.severity())))
        .append("  ")
        .append(words(about.group()))
        .append(about.safety() ? "  guards people" : "")
        .append('\n');
    if (!rule.name().equals(asked)) {
      out.append("formerly ").append(asked).append('\n');
    }
    out.append('\n').append(new MarkdownTerminal(width, paint).render(body(markdown(rule))));
    return out.toString();
  }

  // the first heading is the rule's name, which is told already
  private static String body(String page) {
    return page.startsWith("# ") ? page.substring((page + "\n").indexOf('\n')) : page;
  }

  // with its walls in their places
  private static String markdown(Rule rule) {
    return RulePage.of(rule.name()).withFixtures();
  }

  /** All rules by group: name, severity, and the first sentence of the page. */
  public String list(int width, Paint paint) {
    int names = rules.all().stream().mapToInt(rule -> rule.name().length()).max().orElse(0);
    StringBuilder out = new StringBuilder();
    rules.all().stream()
        .map(rule -> rule.about().group())
        .distinct()
        .sorted()
        .forEach(
            group -> {
              out.append(out.length() == 0 ? "" : "\n").append(paint.bold(words(group)));
              out.append('\n');
              rules.all().stream()
                  .filter(rule -> rule.about().group() == group)
                  .forEach(rule -> line(rule, names, width, paint, out));
            });
    int count = rules.all().size();
    out.append('\n').append(count == 1 ? "1 rule" : count + " rules");
    out.append("; “mullwright explain RULE” tells all of one.\n");
    return out.toString();
  }

  private static void line(Rule rule, int names, int width, Paint paint, StringBuilder out) {
    String severity = words(rule.about().severity());
    String head = "  " + TextWidth.padded(rule.name(), names, false) + "  ";
    int indent = head.length() + "information  ".length();
    List<String> lines = TextWidth.wrap(summary(rule), Math.max(20, width - indent));
    StringBuilder text = new StringBuilder();
    text.append(head)
        .append(paint.severity(rule.about().severity(), severity))
        .append(TextWidth.spaces(indent - head.length() - severity.length()))
        .append(String.join("\n" + TextWidth.spaces(indent), lines));
    out.append(text.toString().stripTrailing()).append('\n');
  }

  /** The first sentence of the page that is no heading. */
  private static String summary(Rule rule) {
    String text = RulePage.of(rule.name()).summary();
    String plain = MarkdownTerminal.plain(text);
    int stop = plain.indexOf(". ");
    return stop < 0 ? plain : plain.substring(0, stop + 1);
  }

  /** The names nearest to one that is none, nearest first. */
  public List<String> nearest(String name) {
    return rules.all().stream()
        .map(Rule::name)
        .filter(known -> distance(name, known) <= Math.max(2, known.length() / 3))
        .sorted(
            Comparator.comparingInt((String known) -> distance(name, known))
                .thenComparing(Comparator.naturalOrder()))
        .limit(OFFERED)
        .toList();
  }

  /** How many letters must be put in, taken out or changed. */
  private static int distance(String one, String other) {
    int[] last = new int[other.length() + 1];
    for (int j = 0; j < last.length; j++) {
      last[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int[] now = new int[last.length];
      now[0] = i;
      for (int j = 1; j < last.length; j++) {
        int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        now[j] = Math.min(Math.min(now[j - 1], last[j]) + 1, last[j - 1] + change);
      }
      last = now;
    }
    return last[other.length()];
  }

  private static String words(Enum<?> name) {
    return name.name().toLowerCase(Locale.ROOT);
  }
}
