package mullwright.derivation;

/**
 * The place where a number was stated, opaque here; whoever knows texts implements it and takes it
 * back by type.
 */
public interface Locus {}
