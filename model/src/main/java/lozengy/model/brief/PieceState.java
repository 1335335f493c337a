package lozengy.model.brief;

import java.util.Locale;

/** How far a piece has come. */
public enum PieceState {
  /** Free to change, but for what the brief locks. */
  PLANNED,
  /** Worked: its colours are fixed. */
  MADE,
  /** Worked and joined: its colours and its place are fixed. */
  JOINED;

  /** {@return the word used in files and on the terminal} */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
