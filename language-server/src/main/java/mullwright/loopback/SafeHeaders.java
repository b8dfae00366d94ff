package mullwright.loopback;

import com.sun.net.httpserver.Headers;

/** What every answer says of itself, so that a browser lends it to no other page. */
public final class SafeHeaders {
  private SafeHeaders() {}

  /**
   * Sets them.
   *
   * @param policy what the page may load, and who may frame it: its content security policy
   */
  public static void set(Headers headers, String policy) {
    headers.set("Content-Security-Policy", policy);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
  }
}
