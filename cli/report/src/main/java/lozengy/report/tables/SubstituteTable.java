package lozengy.report.tables;

import static lozengy.report.Decimals.metres;
import static lozengy.report.Decimals.rounded;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Yarn;
import lozengy.model.score.Score;
import lozengy.model.yarn.Purchase;
import lozengy.model.yarn.Substitute;
import lozengy.report.Decimals;
import lozengy.report.substitute.SubstituteData;
import lozengy.solver.substitute.Substitution;
import lozengy.solver.substitute.Substitution.Shade;
import lozengy.solver.substitute.Substitution.Trial;
import lozengy.solver.substitute.Substitution.Tried;

/** What may stand in for shades that are gone, as CSV. */
public final class SubstituteTable {

  private static final int DECIMALS = 4;

  private SubstituteTable() {}

  /** A row for every shade that may stand in, those that were not tried last. */
  public static String csv(Substitution found) {
    Table table =
        new Table(
            "substitutes",
            "Shades that may stand in for one that is gone, and what each would do",
            List.of("gone", "code"),
            Column.text("gone", "Code of the shade that is gone"),
            Column.text("code", "Code of the one in its place"),
            Column.text("name", "Its full name").optional(),
            Column.text("colour", "sRGB as #rrggbb"),
            Column.number("difference", "CIEDE2000 between the two"),
            Column.number("need_m", "What it takes in place of the other, in m"),
            Column.number(
                    "to_be_had_m",
                    "What may be used of it, in m; empty where it is to buy or plenty")
                .optional(),
            Column.number("short_m", "What it lacks, in m; empty where there is enough").optional(),
            Column.whole("balls", "Whole balls that hold what it takes; empty without a put-up", 0)
                .optional(),
            Column.word(
                "outcome",
                "How solving with it ended",
                List.of("found", "impossible", "unfinished", "untried")),
            Column.number("score_before", "Score with the shade that is gone").optional(),
            Column.number("score", "Score of what was found").optional(),
            Column.whole("pieces", "Pieces that change; empty without a plan", 0).optional(),
            Column.whole("pieces_besides", "Those that change in other ways too", 0).optional());
    for (Shade shade : found.shades()) {
      for (Tried each : shade.tried()) {
        row(table, found, shade, each.substitute(), Optional.of(each.trial()));
      }
      shade.untried().forEach(each -> row(table, found, shade, each, Optional.empty()));
    }
    return Csv.text(table);
  }

  private static void row(
      Table table, Substitution found, Shade shade, Substitute each, Optional<Trial> trial) {
    Blanket blanket = found.blanket();
    Yarn yarn = blanket.yarn(each.yarn());
    table.row(
        blanket.yarn(shade.yarn()).code(),
        yarn.code(),
        yarn.name(),
        yarn.colour().hex(),
        rounded(each.difference(), DECIMALS),
        metres(each.needMillimetres()),
        each.toBuy() || found.plenty() ? null : metres(each.spareMillimetres()),
        each.lacks(blanket).map(Purchase::missingMillimetres).map(Decimals::metres).orElse(null),
        each.ballsToTake().isPresent() ? Long.valueOf(each.ballsToTake().getAsLong()) : null,
        trial.map(SubstituteData::outcome).orElse("untried"),
        found.before().map(Score::total).map(total -> rounded(total, DECIMALS)).orElse(null),
        trial.flatMap(Trial::score).map(score -> rounded(score.total(), DECIMALS)).orElse(null),
        trial.flatMap(Trial::upset).map(upset -> Long.valueOf(upset.pieces().size())).orElse(null),
        trial
            .filter(one -> one.upset().isPresent())
            .map(one -> Long.valueOf(one.beyondPieces()))
            .orElse(null));
  }
}
