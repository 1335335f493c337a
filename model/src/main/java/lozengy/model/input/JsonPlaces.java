package lozengy.model.input;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;

/** Knows where in a value the writer is, and what is to be added there. */
final class JsonPlaces {

  private final Map<BriefPath, Map<String, String>> fields;
  private final Deque<Container> open = new ArrayDeque<>();

  /** A container that is not ended yet, and how far it is written. */
  private static final class Container {
    private final boolean list;
    private int items;
    private String field;

    private Container(boolean list) {
      this.list = list;
    }
  }

  JsonPlaces(Map<BriefPath, Map<String, String>> fields) {
    this.fields = new HashMap<>(fields);
  }

  void beginMapping() {
    value();
    open.push(new Container(false));
  }

  void beginList() {
    value();
    open.push(new Container(true));
  }

  void field(String name) {
    open.element().field = name;
  }

  /** That a value begins. */
  void value() {
    if (!open.isEmpty()) {
      open.element().items++;
    }
  }

  void endList() {
    open.pop();
  }

  /** Ends the mapping; gives what is to be added to it before. */
  Map<String, String> endMapping() {
    open.pop();
    Map<String, String> here = fields.remove(path());
    return here == null ? Map.of() : here;
  }

  private BriefPath path() {
    BriefPath path = BriefPath.ROOT;
    for (Iterator<Container> outer = open.descendingIterator(); outer.hasNext(); ) {
      Container each = outer.next();
      path = each.list ? path.item(each.items - 1) : path.field(each.field);
    }
    return path;
  }
}
