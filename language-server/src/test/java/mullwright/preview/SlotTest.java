package mullwright.preview;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** Only what differs is sent. */
class SlotTest {
  private static Slot slot(String... parts) {
    Slot slot = new Slot("drawing");
    for (int at = 0; at < parts.length; at += 2) {
      slot.put(parts[at], parts[at + 1]);
    }
    return slot;
  }

  private static String changes(Slot now, Slot was) throws IOException {
    StringWriter text = new StringWriter();
    now.writeChanges(was, new JsonWriter(text));
    return text.toString();
  }

  @Test
  void nothingIsSaidOfWhatIsTheSame() throws IOException {
    assertThat(changes(slot("a", "<g/>"), slot("a", "<g/>"))).isEmpty();
  }

  @Test
  void aPartThatIsOtherIsSentAlone() throws IOException {
    assertThat(changes(slot("a", "1", "b", "3"), slot("a", "1", "b", "2")))
        .isEqualTo("{\"slot\":\"drawing\",\"set\":{\"b\":\"3\"}}");
  }

  @Test
  void aPartThatIsGoneChangesTheOrderOnly() throws IOException {
    assertThat(changes(slot("b", "2"), slot("a", "1", "b", "2")))
        .isEqualTo("{\"slot\":\"drawing\",\"set\":{},\"order\":[\"b\"]}");
  }

  @Test
  void aPlaceNobodyKnowsIsSentWhole() throws IOException {
    assertThat(changes(slot(), null)).isEqualTo("{\"slot\":\"drawing\",\"set\":{},\"order\":[]}");
  }
}
