package mullwright.syntax;

import static mullwright.syntax.PartBuilder.broken;
import static mullwright.syntax.PartBuilder.range;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.syntax.antlr.WallParser.*;
import mullwright.syntax.antlr.WallParserBaseVisitor;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;

/**
 * Builds statements from the parse tree, one method a rule of the grammar and of the same name.
 *
 * <p>A statement is always built, with those of its arguments and clauses that were read whole.
 */
final class StatementBuilder extends WallParserBaseVisitor<Statement> {
  private final TypedTokens typed;
  private final Documentation documentation;
  private final List<SyntaxProblem> problems;
  private final PartBuilder parts;
  private final ClauseBuilder clauseBuilder;

  StatementBuilder(List<Comment> comments, TypedTokens typed, List<SyntaxProblem> problems) {
    this.typed = typed;
    this.documentation = new Documentation(comments, typed.tokens());
    this.problems = problems;
    this.parts = new PartBuilder(problems);
    this.clauseBuilder = new ClauseBuilder(parts);
  }

  List<Statement> build(SegmentContext segment) {
    return statements(segment.statement());
  }

  private List<Statement> statements(List<StatementContext> contexts) {
    List<Statement> statements = new ArrayList<>(contexts.size());
    for (StatementContext context : contexts) {
      Statement statement = context.getChildCount() == 0 ? null : context.getChild(0).accept(this);
      if (statement != null) {
        statements.add(statement);
      }
    }
    return statements;
  }

  // ---- file, project, catalog ------------------------------------------------------------------

  @Override
  public Statement visitUse(UseContext said) {
    return statement(StatementKind.USE, said, text(said.text()));
  }

  @Override
  public Statement visitLet(LetContext said) {
    return statement(StatementKind.LET, said, name(said.name()), value(said.expression()));
  }

  @Override
  public Statement visitUnits(UnitsContext said) {
    return statement(StatementKind.UNITS, said, name(said.name()));
  }

  @Override
  public Statement visitProject(ProjectContext said) {
    return statement(StatementKind.PROJECT_BLOCK, said, text(said.text()));
  }

  @Override
  public Statement visitCatalog(CatalogContext said) {
    return statement(StatementKind.CATALOG_BLOCK, said, text(said.text()));
  }

  @Override
  public Statement visitWall(WallContext said) {
    return statement(StatementKind.WALL_BLOCK, said, name(said.name()));
  }

  @Override
  public Statement visitCriteria(CriteriaContext said) {
    return statement(StatementKind.CRITERIA_BLOCK, said);
  }

  @Override
  public Statement visitFabrication(FabricationContext said) {
    return statement(StatementKind.FABRICATION_BLOCK, said);
  }

  @Override
  public Statement visitPart(PartContext said) {
    return statement(StatementKind.CATALOG_PART, said, name(said.name()));
  }

  @Override
  public Statement visitProperty(PropertyContext said) {
    Argument[] phrases = said.phrase().stream().map(this::phrase).toArray(Argument[]::new);
    return statement(StatementKind.PROPERTY, said, phrases);
  }

  private Argument phrase(PhraseContext phrase) {
    if (broken(phrase)) {
      return null;
    }
    List<Argument.Phrase.Part> read = new ArrayList<>();
    for (PhrasePartContext part : phrase.phrasePart()) {
      Argument.Phrase.Part built = phrasePart(part);
      if (built == null) {
        return null;
      }
      read.add(built);
    }
    return new Argument.Phrase(read, range(phrase));
  }

  private Argument.Phrase.Part phrasePart(PhrasePartContext part) {
    if (broken(part)) {
      return null;
    }
    if (part instanceof MeasuredContext measured) {
      Expression value = parts.expression(measured.expression());
      return value == null ? null : new Argument.Phrase.Part.Measured(value);
    }
    Word word = PartBuilder.word(part.getStart());
    return part instanceof QuotedContext
        ? new Argument.Phrase.Part.Quoted(word)
        : new Argument.Phrase.Part.Plain(word);
  }

  // ---- blocks of a wall ------------------------------------------------------------------------

