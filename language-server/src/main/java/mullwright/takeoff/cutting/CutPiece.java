package mullwright.takeoff.cutting;

import mullwright.quantity.Length;

/**
 * A piece to be cut from a bar.
 *
 * @param wall name of its wall
 * @param mark its mark in that wall; of reinforcement the mark of the vertical it goes into
 * @param name as the shop names it
 * @param length cut length, the long point where an end is not square
 */
public record CutPiece(String wall, String mark, String name, Length length) {}
