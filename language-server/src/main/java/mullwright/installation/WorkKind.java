package mullwright.installation;

/** The kinds of step, in the order a crew would take them where nothing else decides. */
public enum WorkKind {
  ANCHOR("set anchor", Trade.ANCHORS),
  ISOLATION("isolate", Trade.ANCHORS),
  CLIP("set clip", Trade.ANCHORS),
  LADDER("assemble, square and hang ladder", Trade.FRAME),
  VERTICAL("set vertical", Trade.FRAME),
  SLEEVE("put sleeve in", Trade.FRAME),
  HORIZONTAL("set horizontal", Trade.FRAME),
  SQUARE("square and lock bay", Trade.FRAME),
  ZONE("dam, seal and gasket zone", Trade.GLASS),
  BLOCKS("put setting blocks in", Trade.GLASS),
  GLASS("set lite", Trade.GLASS),
  PLATE("fasten plate", Trade.PLATES),
  CAP("put cap on", Trade.CAPS),
  SEAL("seal perimeter", Trade.SEALANT);

  private final String words;
  private final Trade trade;

  WorkKind(String words, Trade trade) {
    this.words = words;
    this.trade = trade;
  }

  /** As a crew is told. */
  public String words() {
    return words;
  }

  /** What a crew does in one go along the wall before it takes up other tools. */
  public Trade trade() {
    return trade;
  }

  /** Kinds of work that one crew does in one go, in their order. */
  public enum Trade {
    ANCHORS,
    FRAME,
    GLASS,
    PLATES,
    CAPS,
    SEALANT
  }
}
