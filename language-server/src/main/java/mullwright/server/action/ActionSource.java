package mullwright.server.action;

import java.util.List;

/**
 * Offers actions of one kind at a place of a text.
 *
 * <p>Offers are made whenever the cursor rests somewhere, so they must be cheap; what is dear is
 * done in {@link Action#change}.
 */
public interface ActionSource {
  /** The kind of all it offers, as the protocol spells kinds. */
  String kind();

  /** What it offers there, best first; empty if nothing. */
  List<Action> offers(Selected selected);
}
