package mullwright.preview;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** What stands behind the question mark of an address. */
record Query(Map<String, String> values) {
  static Query of(String raw) {
    Map<String, String> values = new HashMap<>();
    if (raw != null) {
      for (String pair : raw.split("&")) {
        int equals = pair.indexOf('=');
        if (equals > 0) {
          values.put(pair.substring(0, equals), decoded(pair.substring(equals + 1)));
        }
      }
    }
    return new Query(values);
  }

  private static String decoded(String raw) {
    try {
      return URLDecoder.decode(raw, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException broken) {
      return "";
    }
  }

  String get(String name) {
    return values.getOrDefault(name, "");
  }

  Look look() {
    return new Look(
        get("wall"), get("at"), get("base").equals("1"), get("tab"), get("far").equals("1"));
  }
}
