/**
 * Numbers that know themselves: value, formula, numbers put in, source, stated or default.
 *
 * <p>The entry is {@link mullwright.derivation.Derivation}; {@link
 * mullwright.derivation.DerivationText} writes one out for hover and explain. Imports quantities
 * only: it computes nothing, and knows where a number was stated only as an opaque {@link
 * mullwright.derivation.Locus}.
 */
package mullwright.derivation;
