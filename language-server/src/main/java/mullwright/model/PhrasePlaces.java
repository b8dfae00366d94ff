package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.syntax.Argument.Phrase.Part;
import mullwright.syntax.Place;
import mullwright.syntax.Selection;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;

/** Turns words of a phrase into places and selections, as the grammar does elsewhere. */
final class PhrasePlaces {
  private PhrasePlaces() {}

  /** {@code L2..L6} and {@code L2 L4}; a dangling {@code ..} is left out. */
  static Selection selection(List<Part> parts) {
    List<Selection.Item> items = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Word word = word(parts.get(i));
      if (word.text().equals("..")) {
        continue;
      }
      boolean range = i + 2 < parts.size() && word(parts.get(i + 1)).text().equals("..");
      items.add(new Selection.Item(word, range ? word(parts.get(i + 2)) : null));
      i += range ? 2 : 0;
    }
    TextRange range = parts.get(0).range().to(parts.get(parts.size() - 1).range());
    return new Selection(false, items, List.of(), Optional.empty(), range);
  }

  /** A name, a length, or a length above or below names. */
  static Place place(List<Part> parts) {
    Part first = parts.get(0);
    if (parts.size() == 1 && first instanceof Part.Measured measured) {
      return new Place.FromDatum(measured.expression());
    }
    TextRange range = first.range().to(parts.get(parts.size() - 1).range());
    boolean bearing = first instanceof Part.Measured;
    Selection names = selection(bearing ? parts.subList(2, parts.size()) : parts);
    if (!bearing) {
      return new Place.AtNames(Optional.empty(), null, names, range);
    }
    boolean above = PhrasePattern.word(parts.get(1)).equals("above");
    return new Place.AtNames(
        Optional.of(((Part.Measured) first).expression()),
        above ? Place.Direction.ABOVE : Place.Direction.BELOW,
        names,
        range);
  }

  private static Word word(Part part) {
    if (part instanceof Part.Quoted quoted) {
      return quoted.string();
    }
    return ((Part.Plain) part).word();
  }
}
