/**
 * Connects a lite of a wall with the methods of {@link mullwright.analysis.glass} and {@link
 * mullwright.analysis.drift}: what it is made of, the wind it takes, where it hangs, what follows.
 *
 * <p>Entry: {@link mullwright.analysis.lite.LiteBearing}. A lite is looked at as it is laid out;
 * plates are solved once for each size, make-up and load and remembered by {@link
 * mullwright.analysis.lite.GlassMemory}. Nothing here knows a rule or a sentence of a finding.
 */
package mullwright.analysis.lite;
