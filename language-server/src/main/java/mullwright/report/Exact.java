package mullwright.report;

import com.google.gson.JsonPrimitive;
import java.math.BigDecimal;
import mullwright.quantity.Length;

/** Numbers as JSON says them: exact, and never with an exponent. */
final class Exact {
  private Exact() {}

  static JsonPrimitive millimetres(Length length) {
    return new JsonPrimitive(new BigDecimal(length.millimetres().toPlainString()));
  }
}
