/**
 * The one layout of wall text.
 *
 * <p>Entry: {@link mullwright.format.Formatter}. Laying out never changes what the text says, never
 * joins or splits lines, loses no comment and, done twice, changes nothing more. Columns line up
 * within a run of adjacent lines of one keyword only, at multiples of four, so that one longer name
 * does not re-space a block. Lines that could not be read stay exactly as they are.
 *
 * <p>It does not decide what is right: it writes no word that was not there.
 */
package mullwright.format;
