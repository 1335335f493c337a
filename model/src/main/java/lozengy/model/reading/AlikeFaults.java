package lozengy.model.reading;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.check.Fault;
import lozengy.model.layout.GroupedNames;
import lozengy.model.layout.Place;

/** Faults that say the same of other pieces, told in one sentence where they are many. */
final class AlikeFaults {

  /** So many are told one by one. */
  private static final int FEW = 3;

  private AlikeFaults() {}

  /** What a fault says of its pieces. */
  static String said(Blanket blanket, Fault fault) {
    String names = fault.pieces().isEmpty() ? "" : Words.pieces(blanket, fault.pieces());
    return fault.words().startsWith(names)
        ? fault.words().substring(names.length())
        : fault.words();
  }

  /** Sentences for faults that say the same of their pieces. */
  static List<String> words(Blanket blanket, List<Fault> faults) {
    String said = said(blanket, faults.get(0));
    if (faults.size() <= FEW || said.equals(faults.get(0).words())) {
      return faults.stream().map(Fault::words).toList();
    }
    List<Place> places = new ArrayList<>();
    for (Fault fault : faults) {
      fault.pieces().forEach(piece -> places.add(blanket.place(piece)));
    }
    String names = Words.list(GroupedNames.of(blanket.layout(), places));
    return List.of(
        names
            + said.replace(" joined along a side", " joined along " + faults.size() + " sides")
                .replace(" both have ", " all have ")
                .replace(" this piece", " these pieces"));
  }
}
