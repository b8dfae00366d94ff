package mullwright.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import mullwright.syntax.ParsedFile;

/** Texts for tests: reads files of a workspace that exists in memory only. */
final class Walls {
  private final Map<String, ParsedFile> files = new HashMap<>();

  /** A workspace with the invented catalog {@code captured.wall}. */
  static Walls withCatalog() {
    return new Walls().with("captured.wall", resource("captured.wall"));
  }

  Walls with(String path, String text) {
    files.put(path, ParsedFile.parse(text));
    return this;
  }

  Model read(String path) {
    return read(path, new ModelMemory());
  }

  Model read(String path, ModelMemory memory) {
    return ModelReader.read(path, at -> Optional.ofNullable(files.get(at)), memory);
  }

  ParsedFile file(String path) {
    return files.get(path);
  }

  /** The text an origin stands for. */
  String text(Origin origin) {
    String text = files.get(origin.file()).segments().get(origin.segment()).text();
    return text.substring(origin.range().start(), origin.range().end());
  }

  static String resource(String name) {
    try (InputStream in = Walls.class.getResourceAsStream("/model/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
