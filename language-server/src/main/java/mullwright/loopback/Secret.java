package mullwright.loopback;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;

/**
 * The first part of every address of a page: random, for one run only. It keeps out other users and
 * programs of the machine, who can reach the port and do not know it.
 *
 * @param token 256 random bits in letters an address may hold
 */
public record Secret(String token) {
  private static final int TOKEN_BYTES = 32;

  /** Another one each time. */
  public static Secret random() {
    byte[] random = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(random);
    return new Secret(Base64.getUrlEncoder().withoutPadding().encodeToString(random));
  }

  /**
   * What is asked for below the token; empty if the path does not begin with it.
   *
   * @param path {@code /TOKEN/page.css}, or null
   */
  public Optional<String> below(String path) {
    int end = path == null ? -1 : path.indexOf('/', 1);
    // takes as long for a near guess as for a far one
    boolean known =
        end > 0
            && MessageDigest.isEqual(
                path.substring(1, end).getBytes(StandardCharsets.UTF_8),
                token.getBytes(StandardCharsets.UTF_8));
    return known ? Optional.of(path.substring(end + 1)) : Optional.empty();
  }
}
