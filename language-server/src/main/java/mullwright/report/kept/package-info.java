/**
 * What an earlier run of a check left behind, so that the next one does only what is new.
 *
 * <p>Three things in one folder: {@link mullwright.report.kept.KeptTexts} knows the content of
 * files that did not change without reading them; {@link mullwright.report.kept.PartCache} keeps
 * what was found in each file; {@link mullwright.report.kept.AnswerCache} keeps whole answers as
 * they were printed. All hang on content alone: a folder that is damaged, stale or of another
 * program is as good as none.
 */
package mullwright.report.kept;
