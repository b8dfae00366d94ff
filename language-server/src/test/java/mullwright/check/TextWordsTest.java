package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import mullwright.model.Catalog;
import mullwright.model.Model;
import mullwright.model.ModelProblem;
import mullwright.model.ModelProblem.BadUse;
import mullwright.model.ModelProblem.BadValue;
import mullwright.model.Origin;
import mullwright.model.PartKind;
import mullwright.model.Symbol;
import mullwright.syntax.BlockKind;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.StatementKind;
import mullwright.syntax.SyntaxProblem;
import mullwright.syntax.SyntaxProblem.Garbled.How;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every problem of the text, and the sentences a drafter reads of it. */
class TextWordsTest {
  private static final String FILE = "a.wall";
  private static final TextRange RANGE = new TextRange(0, 1);
  private static final Origin HERE = new Origin(FILE, 0, RANGE);
  private static final Origin THERE = new Origin("b.wall", 0, new TextRange(4, 5));

  private static final Map<SyntaxProblem, String> SYNTAX = syntax();
  private static final Map<ModelProblem, String> MODEL = model();

  private static SyntaxProblem garbled(How how, String found, String... meant) {
    return new SyntaxProblem.Garbled(how, found, List.of(meant), "lines", RANGE);
  }

  private static Map<SyntaxProblem, String> syntax() {
    Map<SyntaxProblem, String> told = new LinkedHashMap<>();
    told.put(
        new SyntaxProblem.Unexpected("above", List.of("names", "all"), "row", RANGE),
        "“above” cannot stand here, in “row”. Expected: names or all.");
    told.put(
        new SyntaxProblem.Unexpected("end of line", List.of("a value"), "floor", RANGE),
        "The line ends too early, in “floor”. Expected: a value.");
    told.put(
        new SyntaxProblem.Unexpected("B", List.of("a new line"), "after }", RANGE),
        "“B” cannot stand here, after }. Expected: a new line.");
    told.put(
        new SyntaxProblem.Unexpected("=", List.of(), BlockKind.FILE.name(), RANGE),
        "“=” cannot stand here. Take it out.");
    told.put(
        new SyntaxProblem.UnknownKeyword(
            new Word("rwo", false, RANGE), BlockKind.GRID, List.of("row", "line", "floor"), RANGE),
        "No statement here begins with “rwo”. Did you mean row?");
    told.put(
        new SyntaxProblem.UnknownKeyword(
            new Word("sky", false, RANGE), BlockKind.GRID, List.of("floor", "corner"), RANGE),
        "No statement here begins with “sky”. Known here: floor and corner.");
    told.put(
        garbled(How.MISSPELT, "spcaed", "spaced"),
        "“spcaed” is no word of the language, in “lines”. Did you mean spaced?");
    told.put(
        garbled(How.RUN_TOGETHER, "at2\"", "at 2\""),
        "“at2\"” is two words without a blank between, in “lines”. Write at 2\".");
    told.put(
        garbled(How.WORD_LEFT_OUT, "2\"", "at 2\""),
        "The word before “2\"” is missing, in “lines”. Write at 2\".");
    told.put(
        garbled(How.COMMA_LEFT_OUT, "G"),
        "The comma before “G” is missing, in “lines”. Put a comma between the names.");
    told.put(
        garbled(How.RANGE_LEFT_OUT, "G"),
        "The .. before “G” is missing, in “lines”."
            + " Put .. between the two, for the space from the one to the other.");
    told.put(
        garbled(How.COMMA_OR_RANGE_LEFT_OUT, "G"),
        "The comma or the .. before “G” is missing, in “lines”."
            + " Put a comma between the names, or .. if those between are meant too.");
    told.put(
        garbled(How.WORD_OR_COMMA_LEFT_OUT, "jamb", "as jamb"),
        "The word or the comma before “jamb” is missing, in “lines”."
            + " Write as jamb, or put a comma before it if it is one more name.");
    told.put(
        new SyntaxProblem.BraceTwice(RANGE),
        "This “{” is one too many: the block has begun. Take it out.");
    told.put(
        new SyntaxProblem.ClauseNotTaken(StatementKind.FLOOR, ClauseWord.GAP, RANGE),
        "The statement “floor” takes no “gap”. It takes: at, slab and edge.");
    told.put(
        new SyntaxProblem.ClauseNotTaken(StatementKind.BRACKET, ClauseWord.GAP, RANGE),
        "The statement “bracket” takes no “gap”. It takes: at, part, bolted and forces.");
    told.put(
        new SyntaxProblem.ClauseNotTaken(StatementKind.CORNER, ClauseWord.GAP, RANGE),
        "The statement “corner” takes no “gap”. Take it out.");
    told.put(
        new SyntaxProblem.ClauseTwice(ClauseWord.AT, RANGE, RANGE),
        "The clause “at” stands twice in this statement. Take one of the two out.");
    told.put(
        new SyntaxProblem.BlockNotTaken(new Word("let", false, RANGE), RANGE),
        "“let” opens no block here. Take the braces out.");
    told.put(
        new SyntaxProblem.InchMarkMissing("5'-6", RANGE),
        "“5'-6” lacks its inch mark. Write 5'-6\".");
    told.put(
        new SyntaxProblem.MinusUnclear("3'-2\"", "3' - 2\"", RANGE),
        "A minus with a space on one side only can be read in two ways."
            + " Write 3'-2\" or 3' - 2\".");
    told.put(
        new SyntaxProblem.CommaBetweenDigits("1200", "1, 200", RANGE),
        "A comma between two digits can be read in two ways."
            + " Write 1200 for one number or 1, 200 for two.");
    told.put(
        new SyntaxProblem.BareNumber("12", RANGE),
        "The number “12” stands bare after a name."
            + " Put a word between, as in: floor L2 at 13'-0\".");
    told.put(
        new SyntaxProblem.NotClosed(SyntaxProblem.NotClosed.What.STRING, RANGE),
        "The text in quotes does not end on its line. Close it with a quote.");
    told.put(
        new SyntaxProblem.NotClosed(SyntaxProblem.NotClosed.What.COMMENT, RANGE),
        "The comment does not end: it is read up to the end of its line. Close it with */.");
    told.put(
        new SyntaxProblem.BlockWordMissing("grid", RANGE),
        "The word that says what these braces hold is missing; by what stands in them it is “grid”."
            + " Write grid {.");
    told.put(
        new SyntaxProblem.BlockNotClosed("grid", 9, RANGE),
        "The block “grid” does not end. Put } after its last line.");
    told.put(
        new SyntaxProblem.BraceMissing("grid", true, RANGE),
        "“grid” opens a block, and none follows. Put { and } after it.");
    told.put(
        new SyntaxProblem.BraceMissing("wall East", false, RANGE),
        "A “{” is missing after “wall East”: its block does not begin."
            + " Put { at the end of this line.");
    told.put(
        new SyntaxProblem.BraceExtra("grid", RANGE),
        "This “}” is one too many: what follows still belongs in “grid”. Take it out.");
    told.put(
        new SyntaxProblem.BraceExtra("", RANGE),
        "This “}” closes nothing: no block is open here. Take it out.");
    told.put(
        new SyntaxProblem.NotClosed(SyntaxProblem.NotClosed.What.PARENTHESIS, RANGE),
        "The parenthesis does not end. Close it with ).");
    told.put(
        new SyntaxProblem.StrayCharacter("§", RANGE),
        "The language has no use for “§” here. Take it out.");
    told.put(
        new SyntaxProblem.TooMuch("length", 100, RANGE),
        "The file is longer than 100 characters: it is not read."
            + " Split it, and bring the parts together by use.");
    told.put(
        new SyntaxProblem.TooMuch("nesting", 64, RANGE),
        "Blocks or parentheses stand more than 64 deep in one another."
            + " Close those that are done, or take some out.");
    told.put(
        new SyntaxProblem.TooMuch("tokens", 200, RANGE),
        "This block is longer than 200 words, values, marks and lines: it is not read."
            + " Split it, and bring the parts together by use.");
    told.put(
        new SyntaxProblem.TooMuch("operators", 9, RANGE),
        "This value has more than 9 operators. Give parts of it names by let.");
    told.put(
        new SyntaxProblem.TooMuch("problems", 50, RANGE),
        "There are more than 50 mistakes here: the others are not shown. Mend the first ones.");
    return told;
  }

