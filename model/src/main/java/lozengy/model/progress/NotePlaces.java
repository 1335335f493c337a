package lozengy.model.progress;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.brief.PieceNote;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;

/** Knows which wish brought a note into a brief, so that its mistakes are told as the wish's. */
final class NotePlaces {

  private final Map<PieceNote, String> places = new IdentityHashMap<>();

  void put(PieceNote note, String place) {
    places.put(note, place);
  }

  /** The wishes that brought notes, by the notes' indices. */
  Map<Integer, String> byIndex(List<PieceNote> notes) {
    Map<Integer, String> byIndex = new HashMap<>();
    for (int i = 0; i < notes.size(); i++) {
      if (places.containsKey(notes.get(i))) {
        byIndex.put(i, places.get(notes.get(i)));
      }
    }
    return byIndex;
  }

  /** A mistake with the wish in place of the note's path, where a wish brought the note. */
  Mistake placed(Mistake mistake, List<PieceNote> notes) {
    if (!mistake.path().inItem("pieces")) {
      return mistake;
    }
    String place = places.get(notes.get(mistake.path().index().getAsInt()));
    return place == null ? mistake : mistake.at(BriefPath.of(place), 0);
  }
}
