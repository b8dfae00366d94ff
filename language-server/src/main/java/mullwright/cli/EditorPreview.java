package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.preview.Opener;
import mullwright.preview.Preview;
import mullwright.preview.Scene;
import mullwright.preview.SceneFile;
import mullwright.server.Document;
import mullwright.server.LiveView;
import mullwright.workspace.Cancel;
import mullwright.workspace.FilePlace;

/** Shows on a page what an editor has open: ties the server's live view to the preview. */
@AutoService(LiveView.class)
public final class EditorPreview implements LiveView {
  private Preview preview;

  @Override
  public String begin(Places places) throws IOException {
    preview = Preview.start(0, new EditorOpener(places), new ReportTables());
    return preview.address();
  }

  @Override
  public void edited(List<Document> open) {
    preview.edited(scene(open));
  }

  @Override
  public void checked(List<Document> open) {
    Scene laidOut = scene(open);
    preview.checked(
        new Scene(laidOut.files().stream().map(file -> file.withFindings(Cancel.NEVER)).toList()));
  }

  private static Scene scene(List<Document> open) {
    List<SceneFile> files = new ArrayList<>();
    for (Document document : open) {
      SceneFile.laidOut(
              document.address(),
              document.path(),
              document.path(),
              document.snapshot(),
              disk(document.address()))
          .ifPresent(files::add);
    }
    return new Scene(files);
  }

  private static Optional<Path> disk(String address) {
    try {
      return Optional.of(Path.of(new URI(address)));
    } catch (URISyntaxException | IllegalArgumentException | FileSystemNotFoundException none) {
      // such as a buffer nobody saved yet
      return Optional.empty();
    }
  }

  @Override
  public void cursor(Document document, int offset) {
    preview.cursor(document.address(), document.path(), offset);
  }

  @Override
  public void end() {
    preview.close();
  }

  /** Clicks lead to the editor. */
  private record EditorOpener(Places places) implements Opener {
    @Override
    public boolean able() {
      return places.canShow();
    }

    @Override
    public void open(SceneFile beside, FilePlace place) {
      places.show(beside.key(), place.path(), place.start(), place.end());
    }
  }
}
