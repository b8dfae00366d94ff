package mullwright.workspace;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.diff.RawText;
import org.eclipse.jgit.diff.RawTextComparator;
import org.eclipse.jgit.merge.MergeAlgorithm;
import org.eclipse.jgit.merge.MergeChunk;
import org.eclipse.jgit.merge.MergeResult;

/** Merges texts line by line as version control does. */
final class TextMerge {
  private TextMerge() {}

  /** The merged text; empty if both sides changed the same lines. */
  static Optional<String> of(String base, String ours, String theirs) {
    MergeResult<RawText> result =
        new MergeAlgorithm().merge(RawTextComparator.DEFAULT, raw(base), raw(ours), raw(theirs));
    if (result.containsConflicts()) {
      return Optional.empty();
    }
    StringBuilder merged = new StringBuilder();
    List<RawText> texts = result.getSequences();
    for (MergeChunk chunk : result) {
      RawText text = texts.get(chunk.getSequenceIndex());
      merged.append(text.getString(chunk.getBegin(), chunk.getEnd(), false));
    }
    return Optional.of(merged.toString());
  }

  private static RawText raw(String text) {
    return new RawText(text.getBytes(StandardCharsets.UTF_8));
  }
}