  private static Map<ModelProblem, String> model() {
    Map<ModelProblem, String> told = new LinkedHashMap<>();
    told.put(
        new ModelProblem.Garbled("rail..top", "rows", "rows rail..top", HERE),
        "“rail..top” names rows, and the word “rows” is missing. Write rows rail..top.");
    told.put(
        new ModelProblem.Garbled("rowsrail..top", "rows", "rows rail..top", HERE),
        "“rowsrail..top” is two words without a blank between. Write rows rail..top.");
    told.put(
        new ModelProblem.Garbled("L1..L12Roof", ",", "L1..L12, Roof", HERE),
        "“L1..L12Roof” lacks a comma between two names. Write L1..L12, Roof.");
    told.put(
        new ModelProblem.UnknownName("floor", "l2", List.of("L2", "L3", "Roof"), HERE),
        "There is no floor named “l2”. Did you mean L2 or L3?");
    told.put(
        new ModelProblem.UnknownName("anchor", "hook", List.of("angle-6", "slot-6"), HERE),
        "There is no anchor named “hook”. Known here: angle-6 and slot-6.");
    told.put(
        new ModelProblem.UnknownName("row", "rail", List.of(), HERE),
        "There is no row named “rail”. No row is known here: define it, or mend the name.");
    told.put(
        new ModelProblem.Duplicate("line", "B", THERE, HERE),
        "The line “B” is given already. Give one of the two another name, or take it out.");
    told.put(
        new ModelProblem.Duplicate("profile", "jamb", THERE, HERE),
        "The profile “jamb” is given already. Give one of the two another name, or take it out.");
    told.put(
        new ModelProblem.Duplicate("property", "depth", THERE, HERE),
        "The property “depth” is given already. Take one of the two out.");
    told.put(
        new ModelProblem.Duplicate("units", "mm", THERE, HERE),
        "The units of this file are given already. Take one of the two out.");
    told.put(
        new ModelProblem.Duplicate("project", "Quay", THERE, HERE),
        "This file has a project already. Take one of the two out.");
    told.put(
        new ModelProblem.NameFromTwo("glass", "V1", "a.wall", "b.wall", HERE),
        "The glass “V1” comes from two files, a.wall and b.wall."
            + " Use one of the two files only, or rename the part in one of them.");
    told.put(
        new ModelProblem.Conflict(
            "splice", "line B at L2", "gap", "gap  5/8\"", "gap 3/4\"", THERE, HERE),
        "Two statements of equal reach disagree on “gap” for line B at L2:"
            + " gap 5/8\" against gap 3/4\"."
            + " Make one of them narrower, so that it wins, or let them agree.");
    told.put(
        new ModelProblem.Conflict(
            "anchor", "line A at sill", "kind", "clip", "dead-load", THERE, HERE),
        "Two statements of equal reach disagree on what stands there for line A at sill:"
            + " clip against dead-load."
            + " Make one of them narrower, so that it wins, or let them agree.");
    told.put(
        new ModelProblem.CountMismatch("spaces between 7 lines", 6, 5, "write spaced 6 @ 5'", HERE),
        "The spaces between 7 lines do not fit: 6 wanted, 5 given. Write spaced 6 @ 5'.");
    told.put(
        new ModelProblem.WrongUnit("elevation", "length", "pressure", HERE),
        "The elevation must be a length, not a pressure."
            + " Write it with a unit of length: \", ', mm, cm or m.");
    told.put(
        new ModelProblem.WrongUnit("every", "ratio", "area", HERE),
        "The every must be a plain number, not an area. Write a plain number, without a unit.");
    told.put(
        new ModelProblem.WrongUnit("value added", "m2 kg", "angle", HERE),
        "The value added must be m2 kg, not an angle. Give both sides the same kind of quantity.");
    told.put(
        new ModelProblem.UnitMissing("height", "length", "3", HERE),
        "The height “3” has no unit."
            + " Write its unit; for bare lengths one line such as units inches says it for the"
            + " whole file.");
    told.put(
        new ModelProblem.UnitMissing("temperature", "temperature", "60", HERE),
        "The temperature “60” has no unit. Write it with a unit of temperature: F, C or K.");
    told.put(
        bad(BadValue.Reason.DIVISION_BY_ZERO, "5 / 0"),
        "“5 / 0” divides by zero. Divide by another number.");
    told.put(
        bad(BadValue.Reason.DIVISION_NOT_EXACT, "30' / 7"),
        "“30' / 7” does not come out exactly."
            + " Write the length itself, or divide so that it comes out.");
    told.put(
        bad(BadValue.Reason.OUT_OF_RANGE, "99 999 m"),
        "“99 999 m” is out of range. Lengths and places reach to 10 km either way, other numbers to 1e30.");
    told.put(
        new BadValue(BadValue.Reason.OUT_OF_RANGE, "1/3\"", Optional.of("8.466667 mm"), HERE),
        "“1/3\"” is finer than lengths are kept. Write 8.466667 mm, the nearest length.");
    told.put(
        bad(BadValue.Reason.NOT_A_WHOLE_NUMBER, "2.5"),
        "“2.5” is no count. Write a whole number, 1 or more.");
    told.put(
        bad(BadValue.Reason.NOT_READABLE, "5 qm"),
        "“5 qm” cannot be read as a value. Write it as in 5'-6 1/2\", 3/8\", 1524 mm or 32 psf.");
    told.put(
        new BadValue(BadValue.Reason.NOT_READABLE, "5 in", Optional.of("\""), HERE),
        "“5 in” cannot be read as a value. Write 5\"?");
    told.put(
        bad(BadValue.Reason.CIRCULAR, "a = b = a"),
        "a = b = a goes round in a circle. Break the circle: one of them must stand by itself.");
    told.put(
        use(BadUse.Reason.NOT_FOUND, "c.wall"),
        "There is no file “c.wall”, seen from this one."
            + " Mend the path: it starts in this file's own folder, with / between folders.");
    told.put(
        use(BadUse.Reason.NO_PLACE, "../c.wall"),
        "This text is in no file yet, so that “../c.wall” leads nowhere from here. Save it first:"
            + " the path starts in the folder it is saved in.");
    told.put(
        new BadUse(BadUse.Reason.CIRCLE, "b.wall", List.of("a.wall", "b.wall", "a.wall"), HERE),
        "Files use one another in a circle: a.wall → b.wall → a.wall."
            + " Take one use of the circle out.");
    told.put(
        use(BadUse.Reason.ABSOLUTE, "/c.wall"),
        "“/c.wall” is not a relative path. Write the path from this file's own folder.");
    told.put(
        use(BadUse.Reason.ABOVE_ROOT, "../c.wall"),
        "“../c.wall” leads above the workspace."
            + " Open the folder that holds both files, or move the used file into it. An editor"
            + " that opens single files takes the nearest folder above with a .git or an empty"
            + " .mullwright.");
    told.put(
        use(BadUse.Reason.NOT_TEXT, "c.png"),
        "“c.png” is not wall text. Use a file that ends in .wall.");
    told.put(
        new ModelProblem.Missing("its elevation", "floor L2", Optional.of("at 13'-0\""), HERE),
        "Floor L2 does not say its elevation. Write for instance at 13'-0\".");
    told.put(
        new ModelProblem.Missing("what is there", "members, for line C,", Optional.empty(), HERE),
        "Members, for line C, do not say what is there. Add it.");
    told.put(
        new ModelProblem.OutOfPlace("the wall cannot turn here", "a corner parts two bays", HERE),
        "The wall cannot turn here. A corner parts two bays.");
    told.put(
        new ModelProblem.OutOfOrder("floor", "L2", "L3", THERE, HERE),
        "The floor “L2” is not above “L3”. Mend its place, or change the order.");
    told.put(
        new ModelProblem.OutOfOrder("line", "B", "C", THERE, HERE),
        "The line “B” is not right of “C”. Mend its place, or change the order.");
    told.put(
        new ModelProblem.PartFilled("vision V1", "bay B-C, rail to head", HERE),
        "opening in bay B-C, rail to head: “vision V1” reaches into it and does not fill it."
            + " Name the rows it lies between, or the bays where those rows run.");
    told.put(
        new ModelProblem.Shadowed("splice", List.of(THERE), HERE),
        "Narrower statements override this splice everywhere."
            + " Take it out, or make the narrower ones narrower.");
    told.put(
        new ModelProblem.CommaAtEnd("stock", "depth", HERE),
        "The comma joins the next line to this one, so that “depth” is read as more of “stock”."
            + " Take the comma out.");
    told.put(
        new ModelProblem.BadProperty("anchor", "raech", "", List.of("reach", "use"), HERE),
        "An anchor has no property “raech”. Did you mean reach?");
    told.put(
        new ModelProblem.BadProperty("criteria", "snow", "", List.of("wind", "slab"), HERE),
        "Criteria have no property “snow”. Known here: wind and slab.");
    told.put(
        new ModelProblem.BadProperty("fabrication", "kerf", "LENGTH", List.of(), HERE),
        "The property “kerf” of fabrication cannot be read in this form."
            + " Write it as: kerf LENGTH.");
    told.put(
        new ModelProblem.TooMany("spaces", 10_000, 12_000, HERE),
        "Too many spaces: 12000, at most 10000."
            + " Split the wall or the file, or mend the number; the rest is not read.");
    told.put(
        new ModelProblem.TooMany("every", 10_000, 12_000, HERE),
        "“every 12000” is too much, at most 10000."
            + " Split the wall or the file, or mend the number; the rest is not read.");
    return told;
  }

