/**
 * What changed between two walls, in the trade's words.
 *
 * <p>Entry: {@link mullwright.review.WallReviewer}. A wall is read into a {@link
 * mullwright.review.FactSheet}: every fact the text states, by what it is about and not by where it
 * stands. Two sheets give a list of {@link mullwright.review.Change}s, each of which stands for all
 * facts that changed alike; what follows from them (pieces, material, reactions, findings) is told
 * with the changes that explain it.
 *
 * <p>It opens no file, knows no version control, and computes nothing about a wall that an earlier
 * stage does not tell.
 */
package mullwright.review;
