package lozengy.model.stitch;

/** Whose names of stitches are meant. The same name may mean another stitch in the other terms. */
public enum Terms {
  /** North American. */
  US,
  /** British, also used in Australia and New Zealand. */
  UK;

  /** {@return the word used in files} */
  public String word() {
    return name();
  }

  /** {@return the others} */
  public Terms other() {
    return this == US ? UK : US;
  }
}
