package lozengy.report.compare;

import static lozengy.report.Decimals.metres;
import static lozengy.report.Decimals.toSix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.brief.Part;
import lozengy.model.compare.Compared;
import lozengy.model.compare.Comparison;
import lozengy.report.Json;

/** Gathers a comparison for programs; its JSON Schema is {@code compare-result-1.schema.json}. */
public final class ComparisonData {

  private ComparisonData() {}

  /** The comparison as maps, lists, strings and numbers. */
  public static Map<String, Object> of(Comparison comparison) {
    List<Map<String, Object>> all = new ArrayList<>();
    List<Map<String, Object>> changes = new ArrayList<>();
    for (int i = 0; i < comparison.all().size(); i++) {
      Compared each = comparison.all().get(i);
      all.add(
          Json.object(
              "file", each.label(),
              "total", toSix(each.score().total()),
              "parts", parts(each),
              "weights", weights(each),
              "keep", Optional.ofNullable(each.score().parts().get(Part.KEEP)).map(k -> toSix(k)),
              "least_left_m", metres(each.leastLeftMillimetres()),
              "left_m", left(each),
              "faults", each.faults(),
              "beaten_by", labels(comparison, comparison.beatenBy(i))));
      for (int j = 0; j < i; j++) {
        String first = comparison.all().get(j).label();
        comparison
            .changed(j, i)
            .ifPresent(
                changed ->
                    changes.add(
                        Json.object(
                            "first", first,
                            "second", each.label(),
                            "rounds_changed", changed.changed(),
                            "rounds_shared", changed.shared())));
      }
    }
    return Json.object("arrangements", all, "changes", changes);
  }

  private static List<String> labels(Comparison comparison, List<Integer> indices) {
    return indices.stream().map(index -> comparison.all().get(index).label()).toList();
  }

  private static Map<String, Object> parts(Compared each) {
    Map<String, Object> parts = new LinkedHashMap<>();
    for (Part part : Part.OF_TOTAL) {
      if (each.score().parts().containsKey(part)) {
        parts.put(part.word(), toSix(each.score().parts().get(part)));
      }
    }
    return parts;
  }

  private static Map<String, Object> weights(Compared each) {
    Map<String, Object> weights = new LinkedHashMap<>();
    for (Part part : Part.OF_TOTAL) {
      if (each.score().parts().containsKey(part)) {
        double weight = each.arrangement().blanket().brief().prefer().weight(part);
        weights.put(part.word(), toSix(weight));
      }
    }
    return weights;
  }

  private static Map<String, Object> left(Compared each) {
    Map<String, Object> left = new LinkedHashMap<>();
    each.leftMillimetres().forEach((code, millimetres) -> left.put(code, metres(millimetres)));
    return left;
  }
}