  private static BadValue bad(BadValue.Reason reason, String text) {
    return new BadValue(reason, text, Optional.empty(), HERE);
  }

  private static BadUse use(BadUse.Reason reason, String path) {
    return new BadUse(reason, path, List.of(), HERE);
  }

  @TestFactory
  Stream<DynamicTest> theFormOfTheText() {
    return SYNTAX.entrySet().stream()
        .map(
            told ->
                DynamicTest.dynamicTest(
                    told.getKey().toString(),
                    () -> {
                      SyntaxWords words = SyntaxWords.of(told.getKey());
                      assertThat(words.what() + " " + words.mend()).isEqualTo(told.getValue());
                    }));
  }

  @TestFactory
  Stream<DynamicTest> whatTheTextSays() {
    return MODEL.entrySet().stream()
        .map(
            told ->
                DynamicTest.dynamicTest(
                    told.getKey().toString(),
                    () ->
                        assertThat(found(List.of(told.getKey()), List.of()))
                            .isNotEmpty()
                            .allSatisfy(
                                finding ->
                                    assertThat(finding.message()).isEqualTo(told.getValue()))));
  }

  @Test
  void aPairThatDisagreesInManyPlacesIsToldOnceAtEach() {
    List<ModelProblem> problems = new ArrayList<>();
    for (String floor : List.of("L2", "L3", "L4")) {
      problems.add(new ModelProblem.Conflict("slab", floor, "slab", "14\"", "10\"", THERE, HERE));
    }
    List<Finding> found = found(problems, List.of());
    assertThat(found).extracting(Finding::origin).containsExactlyInAnyOrder(HERE, THERE);
    assertThat(found)
        .allSatisfy(finding -> assertThat(finding.what()).contains("for L2 and 2 more: "));
  }

