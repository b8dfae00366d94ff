/**
 * What may be written at a place of a wall text.
 *
 * <p>Entry: {@link mullwright.server.completion.Offers}. The place is told by {@link
 * mullwright.server.completion.LineContext} from the tokens before it and not from the tree, since
 * the line that is being written is broken as a rule. Names come from the model of the text as it
 * stands, the line in hand left out of account.
 */
package mullwright.server.completion;
