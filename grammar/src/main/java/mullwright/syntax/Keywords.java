package mullwright.syntax;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import mullwright.syntax.antlr.WallParser;
import org.antlr.v4.runtime.Vocabulary;

/** Which word is which keyword, by block, and which token stands for it. */
final class Keywords {
  /** First words of the few properties that stand among statements. */
  private static final Map<BlockKind, Set<String>> PROPERTIES =
      Map.of(BlockKind.WALL, Set.of("system", "finish"), BlockKind.PROJECT, Set.of("revision"));

  static final Set<String> PART_KINDS =
      Set.of(
          "system",
          "profile",
          "reinforcement",
          "sleeve",
          "shear-block",
          "clip",
          "anchor",
          "spread-plate",
          "glass",
          "gasket",
          "setting-block",
          "pressure-plate",
          "face-cap",
          "zone-dam",
          "fastener",
          "sealant",
          "metal",
          "isolation",
          "finish",
          "insulation");

  static final Set<String> DIRECTIONS =
      Set.of("in", "out", "up", "down", "left", "right", "behind", "before");

  private static final Map<BlockKind, Map<String, StatementKind>> STATEMENTS = statements();
  private static final Map<String, ClauseWord> CLAUSES = clauses();
  private static final Map<String, Integer> TYPES = types();
  private static final Map<Integer, ClauseWord> CLAUSES_BY_TYPE = clausesByType();

  private Keywords() {}

  /** What a first word says in that block; {@link StatementKind#UNKNOWN} if nothing. */
  static StatementKind statement(BlockKind block, String word) {
    StatementKind kind = STATEMENTS.get(block).get(word);
    if (kind != null) {
      return kind;
    }
    return switch (block) {
      case CRITERIA, CATALOG_ITEM, FABRICATION -> StatementKind.PROPERTY;
      case CATALOG -> StatementKind.CATALOG_PART;
      default -> StatementKind.UNKNOWN;
    };
  }

  /** True if the block's own closed set of statement words has it. */
  static boolean isStatementWord(BlockKind block, String word) {
    return STATEMENTS.get(block).containsKey(word);
  }

  /** True if any word may open a line of that block. */
  static boolean isOpen(BlockKind block) {
    return block == BlockKind.CRITERIA
        || block == BlockKind.CATALOG
        || block == BlockKind.CATALOG_ITEM
        || block == BlockKind.FABRICATION;
  }

  /** True if the word opens a block of statements in that block. */
  static boolean opensBlock(BlockKind block, String word) {
    return block == BlockKind.CATALOG
        ? PART_KINDS.contains(word)
        : isStatementWord(block, word) && statement(block, word).opens().isPresent();
  }

  /** True for a word of the block's own, in a catalog also the kinds of part. */
  static boolean belongsIn(BlockKind block, String word) {
    return isStatementWord(block, word) || block == BlockKind.CATALOG && PART_KINDS.contains(word);
  }

  /** The block that a word of the file itself opens, or null. */
  static BlockKind topLevelBlock(String word) {
    StatementKind kind = STATEMENTS.get(BlockKind.FILE).get(word);
    return kind == null ? null : kind.opens().orElse(null);
  }

  /** The closed set of statement words of the block, in alphabetical order. */
  static List<String> words(BlockKind block) {
    return List.copyOf(STATEMENTS.get(block).keySet());
  }

  /** The block's statement words, nearest to the given word first. */
  static List<String> nearest(BlockKind block, String word) {
    List<String> words = new ArrayList<>(words(block));
    words.sort(Comparator.comparingInt(known -> Spelling.distance(known, word)));
    return Collections.unmodifiableList(words);
  }

  /**
   * The block an unknown word before a brace was evidently meant to open, so that what stands in it
   * is not lost: the block of that very word elsewhere, or of a word two letters off; else null.
   */
  static BlockKind meantBlock(BlockKind block, String word) {
    for (StatementKind kind : StatementKind.values()) {
      if (kind.opens().isPresent() && kind.spelling().equals(word)) {
        return kind.opens().get();
      }
    }
    for (String known : nearest(block, word)) {
      if (opensBlock(block, known) && Spelling.distance(known, word) <= 2) {
        return statement(block, known).opens().orElse(null);
      }
    }
    return null;
  }

  /** True for a word that tells which way. */
  static boolean isDirection(String word) {
    return DIRECTIONS.contains(word);
  }

  /** The clause a word opens, or null. */
  static ClauseWord clause(String word) {
    return CLAUSES.get(word);
  }

  /** The token type of a statement word. */
  static int type(StatementKind kind) {
    return TYPES.get(kind.name());
  }

  /** The token type of a clause word. */
  static int type(ClauseWord word) {
    return TYPES.get(word == ClauseWord.SKIP ? "SKIP_WORD" : word.name());
  }

  /** The clause a token type stands for, or null. */
  static ClauseWord clauseOf(int type) {
    return CLAUSES_BY_TYPE.get(type);
  }

  private static Map<BlockKind, Map<String, StatementKind>> statements() {
    Map<BlockKind, Map<String, StatementKind>> all = new EnumMap<>(BlockKind.class);
    for (BlockKind block : BlockKind.values()) {
      Map<String, StatementKind> words = new TreeMap<>();
      for (StatementKind kind : StatementKind.values()) {
        if (kind.standsIn().contains(block) && !kind.spelling().isEmpty()) {
          words.put(kind.spelling(), kind);
        }
      }
      for (String word : PROPERTIES.getOrDefault(block, Set.of())) {
        words.put(word, StatementKind.PROPERTY);
      }
      all.put(block, words);
    }
    return all;
  }

  private static Map<String, ClauseWord> clauses() {
    Map<String, ClauseWord> words = new HashMap<>();
    for (ClauseWord word : ClauseWord.values()) {
      if (word != ClauseWord.LOADS) {
        words.put(word.spelling().split(" ")[0], word);
      }
    }
    return words;
  }

  private static Map<Integer, ClauseWord> clausesByType() {
    Map<Integer, ClauseWord> words = new HashMap<>();
    for (ClauseWord word : ClauseWord.values()) {
      words.put(type(word), word);
    }
    return words;
  }

  private static Map<String, Integer> types() {
    Map<String, Integer> types = new HashMap<>();
    Vocabulary vocabulary = WallParser.VOCABULARY;
    for (int type = 1; type <= vocabulary.getMaxTokenType(); type++) {
      types.put(vocabulary.getSymbolicName(type), type);
    }
    return types;
  }
}