  @Test
  void unusedNames() {
    Symbol let = new Symbol(Symbol.Kind.LET, "", "bay", HERE);
    Symbol part = new Symbol(Symbol.Kind.PART, "", "pad", THERE);
    assertThat(found(List.of(), List.of(let, part)))
        .extracting(Finding::message)
        .containsExactlyInAnyOrder(
            "The value “bay” is given and never used. Take it out, or use it.",
            "The part “pad” is given and never used. Take it out, or use it.");
  }

  @Test
  void everyKindOfProblemHasASentence() {
    assertThat(classes(SYNTAX.keySet()))
        .containsExactlyInAnyOrder(SyntaxProblem.class.getPermittedSubclasses());
    assertThat(classes(MODEL.keySet()))
        .containsExactlyInAnyOrder(ModelProblem.class.getPermittedSubclasses());
    assertThat(MODEL.keySet().stream().filter(BadValue.class::isInstance))
        .extracting(problem -> ((BadValue) problem).reason())
        .contains(BadValue.Reason.values());
    assertThat(MODEL.keySet().stream().filter(BadUse.class::isInstance))
        .extracting(problem -> ((BadUse) problem).reason())
        .contains(BadUse.Reason.values());
  }

  private static Set<Class<?>> classes(Set<?> problems) {
    Set<Class<?>> classes = new HashSet<>();
    problems.forEach(problem -> classes.add(problem.getClass()));
    return classes;
  }