  @Override
  public Statement visitGrid(GridContext said) {
    return statement(StatementKind.GRID_BLOCK, said);
  }

  @Override
  public Statement visitMembers(MembersContext said) {
    return statement(StatementKind.MEMBERS_BLOCK, said);
  }

  @Override
  public Statement visitAnchors(AnchorsContext said) {
    return statement(StatementKind.ANCHORS_BLOCK, said);
  }

  @Override
  public Statement visitLites(LitesContext said) {
    return statement(StatementKind.LITES_BLOCK, said);
  }

  @Override
  public Statement visitInstallation(InstallationContext said) {
    return statement(StatementKind.INSTALLATION_BLOCK, said);
  }

  // ---- grid ------------------------------------------------------------------------------------

  @Override
  public Statement visitLines(LinesContext said) {
    return statement(StatementKind.LINES_STATEMENT, said, select(said.selection()));
  }

  @Override
  public Statement visitLine(LineContext said) {
    return statement(StatementKind.LINE, said, name(said.name()));
  }

  @Override
  public Statement visitFloor(FloorContext said) {
    return statement(StatementKind.FLOOR, said, name(said.name()));
  }

  @Override
  public Statement visitFloors(FloorsContext said) {
    return statement(StatementKind.FLOORS, said, select(said.selection()));
  }

  @Override
  public Statement visitSlab(SlabContext said) {
    return statement(
        StatementKind.SLAB_STATEMENT, said, value(said.expression()), select(said.selection()));
  }

  @Override
  public Statement visitRow(RowContext said) {
    return statement(StatementKind.ROW, said, name(said.name()));
  }

  @Override
  public Statement visitFace(FaceContext said) {
    return statement(StatementKind.FACE, said, name(said.name()));
  }

  @Override
  public Statement visitCorner(CornerContext said) {
    return statement(StatementKind.CORNER, said, name(said.name()), value(said.expression()));
  }

  @Override
  public Statement visitJoint(JointContext said) {
    return statement(StatementKind.JOINT, said, select(said.selection()));
  }

  @Override
  public Statement visitOpening(OpeningContext said) {
    return statement(StatementKind.OPENING, said, name(said.name(0)), name(said.name(1)));
  }

  // ---- members ---------------------------------------------------------------------------------

  @Override
  public Statement visitVertical(VerticalContext said) {
    return statement(StatementKind.VERTICAL, said, select(said.selection()));
  }

  @Override
  public Statement visitHorizontal(HorizontalContext said) {
    return statement(StatementKind.HORIZONTAL, said, select(said.selection()));
  }

  @Override
  public Statement visitSplice(SpliceContext said) {
    return statement(StatementKind.SPLICE, said, select(said.selection()));
  }

  @Override
  public Statement visitReinforce(ReinforceContext said) {
    return statement(StatementKind.REINFORCE, said, select(said.selection()));
  }

  @Override
  public Statement visitBracket(BracketContext said) {
    return statement(StatementKind.BRACKET, said, select(said.selection()));
  }

  @Override
  public Statement visitEndDam(EndDamContext said) {
    return statement(StatementKind.END_DAM, said, select(said.selection()));
  }

  // ---- anchors, lites, installation ------------------------------------------------------------

  @Override
  public Statement visitDeadLoad(DeadLoadContext said) {
    return statement(StatementKind.DEAD_LOAD, said, select(said.selection()));
  }

  @Override
  public Statement visitWindLoad(WindLoadContext said) {
    return statement(StatementKind.WIND_LOAD, said, select(said.selection()));
  }

  @Override
  public Statement visitClip(ClipContext said) {
    return statement(StatementKind.CLIP, said, select(said.selection()));
  }

  @Override
  public Statement visitVision(VisionContext said) {
    return statement(StatementKind.VISION, said, name(said.name()), select(said.selection()));
  }

  @Override
  public Statement visitSpandrel(SpandrelContext said) {
    return statement(StatementKind.SPANDREL, said, name(said.name()), select(said.selection()));
  }

