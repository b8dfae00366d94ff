package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reading and printing give the same bytes on a machine of another language, script or time zone.
 */
class SameEverywhereTest {
  private static final List<String> TEXTS =
      List.of(
          "5'-11 3/16\"",
          "-1'-6\"",
          "5.87 mm",
          "1,5 mm",
          "66 IN",
          "5 MM",
          "32 psf",
          "4.1e6 mm4",
          "1.28e-5 /F",
          "-10 F",
          "0.45 Btu/hft2F",
          "5 %",
          "90 deg",
          "3 MIN",
          "٣ mm",
          "5 ell");

  /** Writes what is made of the texts; run by the tests below in a machine of its own. */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    for (String text : TEXTS) {
      Outcome<Quantity> read = QuantityReader.read(text);
      read.value().ifPresent(quantity -> print(out, quantity));
      out.println(read.remarks());
    }
    for (Step step : Step.values()) {
      LengthFormat format =
          step.system() == UnitSystem.US
              ? LengthFormat.feetInches(step)
              : LengthFormat.millimetres(step);
      out.println(format.print(Length.ofNanometres(-12_345_678_901L)));
    }
  }

  private static void print(PrintStream out, Quantity quantity) {
    out.println(quantity.dimension().words());
    Kind kind = Kind.of(quantity.dimension()).orElseThrow();
    for (UnitSystem system : UnitSystem.values()) {
      out.println(QuantityPrinter.both(quantity, kind, system));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "tr, TR, '', Europe/Istanbul",
    "ar, EG, nu-arab, Africa/Cairo",
    "hi, IN, nu-deva, Asia/Kolkata",
    "de, CH, '', Pacific/Chatham"
  })
  void sameBytes(String language, String country, String extensions, String zone)
      throws IOException, InterruptedException {
    assertThat(run(language, country, extensions, zone)).isEqualTo(run("en", "US", "", "UTC"));
  }

  @Test
  void theComparedTextIsNotEmpty() throws IOException, InterruptedException {
    assertThat(run("en", "US", "", "UTC")).contains("32 psf (1.532 kPa)", "-40'-6 1/16\"");
  }

  private static String run(String language, String country, String extensions, String zone)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-Duser.language=" + language,
                "-Duser.country=" + country,
                "-Duser.extensions=" + extensions,
                "-Duser.timezone=" + zone,
                "-cp",
                System.getProperty("java.class.path"),
                SameEverywhereTest.class.getName())
            .redirectErrorStream(true)
            .start();
    process.getOutputStream().close();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(output).isZero();
    return output;
  }
}
