package mullwright.report.ifc;

import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/**
 * Makes the identifiers of what is in a file from names, so that the same thing keeps its
 * identifier from one export to the next.
 *
 * <p>A name becomes a name-based UUID (RFC 9562, version 5) and that 22 characters to the base 64,
 * as the IFC writes a GloballyUniqueId.
 */
final class GlobalIds {
  /** Digits to the base 64, in the order of their values (IFC4, IfcGloballyUniqueId). */
  private static final String DIGITS =
      "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

  private static final int LENGTH = 22;

  /** Name space for addresses (RFC 9562, section 6.6). */
  static final UUID ADDRESSES = UUID.fromString("6ba7b811-9dad-11d1-80b4-00c04fd430c8");

  private final String scope;
  private final Map<String, Integer> used = new HashMap<>();

  /**
   * Identifiers of one wall's file.
   *
   * @param scope what tells it from all others
   */
  GlobalIds(String scope) {
    this.scope = scope;
  }

  /** The identifier of a thing; of a second thing of that name, another. */
  StepValue of(String name) {
    int times = used.merge(name, 1, Integer::sum);
    String whole = "urn:mullwright:" + scope + "/" + name + (times > 1 ? "/" + times : "");
    return StepValue.text(compressed(named(ADDRESSES, whole)));
  }

  /** A name-based UUID of version 5: the first half of a SHA-1 digest of name space and name. */
  static UUID named(UUID space, String name) {
    byte[] digest = sha1(space, name);
    ByteBuffer bytes = ByteBuffer.wrap(digest);
    long high = bytes.getLong() & ~0xF000L | 0x5000L;
    long low = bytes.getLong() & ~(3L << 62) | 2L << 62;
    return new UUID(high, low);
  }

  private static byte[] sha1(UUID space, String name) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-1");
      digest.update(
          ByteBuffer.allocate(16)
              .putLong(space.getMostSignificantBits())
              .putLong(space.getLeastSignificantBits())
              .array());
      return digest.digest(name.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java platform has SHA-1", missing);
    }
  }

  /** A UUID as the IFC writes it. */
  static String compressed(UUID id) {
    BigInteger left =
        new BigInteger(Long.toUnsignedString(id.getMostSignificantBits()))
            .shiftLeft(64)
            .or(new BigInteger(Long.toUnsignedString(id.getLeastSignificantBits())));
    StringBuilder digits = new StringBuilder(LENGTH);
    for (int at = 0; at < LENGTH; at++) {
      digits.append(DIGITS.charAt(left.intValue() & 63));
      left = left.shiftRight(6);
    }
    return digits.reverse().toString();
  }
}