  private static List<Finding> found(List<ModelProblem> problems, List<Symbol> unused) {
    Model model =
        new Model(
            FILE,
            List.of(),
            Optional.empty(),
            new Catalog(new EnumMap<>(PartKind.class)),
            List.of(),
            List.of(),
            unused,
            List.of(),
            problems);
    TextFacts facts = new TextFacts(model, Map.of(FILE, ParsedFile.parse("")));
    List<Rule> texts = Rules.find().all().stream().filter(TextRule.class::isInstance).toList();
    return new Checker(new Rules(texts)).check(facts, List.of(), () -> false).findings();
  }

  /** A word may be as long as a file; what is said of it is read in a tooltip. */
  @Test
  void ofAWordLongerThanAnyNameTheBeginningIsQuoted() {
    String name = "z".repeat(Words.QUOTED);
    assertThat(Words.quoted(name)).isEqualTo("“" + name + "”");
    assertThat(Words.quoted(name + "z")).isEqualTo("“" + name + "…”");
    // letters outside the first plane are two units, which are never parted
    String wide = "z".repeat(Words.QUOTED - 1) + "😀";
    assertThat(Words.quoted(wide)).isEqualTo("“" + "z".repeat(Words.QUOTED - 1) + "…”");
    SyntaxProblem endless =
        new SyntaxProblem.Unexpected("9".repeat(1 << 20), List.of("names"), "row", RANGE);
    assertThat(SyntaxWords.of(endless).what()).hasSizeLessThan(200);
  }

  @Test
  void articlesFitTheirNouns() {
    // spoken English: the sound decides, so "a U-factor" and "a unit"
    assertThat(Arrays.asList("area", "anchor", "length", "U-factor", "unit"))
        .extracting(Words::article)
        .containsExactly("an area", "an anchor", "a length", "a U-factor", "a unit");
  }

  @Test
  void aNameThatIsAWordOfTheLanguageIsQuoted() {
    assertThat(Stream.of("L2.rail", "5", "rail-heavy", "sleeve", "Quay side"))
        .extracting(Words::asName)
        .containsExactly("L2.rail", "5", "rail-heavy", "\"sleeve\"", "\"Quay side\"");
  }
}
