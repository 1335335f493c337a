package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Proxy;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class SubjectTest {

  /** The name of the case that a subject goes to. */
  private static String caseOf(Subject subject) {
    Subject.Cases<?> cases =
        (Subject.Cases<?>)
            Proxy.newProxyInstance(
                Subject.class.getClassLoader(),
                new Class<?>[] {Subject.Cases.class},
                (proxy, method, arguments) -> {
                  assertEquals(List.of(subject), List.of(arguments));
                  return method.getName();
                });
    return String.valueOf(subject.in(cases));
  }

  @Test
  void everySortHasItsCodeAndItsCase() {
    Look.Zone zone = new Look.Zone(Where.EVERYWHERE, List.of("MUD"));
    Look.Count count = new Look.Count("MUD", Where.BORDERS, 1, OptionalInt.empty());
    Map<String, Subject> subjects = new LinkedHashMap<>();
    subjects.put("stock stock", new Subject.Stock(0, 1, 0));
    subjects.put("joining joining", new Subject.Joining(0, 1));
    subjects.put("joining-in-borders joiningInBorders", new Subject.JoiningInBorders());
    subjects.put("edging edging", new Subject.Edging(0, 1));
    subjects.put("keep-back keepBack", new Subject.KeepBack(5));
    subjects.put("tone tone", new Subject.Tone(PieceKind.SQUARE, 0, Set.of(), List.of()));
    subjects.put("lock lock", new Subject.Lock(0, PieceState.PLANNED, 0, List.of()));
    subjects.put("ban ban", new Subject.Ban("r1c1", true, List.of("MUD")));
    subjects.put("gone gone", new Subject.Gone(0));
    subjects.put("zone zone", new Subject.Zone(zone));
    subjects.put("apart apart", new Subject.Apart("MUD", "REE", Look.Meeting.BOTH));
    subjects.put("lots lots", new Subject.Lots(List.of()));
    subjects.put("given-borders givenBorders", new Subject.GivenBorders(List.of()));
    subjects.put("images images", new Subject.Images(Symmetry.BOTH));
    subjects.put("borders-differ differ", new Subject.Differ(Subject.SeamPart.BORDERS));
    subjects.put("centres-differ differ", new Subject.Differ(Subject.SeamPart.CENTRES));
    subjects.put("contrast contrast", new Subject.Contrast(2));
    subjects.put("within within", new Subject.Within(WithinPiece.ALL_DIFFER));
    subjects.put("copies copies", new Subject.Copies(1, false));
    subjects.put("count count", new Subject.Count(count, true));
    subjects.put("on-pile onPile", new Subject.OnPile(PieceKind.SQUARE, 1, List.of(0), List.of()));
    subjects.forEach((told, subject) -> assertEquals(told, subject.code() + " " + caseOf(subject)));
    assertEquals(
        Subject.class.getPermittedSubclasses().length + 1, subjects.size(), "differ twice");
  }
}
