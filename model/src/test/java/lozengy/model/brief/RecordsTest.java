package lozengy.model.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import net.jqwik.api.Arbitrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a brief is made of, as programs make it: by withers, and without nulls. */
class RecordsTest {

  /** One of each record that random briefs are made of, with a value in every list where met. */
  private static final Map<Class<?>, List<Record>> MET = new LinkedHashMap<>();

  private static final List<Brief> BRIEFS = new ArrayList<>();

  @BeforeAll
  static void meet() {
    Arbitrary<Brief> briefs = BriefArbitraries.briefs();
    for (int i = 0; i < 120; i++) {
      Brief brief = briefs.sample();
      BRIEFS.add(brief);
      meet(brief);
    }
    // random briefs have no look, pile, joining or edging
    YarnUse use = new YarnUse("MUD", 3.5);
    Look look =
        Look.NONE
            .withZones(List.of(new Look.Zone(Where.BORDERS, List.of("MUD"))))
            .withApart(List.of(new Look.Pair("MUD", "REE")))
            .withCounts(List.of(new Look.Count("MUD", Where.BORDERS, 1, OptionalInt.empty())))
            .withFade(
                new Fade(Fade.Towards.TOP, Fade.Order.DARK_TO_LIGHT, List.of(), Where.EVERYWHERE));
    meet(
        BRIEFS
            .get(0)
            .withLook(look)
            .withPile(List.of(new PileEntry(PieceKind.SQUARE, List.of("MUD"), 1, Set.of())))
            .withJoining(Optional.of(use))
            .withEdging(List.of(use))
            .withExtras(new Extras(1, Map.of(BriefPath.ROOT, Map.of("x-id", "7"))))
            .withAround(new Extras(0, Map.of(BriefPath.of("score"), Map.of("x-id", "8")))));
  }

  private static void meet(Object value) {
    if (value instanceof Record record) {
      MET.computeIfAbsent(record.getClass(), type -> new ArrayList<>()).add(record);
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        meet(get(record, component));
      }
    } else if (value instanceof Collection<?> several) {
      several.forEach(RecordsTest::meet);
    } else if (value instanceof Map<?, ?> map) {
      map.values().forEach(RecordsTest::meet);
    } else if (value instanceof Optional<?> some) {
      some.ifPresent(RecordsTest::meet);
    }
  }

  private static Object get(Record record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }

  private static Object make(Class<?> type, Object[] values) throws Throwable {
    RecordComponent[] components = type.getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    for (int i = 0; i < types.length; i++) {
      types[i] = components[i].getType();
    }
    try {
      return type.getDeclaredConstructor(types).newInstance(values);
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }

  @Test
  void everyPartRefusesNullByItsName() {
    TreeSet<String> held = new TreeSet<>();
    for (Class<?> type : MET.keySet()) {
      if (!type.getPackage().equals(Brief.class.getPackage()) && type != LayoutSize.class) {
        continue;
      }
      RecordComponent[] components = type.getRecordComponents();
      for (int i = 0; i < components.length; i++) {
        if (components[i].getType().isPrimitive()) {
          continue;
        }
        Object[] values = new Object[components.length];
        for (int j = 0; j < values.length; j++) {
          values[j] = j == i ? null : get(MET.get(type).get(0), components[j]);
        }
        Throwable thrown =
            assertThrows(
                NullPointerException.class,
                () -> make(type, values),
                type.getSimpleName() + " takes null for " + components[i].getName());
        assertEquals(components[i].getName() + " is null", thrown.getMessage());
      }
      held.add(type.getSimpleName());
    }
    assertTrue(
        held.containsAll(
            List.of(
                "Ball",
                "BorderJoining",
                "Brief",
                "Contrast",
                "Count",
                "Counted",
                "Fade",
                "LayoutSize",
                "Look",
                "Motif",
                "Pair",
                "PartWorked",
                "PieceNote",
                "PileEntry",
                "Preferences",
                "Price",
                "Round",
                "Rules",
                "Sample",
                "Stitching",
                "Where",
                "Yarn",
                "YarnUse",
                "Zone")),
        held.toString());
  }

  @Test
  void listsRefuseNullInThem() {
    Brief brief = BRIEFS.get(0);
    List<Yarn> yarns = new ArrayList<>(brief.yarns());
    yarns.add(null);
    assertEquals(
        "yarns holds null",
        assertThrows(NullPointerException.class, () -> brief.withYarns(yarns)).getMessage());
  }

  @Test
  void briefAndYarnHaveAWitherForEveryPart() throws ReflectiveOperationException {
    Map<String, String> otherwise = Map.of("statedTone", "withTone", "counted", "withCount");
    for (Class<?> type : List.of(Brief.class, Yarn.class)) {
      for (RecordComponent component : type.getRecordComponents()) {
        if (component.getType() == Extras.class) {
          // what files carry along, and one wither for both places
          continue;
        }
        String name = component.getName();
        String usual = "with" + name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
        Method wither = type.getMethod(otherwise.getOrDefault(name, usual), component.getType());
        int changed = 0;
        List<Record> met = MET.get(type);
        for (int i = 1; i < met.size(); i++) {
          Record before = met.get(i - 1);
          Object value = get(met.get(i), component);
          Record after;
          try {
            after = assertInstanceOf(Record.class, wither.invoke(before, value));
          } catch (InvocationTargetException e) {
            // such as balls without a put-up
            assertInstanceOf(IllegalArgumentException.class, e.getCause(), name);
            continue;
          }
          for (RecordComponent each : type.getRecordComponents()) {
            Object wanted = each.getName().equals(name) ? value : get(before, each);
            assertEquals(wanted, get(after, each), name + ", " + each.getName());
          }
          changed += after.equals(before) ? 0 : 1;
        }
        assertTrue(changed > 0, "no wither of " + name + " was seen to change anything");
      }
    }
  }
}
