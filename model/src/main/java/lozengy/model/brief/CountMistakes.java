package lozengy.model.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.layout.Layout;

/** Judges whether the pieces that counts of yarn name are there. */
final class CountMistakes {

  private final Layout layout;
  private final Predicate<BriefPath> doubted;
  private final List<Mistake> mistakes = new ArrayList<>();

  private CountMistakes(Layout layout, Predicate<BriefPath> doubted) {
    this.layout = layout;
    this.doubted = doubted;
  }

  /** Finds the mistakes of a brief whose layout can be laid out. */
  static List<Mistake> of(Brief brief, Predicate<BriefPath> doubted) {
    if (brief.yarns().stream().allMatch(yarn -> yarn.counted().isEmpty())) {
      return List.of();
    }
    CountMistakes judged = new CountMistakes(Layout.of(brief.layout()), doubted);
    for (int i = 0; i < brief.yarns().size(); i++) {
      BriefPath path = BriefPath.of("yarns").item(i).field("counted");
      brief
          .yarns()
          .get(i)
          .counted()
          .ifPresent(
              counted -> {
                judged.judge(path.field("made"), counted.made());
                judged.judge(path.field("joined"), counted.joined());
                for (int k = 0; k < counted.partWorked().size(); k++) {
                  judged.judge(
                      path.field("part-worked").item(k).field("at"),
                      counted.partWorked().get(k).at());
                }
              });
    }
    return judged.mistakes;
  }

  private void judge(BriefPath path, List<String> names) {
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      BriefPath at = path.itemOf(i, names.size());
      if (layout.select(name).isEmpty() && !doubted.test(at)) {
        mistakes.add(GroupNames.unknown(name, at, layout));
      }
    }
  }
}
