/**
 * The command line: one class a command, found by itself.
 *
 * <p>{@link mullwright.cli.Main} is the entry. A command takes its streams, folder and environment
 * from a {@link mullwright.cli.Shell}, picks a report and a writer, and returns its exit code; it
 * computes nothing about walls. Only this package prints, and only {@code Main} ends the program.
 */
package mullwright.cli;
