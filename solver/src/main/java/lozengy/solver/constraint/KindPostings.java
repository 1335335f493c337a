package lozengy.solver.constraint;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Ground;

/**
 * The postings of all kinds. What single rounds may take, {@link Ground.May}, and what is taken off
 * a yarn, {@link Ground.Taken} and {@link Ground.Seams}, are no constraints of their own: the
 * variables' domains and the loads of the yarns say them.
 */
final class KindPostings {

  private static final List<KindPosting<?>> ALL =
      List.of(
          new LayPosting(),
          new ClashPosting(),
          new SamePosting(),
          new CountPosting(),
          new CopiesPosting(),
          new StockPosting());

  private static final Map<Class<?>, KindPosting<?>> BY_KIND =
      ALL.stream().collect(Collectors.toMap(KindPosting::kind, Function.identity()));

  private KindPostings() {}

  /** All kinds that are posted. */
  static Set<Class<?>> kinds() {
    return BY_KIND.keySet();
  }

  /** Posts some lines of a brief. */
  static void post(ConstraintModel model, List<BriefLine> lines) {
    for (BriefLine line : lines) {
      for (Ground ground : line.grounds()) {
        KindPosting<?> posting = BY_KIND.get(ground.getClass());
        if (posting != null) {
          post(posting, model, ground);
        }
      }
    }
    ALL.forEach(posting -> strengthen(posting, model, lines));
  }

  private static <G extends Ground> void post(
      KindPosting<G> posting, ConstraintModel model, Ground ground) {
    posting.post(model, posting.kind().cast(ground));
  }

  private static <G extends Ground> void strengthen(
      KindPosting<G> posting, ConstraintModel model, List<BriefLine> lines) {
    posting.strengthen(
        model, lines.stream().flatMap(line -> line.grounds(posting.kind())).toList());
  }
}
