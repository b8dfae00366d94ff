/**
 * Names, {@code use}, units, patterns, exceptions and conflicts resolved: what the text says about
 * project, catalog and walls, each value knowing its place in the text.
 *
 * <p>Entry: {@link mullwright.model.ModelReader}. Reading gives a {@link mullwright.model.Model}
 * and typed problems, never an exception. It opens no file (it is handed the parsed ones), computes
 * no piece or cut length and knows no rule's words.
 */
package mullwright.model;
