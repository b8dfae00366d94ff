package mullwright.syntax;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;

/**
 * Any text is read and laid out without exception, and laying out changes nothing but looks. A
 * plain test run replays the seeds; {@code JAZZER_FUZZ=1} looks for more.
 */
class ReadingFuzzTest {
  @FuzzTest
  void anyText(FuzzedDataProvider data) {
    RoundTrip.check(data.consumeRemainingAsString());
  }

  @FuzzTest
  void anyEdit(FuzzedDataProvider data) {
    String text = data.consumeString(2_000);
    int start = data.consumeInt(0, text.length());
    int end = data.consumeInt(start, text.length());
    String replacement = data.consumeRemainingAsString();
    ParsedFile edited = ParsedFile.parse(text).edit(start, end, replacement);
    if (!edited.segments().equals(ParsedFile.parse(edited.text()).segments())) {
      throw new AssertionError("differs from a fresh reading: " + edited.text());
    }
  }
}
