/**
 * What an earlier server found in a document, so that the next one can show it before it has read a
 * wall.
 *
 * <p>One small file a document, {@link mullwright.server.kept.KeptFindings} with everything they
 * hang on by value: whole texts are compared, not times. A file that is damaged, stale or of
 * another program is as good as none, and so is a folder that cannot be written.
 */
package mullwright.server.kept;
