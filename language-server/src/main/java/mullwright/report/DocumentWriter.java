package mullwright.report;

/** Puts a document down in one form. The same document gives the same bytes everywhere. */
public interface DocumentWriter {
  /** The whole document, ending with a line end. */
  String write(Document document);
}
