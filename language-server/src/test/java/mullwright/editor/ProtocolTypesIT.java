package mullwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * Every message the server sent in any test is held against JSON Schema made from the protocol's
 * own types (npm package vscode-languageserver-protocol 3.18.5).
 */
class ProtocolTypesIT {
  @Test
  void everyMessageOfTheServerIsOfTheProtocolsTypes() throws Exception {
    Tools.needed("node", "node", "--version");
    Path folder = Path.of("src/test/protocol").toAbsolutePath();
    Assumptions.assumeTrue(
        Files.isDirectory(folder.resolve("node_modules")),
        "the npm packages are not installed here: run npm ci in " + folder);
    Path recordings = Path.of("target/lsp-messages").toAbsolutePath();
    Assumptions.assumeTrue(Files.isDirectory(recordings), "no recordings: run all tests");
    Path schema = Path.of("target/protocol-schema.json").toAbsolutePath();

    Tools.Ran made =
        Tools.run(
            folder,
            Map.of(),
            List.of(
                "node",
                "node_modules/ts-json-schema-generator/bin/ts-json-schema-generator.js",
                "-p",
                "types.ts",
                "-f",
                "tsconfig.json",
                "-t",
                "*",
                "--no-type-check",
                "-o",
                schema.toString()));
    assertThat(made.exit()).as(made.output()).isZero();

    Tools.Ran held =
        Tools.run(
            folder,
            Map.of(),
            List.of("node", "check.mjs", schema.toString(), recordings.toString()));
    assertThat(held.exit()).as(held.output()).isZero();
  }
}
