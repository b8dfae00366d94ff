package mullwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.check.Severities;
import mullwright.report.kept.AnswerCache;
import mullwright.report.kept.KeptTexts;
import mullwright.report.kept.PartCache;

/** What earlier runs of a check left in a folder, asked for the files of this run. */
final class KeptChecks {
  private final Path folder;
  private final KeptTexts texts;
  private final String program;
  private final AnswerCache answers;
  private final String question;
  private final List<String> standOn;
  private Optional<PartCache> parts = Optional.empty();

  /**
   * Those in that folder.
   *
   * @param paths of the files of this run
   * @param form everything else the answer hangs on
   */
  KeptChecks(Path folder, Opened opened, List<String> paths, List<String> form)
      throws CannotException {
    this.folder = folder;
    this.texts = KeptTexts.open(folder, opened.disk());
    this.program = Program.identity(texts);
    this.answers = new AnswerCache(folder);
    List<String> asked = new ArrayList<>(form);
    asked.add(program);
    asked.add(opened.directory().toString());
    asked.add(opened.disk().root().toString());
    asked.addAll(paths);
    this.question = String.join("\n", asked);
    this.standOn = new ArrayList<>(paths);
    standOn.add(Severities.FILE);
  }

  /** True if the file is known to be text without damage. */
  boolean sound(String path) {
    return texts.sound(path);
  }

  /** The answer of an earlier run that had the same question and the same texts. */
  Optional<AnswerCache.Answer> answer() {
    return answers.get(question, texts.state(standOn));
  }

  /** What was found in single files. */
  PartCache parts() {
    if (parts.isEmpty()) {
      parts = Optional.of(new PartCache(folder, program, texts));
    }
    return parts.get();
  }

  /** Keeps what this run found, for the next. */
  void save() {
    // a folder that takes nothing costs the next run its time, and no answer
    texts.save();
    parts.ifPresent(PartCache::save);
  }

  /** Keeps the answer of this run. */
  void save(AnswerCache.Answer answer) {
    if (texts.still(standOn)) {
      answers.put(question, texts.state(standOn), answer);
    }
  }
}
