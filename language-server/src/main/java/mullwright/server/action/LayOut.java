package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.format.Formatter;
import mullwright.format.TextEdit;
import mullwright.server.Document;
import mullwright.server.Edits;

/** Lays out the text of a file; for editors that do such things whenever a file is saved. */
@AutoService(ActionSource.class)
public final class LayOut implements ActionSource {
  /** Below the protocol's kind for what concerns a whole file. */
  static final String KIND = "source.format";

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public List<Action> offers(Selected selected) {
    Document document = selected.document();
    List<TextEdit> edits = Formatter.edits(document.file());
    return edits.isEmpty()
        ? List.of()
        : List.of(
            Action.of(
                "Lay out the text",
                () -> {
                  Edits all = new Edits(document.view());
                  edits.forEach(
                      edit ->
                          all.replace(
                              document, document.range(edit.start(), edit.end()), edit.text()));
                  return all;
                }));
  }
}
