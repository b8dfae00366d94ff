/**
 * What a build, a shop or a reader gets on paper: reports and the writers that put them down.
 *
 * <p>Two families. {@link mullwright.report.CheckReport} gathers findings with their places and is
 * written for people ({@link mullwright.report.CheckText}) and for programs ({@link
 * mullwright.report.CheckJson}). A {@link mullwright.report.Report} makes a {@link
 * mullwright.report.Document} of tables, which any {@link mullwright.report.DocumentWriter} writes.
 * Rounding is the writer's and never flows back. Nothing here prints to a stream, reads a file or
 * knows an option of the command line.
 */
package mullwright.report;
