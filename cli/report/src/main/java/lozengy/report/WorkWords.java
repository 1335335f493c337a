package lozengy.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.PieceKind;
import lozengy.model.making.MakeList;

/** Words for what is to be worked. */
public final class WorkWords {

  private WorkWords() {}

  /**
   * Rounds of one kind and number that are worked together.
   *
   * @param what which round of how many pieces: {@code 9 square centres}, {@code round 2 of 5
   *     squares}
   * @param pieces the pieces' names
   */
  public record Line(String what, List<String> pieces) {}

  /** What a make list is, above its steps. */
  public static String listed(MakeList list) {
    int left = list.batches().size();
    String all = Figures.count(list.steps(), "step");
    return "Take up one yarn, work all that is listed, take up the next: "
        + (left == list.steps() ? all : left + " of " + all + " left")
        + ", in an order that picks each yarn up seldom. 'lozengy mark --step "
        + list.batches().get(0).step()
        + "' tells that the first is done.";
  }

  /** The rounds of a batch, those of one kind of piece and one number together. */
  public static List<Line> lines(Blanket blanket, MakeList.Batch batch) {
    return lines(blanket, batch.tasks());
  }

  /** A round as it is called: {@code centre}, {@code round 2}, {@code border}. */
  static String round(Blanket blanket, MakeList.Task task) {
    boolean border = task.round() == blanket.roundCount(task.piece()) - 1;
    return border ? "border" : task.round() == 0 ? "centre" : "round " + (task.round() + 1);
  }

  /** Tasks, those of one kind of piece and one round together. */
  public static List<Line> lines(Blanket blanket, List<MakeList.Task> tasks) {
    Map<List<Integer>, List<Integer>> groups = new LinkedHashMap<>();
    for (MakeList.Task task : tasks) {
      int kind = blanket.kind(task.piece()).ordinal();
      groups
          .computeIfAbsent(List.of(kind, task.round()), key -> new ArrayList<>())
          .add(task.piece());
    }
    List<Line> lines = new ArrayList<>();
    groups.forEach(
        (key, pieces) -> {
          PieceKind kind = PieceKind.values()[key.get(0)];
          String noun = BlanketWords.noun(kind);
          boolean border = key.get(1) == blanket.motif(kind).rounds().size() - 1;
          lines.add(
              new Line(
                  border || key.get(1) == 0
                      ? Figures.count(pieces.size(), noun + (border ? " border" : " centre"))
                      : "round " + (key.get(1) + 1) + " of " + Figures.count(pieces.size(), noun),
                  pieces.stream().map(piece -> blanket.place(piece).name()).toList()));
        });
    return lines;
  }
}
