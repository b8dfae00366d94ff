/**
 * The packaged jar in the hands of real clients: an editor, and the protocol's own types.
 *
 * <p>Runs after the jar is made ({@code mvn verify}). Where a tool is missing the test is skipped
 * with a clear word; continuous integration installs the tools.
 */
package mullwright.editor;
