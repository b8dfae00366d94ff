package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.syntax.Block;
import mullwright.syntax.Comment;
import mullwright.syntax.LineTable;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeKind;
import org.eclipse.lsp4j.FoldingRangeRequestParams;

/**
 * What may be folded: blocks and braces of clauses, runs of comment lines, runs of {@code use}.
 *
 * <p>Answers {@code textDocument/foldingRange} (LSP 3.17) in whole lines, which suits clients with
 * and without {@code textDocument.foldingRange.lineFoldingOnly}.
 */
@AutoService(Feature.class)
public final class FoldingFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/foldingRange",
            FoldingRangeRequestParams.class,
            FoldingRangeRequestParams::getTextDocument,
            (parameters, document, desk) -> folds(document, desk.cancel())));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("foldingRangeProvider", true);
  }

  static List<FoldingRange> folds(Document document, Cancel cancel) {
    Folds folds = new Folds(document.file().lines());
    List<Segment> segments = document.file().segments();
    for (int i = 0; i < segments.size(); i++) {
      cancel.check();
      int start = document.file().segmentStart(i);
      folds.blocks(segments.get(i).statements(), start);
      for (Comment comment : segments.get(i).comments()) {
        folds.comments.add(start + comment.range().start(), start + comment.range().end());
      }
    }
    folds.comments.close();
    folds.uses.close();
    return folds.found;
  }

  private static final class Folds {
    private final LineTable lines;
    private final List<FoldingRange> found = new ArrayList<>();
    private final Run comments = new Run(FoldingRangeKind.Comment);
    private final Run uses = new Run(FoldingRangeKind.Imports);

    Folds(LineTable lines) {
      this.lines = lines;
    }

    void blocks(List<Statement> statements, int start) {
      for (Statement statement : statements) {
        if (statement.kind() == StatementKind.USE) {
          uses.add(start + statement.range().start(), start + statement.range().end());
        }
        if (statement.block().isPresent()) {
          Block block = statement.block().get();
          int last = lines.line(start + block.range().end()) - (block.closed() ? 1 : 0);
          fold(lines.line(start + statement.range().start()), last, FoldingRangeKind.Region);
          blocks(block.statements(), start);
        } else {
          int last = lines.line(start + statement.range().end()) - 1;
          fold(lines.line(start + statement.range().start()), last, FoldingRangeKind.Region);
        }
      }
    }

    private void fold(int first, int last, String kind) {
      if (last > first) {
        FoldingRange fold = new FoldingRange(first, last);
        fold.setKind(kind);
        found.add(fold);
      }
    }

    /** Neighbouring lines of one kind, folded as one. */
    private final class Run {
      private final String kind;
      private int first = -1;
      private int last = -1;

      Run(String kind) {
        this.kind = kind;
      }

      void add(int start, int end) {
        int line = lines.line(start);
        if (first < 0 || line > last + 1) {
          close();
          first = line;
        }
        last = lines.line(Math.max(start, end - 1));
      }

      void close() {
        if (first >= 0) {
          fold(first, last, kind);
        }
        first = -1;
      }
    }
  }
}
