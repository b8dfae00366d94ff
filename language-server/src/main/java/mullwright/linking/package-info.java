/**
 * Finishes the runnable jar: what the compiler leaves to be linked at run time is linked ahead.
 *
 * <p>A lambda, a method reference and a record's equality are call sites that a Java machine links
 * when it first meets them, by classes it makes on the spot. A server's start meets some nine
 * hundred of them before its first answer. Linked ahead they are ordinary classes, which an archive
 * can hold. Runs while the jar is packed, is not in it, and nothing else of the house knows it.
 */
package mullwright.linking;
