package lozengy.range;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A range: a brief, and lists of sizes, palettes and looks to merge into it, each by its name, and
 * seeds. Every line of it is a function of its number.
 */
final class RangeFile {

  private static final String FORMAT = "range/1";
  private static final List<String> LISTS = List.of("sizes", "palettes", "looks");
  private static final Set<String> FIELDS =
      Set.of("format", "document", "sizes", "palettes", "looks", "seeds");
  private static final ObjectMapper YAML =
      new ObjectMapper(new YAMLFactory()).enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
  private static final ObjectMapper JSON = new ObjectMapper();

  private final ObjectNode document;
  private final List<List<Map.Entry<String, JsonNode>>> lists = new ArrayList<>();
  private final long firstSeed;
  private final long seeds;

  /**
   * A line.
   *
   * @param number from 1
   * @param size its name
   * @param palette its name
   * @param look its name
   * @param seed where the random source starts
   * @param json the line that batch reads
   */
  record Item(long number, String size, String palette, String look, long seed, String json) {}

  /**
   * Reads a range.
   *
   * @param text YAML
   * @throws IllegalArgumentException if something is wrong, with its place and a remedy
   */
  RangeFile(String text) {
    JsonNode root = tree(text);
    if (!FORMAT.equals(root.path("format").asText())) {
      throw wrong("format", root.path("format"), "begin the file with format: " + FORMAT);
    }
    Set<String> unknown = new TreeSet<>();
    root.fieldNames().forEachRemaining(unknown::add);
    unknown.removeAll(FIELDS);
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException(
          unknown + ": no such fields; give " + new TreeSet<>(FIELDS));
    }
    document = mapping("document", root.path("document"));
    for (String list : LISTS) {
      List<Map.Entry<String, JsonNode>> entries =
          List.copyOf(mapping(list, root.path(list)).properties());
      for (Map.Entry<String, JsonNode> each : entries) {
        mapping(list + "." + each.getKey(), each.getValue());
      }
      if (entries.isEmpty()) {
        throw wrong(list, root.path(list), "give one or more, each with what it changes, or {}");
      }
      lists.add(entries);
    }
    JsonNode from = root.path("seeds").path("from");
    JsonNode to = root.path("seeds").path("to");
    if (!from.isIntegralNumber() || !to.isIntegralNumber() || from.asLong() > to.asLong()) {
      throw wrong("seeds", root.path("seeds"), "give seeds: { from: 1, to: 5 }");
    }
    firstSeed = from.asLong();
    seeds = Math.addExact(Math.subtractExact(to.asLong(), firstSeed), 1);
    count();
  }

  private static JsonNode tree(String text) {
    try {
      return YAML.readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("The range is no YAML: " + e.getMessage(), e);
    }
  }

  private static ObjectNode mapping(String place, JsonNode node) {
    if (node instanceof ObjectNode object) {
      return object;
    }
    throw wrong(place, node, "give names with values, { name: ... }");
  }

  private static IllegalArgumentException wrong(String place, JsonNode found, String remedy) {
    String what = found.isMissingNode() ? "is missing" : "is " + found;
    return new IllegalArgumentException(place + " " + what + "; " + remedy);
  }

  /** How many lines it has. */
  long count() {
    long count = seeds;
    for (List<?> list : lists) {
      count = Math.multiplyExact(count, list.size());
    }
    return count;
  }

  /**
   * A line. Seeds change first, sizes last.
   *
   * @param index from 0, below the count
   */
  Item item(long index) {
    long rest = index / seeds;
    long seed = firstSeed + index % seeds;
    List<Map.Entry<String, JsonNode>> chosen = new ArrayList<>();
    for (int i = lists.size() - 1; i >= 0; i--) {
      List<Map.Entry<String, JsonNode>> list = lists.get(i);
      chosen.add(0, list.get((int) (rest % list.size())));
      rest /= list.size();
    }
    ObjectNode brief = document.deepCopy();
    for (Map.Entry<String, JsonNode> each : chosen) {
      merge(brief, (ObjectNode) each.getValue());
    }
    List<String> names = chosen.stream().map(Map.Entry::getKey).toList();
    ObjectNode line = JSON.createObjectNode();
    line.put("format", "lozengy-batch-line/1");
    line.put("id", String.join("/", names) + "/" + seed);
    line.put("seed", seed);
    line.set("document", brief);
    return new Item(index + 1, names.get(0), names.get(1), names.get(2), seed, line.toString());
  }

  /** As a JSON merge patch (RFC 7396): mappings are merged, null takes away, all else replaces. */
  private static void merge(ObjectNode into, ObjectNode patch) {
    for (Map.Entry<String, JsonNode> each : patch.properties()) {
      if (each.getValue().isNull()) {
        into.remove(each.getKey());
      } else if (each.getValue() instanceof ObjectNode inner) {
        ObjectNode held =
            into.get(each.getKey()) instanceof ObjectNode object
                ? object
                : into.putObject(each.getKey());
        merge(held, inner);
      } else {
        into.set(each.getKey(), each.getValue());
      }
    }
  }
}
