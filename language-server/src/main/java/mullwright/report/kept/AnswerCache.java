package mullwright.report.kept;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.report.Fingerprint;
import mullwright.workspace.FileStamp;
import mullwright.workspace.Packing;

/**
 * Keeps whole answers as they were printed, for the questions last asked: the same question about
 * the same texts is answered without reading one of them.
 */
public final class AnswerCache {
  private static final String FORM = "mullwright answer 1";
  private static final String PREFIX = "answer-";

  /** Questions whose answers are kept. */
  private static final int QUESTIONS = 8;

  private static final int DIGITS = 16;

  private final Path folder;

  /** Those in that folder. */
  public AnswerCache(Path folder) {
    this.folder = folder;
  }

  /** An answer as it was printed. */
  public static final class Answer {
    private final byte[] text;
    private final int code;

    private Answer(byte[] text, int code) {
      this.text = text;
      this.code = code;
    }

    /** A text and the exit code that went with it. */
    public static Answer of(String text, int code) {
      return new Answer(text.getBytes(StandardCharsets.UTF_8), code);
    }

    /** Puts the text down, in UTF-8. */
    public void print(OutputStream out) throws IOException {
      out.write(text);
    }

    /** The exit code. */
    public int code() {
      return code;
    }
  }

  /**
   * The answer to a question.
   *
   * @param question everything the answer hangs on beside the texts
   * @param state of the texts
   */
  public Optional<Answer> get(String question, String state) {
    return file(question).read().flatMap(in -> read(in, question, state));
  }

  private static Optional<Answer> read(DataInputStream in, String question, String state) {
    try {
      return Packing.text(in).equals(question) && Packing.text(in).equals(state)
          ? Optional.of(new Answer(Packing.bytes(in), in.readInt()))
          : Optional.empty();
    } catch (IOException damaged) {
      return Optional.empty();
    }
  }

  /** Keeps an answer in the place of an earlier one to the same question; false if it cannot. */
  public boolean put(String question, String state, Answer answer) {
    boolean written =
        file(question)
            .write(
                out -> {
                  Packing.text(out, question);
                  Packing.text(out, state);
                  Packing.bytes(out, answer.text);
                  out.writeInt(answer.code);
                });
    return written && forget();
  }

  /** Lets go of those not written for longest. */
  private boolean forget() {
    try (DirectoryStream<Path> answers = Files.newDirectoryStream(folder, PREFIX + "*")) {
      Map<Long, List<Path>> byAge = new TreeMap<>(Collections.reverseOrder());
      for (Path one : answers) {
        FileStamp.of(one)
            .ifPresent(
                is -> byAge.computeIfAbsent(is.modified(), any -> new ArrayList<>()).add(one));
      }
      List<Path> newestFirst = byAge.values().stream().flatMap(List::stream).toList();
      for (Path old :
          newestFirst.subList(Math.min(QUESTIONS, newestFirst.size()), newestFirst.size())) {
        Files.deleteIfExists(old);
      }
      return true;
    } catch (IOException failed) {
      return false;
    }
  }

  private KeptFile file(String question) {
    return new KeptFile(
        folder.resolve(PREFIX + Fingerprint.hash(question).substring(0, DIGITS)), FORM);
  }
}
