package mullwright.syntax;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import mullwright.syntax.antlr.WallLexer;

/** All fixed words of the language by what they are, from the token table of the grammar. */
final class LanguageWords {
  /** Groups of words that an editor shows alike. */
  enum Group {
    STATEMENTS,
    PARTS,
    CLAUSES,
    JOINERS,
    REMARKS,
    UNITS
  }

  private final Map<Group, Set<String>> words = new EnumMap<>(Group.class);

  LanguageWords() {
    for (Group group : Group.values()) {
      words.put(group, new TreeSet<>());
    }
    for (int type = 1; type <= WallLexer.VOCABULARY.getMaxTokenType(); type++) {
      String name = WallLexer.VOCABULARY.getSymbolicName(type);
      switch (TokenKind.of(type)) {
        case KEYWORD -> add(Group.STATEMENTS, StatementKind.valueOf(name).spelling());
        case CLAUSE -> add(Group.CLAUSES, clause(type, name));
        case JOINER, BEARING -> add(Group.JOINERS, joiner(type, name));
        case DIRECTION -> add(Group.JOINERS, type == WallLexer.GLASS ? "glass" : "");
        case REMARK -> add(Group.REMARKS, name.toLowerCase(Locale.ROOT));
        default -> {
          // no fixed word: names, values, marks, what cannot be read
        }
      }
    }
    words.get(Group.JOINERS).addAll(Keywords.DIRECTIONS);
    words.get(Group.PARTS).addAll(Keywords.PART_KINDS);
    words.get(Group.UNITS).addAll(UnitWords.all());
  }

  /** The words of a group. */
  Set<String> of(Group group) {
    return words.get(group);
  }

  /** The words that open a property among statements: {@code system} in a wall. */
  static Set<String> propertiesAmongStatements() {
    Set<String> properties = new TreeSet<>();
    for (BlockKind block : BlockKind.values()) {
      for (String word : Keywords.words(block)) {
        if (Keywords.statement(block, word) == StatementKind.PROPERTY) {
          properties.add(word);
        }
      }
    }
    return properties;
  }

  private static String clause(int type, String name) {
    ClauseWord clause = Keywords.clauseOf(type);
    return clause == null ? name.toLowerCase(Locale.ROOT) : clause.spelling();
  }

  private static String joiner(int type, String name) {
    return switch (type) {
      case WallLexer.FLOOR_WORD -> "floor";
      case WallLexer.TIMES -> "x";
      // before the arm of a load stands the clause word `at`
      case WallLexer.ARM -> "";
      case WallLexer.RIGHT_OF -> "right";
      case WallLexer.LEFT_OF -> "left";
      default -> name.toLowerCase(Locale.ROOT);
    };
  }

  private void add(Group group, String spelling) {
    for (String word : spelling.split(" ")) {
      if (!word.isEmpty()) {
        words.get(group).add(word);
      }
    }
  }
}