  @Override
  public Statement visitLadder(LadderContext said) {
    return statement(StatementKind.LADDER, said, select(said.selection()));
  }

  @Override
  public Statement visitStick(StickContext said) {
    return statement(StatementKind.STICK, said, select(said.selection()));
  }

  @Override
  public Statement visitUnknown(UnknownContext said) {
    return said.getStart().getText().isEmpty() ? null : statement(StatementKind.UNKNOWN, said);
  }

  // ---- what all have ---------------------------------------------------------------------------

  private Argument name(NameContext name) {
    Word word = parts.name(name);
    return word == null ? null : new Argument.Name(word);
  }

  private Argument select(SelectionContext context) {
    Selection selection = parts.selection(context);
    return selection == null ? null : new Argument.Select(selection);
  }

  private Argument value(ExpressionContext context) {
    Expression expression = parts.expression(context);
    return expression == null ? null : new Argument.Value(expression);
  }

  private Argument text(TextContext text) {
    return broken(text) ? null : new Argument.Text(PartBuilder.word(text.getStart()));
  }

  private Statement statement(StatementKind kind, ParserRuleContext rule, Argument... arguments) {
    WallToken first = (WallToken) rule.getStart();
    Optional<String> documented = documentation.before(first);
    List<Argument> read = new ArrayList<>(arguments.length);
    for (Argument argument : arguments) {
      if (argument != null) {
        read.add(argument);
      }
    }
    Collected collected = new Collected(kind);
    for (ParseTree child : rule.children) {
      collected.take(child);
    }
    Word keyword = new Word(first.getText(), false, first.range());
    return new Statement(
        kind,
        keyword,
        read,
        collected.clauses,
        collected.remarks,
        Optional.ofNullable(collected.block),
        documented,
        range(rule));
  }

  /** Gathers clauses, remarks and the block of one statement from wherever they stand. */
  private final class Collected {
    final StatementKind kind;
    final List<Clause> clauses = new ArrayList<>();
    final List<Remark> remarks = new ArrayList<>();
    final TextRange[] seen = new TextRange[ClauseWord.values().length];
    Block block;

    Collected(StatementKind kind) {
      this.kind = kind;
    }

    void take(ParseTree part) {
      if (part instanceof ClauseContext clause) {
        clause(clause);
      } else if (part instanceof RemarkContext remark) {
        remark(remark);
      } else if (part instanceof BlockContext context) {
        block = block(context);
      } else if (part instanceof TailContext
          || part instanceof HeadingContext
          || part instanceof ClauseLinesContext
          || part instanceof ClauseLineContext) {
        for (int i = 0; i < part.getChildCount(); i++) {
          take(part.getChild(i));
        }
      }
    }

    private void clause(ClauseContext context) {
      ClauseWord word = ClauseBuilder.word(context);
      TextRange range = range(context);
      Clause clause = clauseBuilder.build(context);
      if (clause == null) {
        return;
      }
      TextRange first = seen[word.ordinal()];
      seen[word.ordinal()] = range;
      if (!kind.clauses().contains(word)) {
        problems.add(new SyntaxProblem.ClauseNotTaken(kind, word, range));
      } else if (first != null) {
        problems.add(new SyntaxProblem.ClauseTwice(word, first, range));
      } else {
        clauses.add(clause);
      }
    }

    private void remark(RemarkContext context) {
      if (broken(context)) {
        return;
      }
      Remark.Kind said =
          context.NOTE() != null
              ? Remark.Kind.NOTE
              : context.VERIFY() != null ? Remark.Kind.VERIFY : Remark.Kind.HOLD;
      remarks.add(new Remark(said, PartBuilder.word(context.STRING().getSymbol()), range(context)));
    }
  }

  private Block block(BlockContext context) {
    TerminalNode brace = context.LBRACE();
    TerminalNode end = context.RBRACE();
    if (brace == null || end == null) {
      return null;
    }
    BlockKind inside = typed.blockAt(range(brace).start());
    boolean closed = range(end).length() > 0;
    return new Block(inside, statements(context.statement()), closed, range(brace).to(range(end)));
  }
}
