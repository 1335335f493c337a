package lozengy.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Alters kept inputs at random, by a seed: bytes, words of the formats, numbers, lines and
 * stretches of other inputs. It goes on from what the reader took, and learns nothing else of what
 * an input reaches; but it needs no agent in the JVM.
 */
final class Mutator {

  private static final int MOST_CHANGES = 5;
  private static final int MOST_BYTES = 4096;
  private static final int MOST_TAKEN = 200;

  /** Words between quotes in the fuzzer's dictionary, bytes of one character each. */
  private static final Pattern WORD = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)+)\"");

  private static final Pattern ESCAPE = Pattern.compile("\\\\(?:x([0-9a-f]{2})|(.))");

  private static final String[] NUMBERS = {
    "0",
    "-1",
    "1",
    "2",
    "7",
    "99",
    "101",
    "0.5",
    "1e3",
    "1e400",
    "1e-400",
    "2147483648",
    "-0",
    "9223372036854775808",
    "99999999999999999999.5",
    ".inf",
    ".nan",
    "NaN",
    "0x10",
    "1_000",
    "1,5"
  };

  private final List<byte[]> kept;
  private final List<byte[]> taken = new ArrayList<>();
  private final List<byte[]> words;
  private final SplittableRandom random;

  Mutator(List<byte[]> kept, String dictionary, long seed) {
    this.kept = kept;
    this.words = WORD.matcher(dictionary).results().map(word -> bytes(word.group(1))).toList();
    this.random = new SplittableRandom(seed);
  }

  private static byte[] bytes(String word) {
    Matcher escapes = ESCAPE.matcher(word);
    return escapes
        .replaceAll(
            escape ->
                Matcher.quoteReplacement(
                    escape.group(1) == null
                        ? escape.group(2)
                        : String.valueOf((char) Integer.parseInt(escape.group(1), 16))))
        .getBytes(StandardCharsets.ISO_8859_1);
  }

  /** The next input. */
  byte[] next() {
    byte[] input = any(taken.isEmpty() || random.nextBoolean() ? kept : taken);
    for (int i = random.nextInt(1 + random.nextInt(MOST_CHANGES)); i >= 0; i--) {
      input = changed(input);
    }
    return input.length > MOST_BYTES ? Arrays.copyOf(input, MOST_BYTES) : input;
  }

  /** Tells of an input that its reader took it. */
  void taken(byte[] input) {
    if (taken.size() < MOST_TAKEN) {
      taken.add(input);
    } else {
      taken.set(random.nextInt(MOST_TAKEN), input);
    }
  }

  private byte[] any(List<byte[]> from) {
    return from.get(random.nextInt(from.size()));
  }

  private byte[] changed(byte[] input) {
    int at = random.nextInt(input.length + 1);
    int to = Math.min(input.length, at + random.nextInt(1 + (1 << random.nextInt(8))));
    return switch (random.nextInt(10)) {
      case 0 -> joined(input, at, new byte[] {(byte) random.nextInt(256)}, Math.min(to, at + 1));
      case 1 -> joined(input, at, new byte[0], to);
      case 2 -> joined(input, at, Arrays.copyOfRange(input, at, to), at);
      case 3 -> joined(input, at, any(words), at);
      case 4 -> word(input, at);
      case 5 -> number(input, at);
      case 6 -> line(input, at);
      case 7 -> spliced(input, at);
      case 8 -> Arrays.copyOf(input, at);
      default -> flipped(input, at);
    };
  }

  /** What stands between two places makes way for something else. */
  private static byte[] joined(byte[] input, int from, byte[] between, int to) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(input, 0, from);
    out.writeBytes(between);
    out.write(input, to, input.length - to);
    return out.toByteArray();
  }

  private static byte[] flipped(byte[] input, int at) {
    byte[] flipped = input.clone();
    if (at < input.length) {
      flipped[at] ^= (byte) (1 << (at & 7));
    }
    return flipped;
  }

  /** The word at a place makes way for one of the formats. */
  private byte[] word(byte[] input, int at) {
    int from = at;
    while (from > 0 && isWord(input[from - 1])) {
      from--;
    }
    return joined(input, from, any(words), end(input, from));
  }

  private static int end(byte[] input, int from) {
    int to = from;
    while (to < input.length && isWord(input[to])) {
      to++;
    }
    return to;
  }

  private static boolean isWord(byte character) {
    return Character.isLetterOrDigit(character) || character == '-' || character == '.';
  }

  /** The next number makes way for one on the edge of what is read. */
  private byte[] number(byte[] input, int at) {
    int from = at;
    while (from < input.length && !Character.isDigit(input[from])) {
      from++;
    }
    String number = NUMBERS[random.nextInt(NUMBERS.length)];
    return joined(input, from, number.getBytes(StandardCharsets.US_ASCII), end(input, from));
  }

  /** The line at a place is left out, comes twice, or goes elsewhere. */
  private byte[] line(byte[] input, int at) {
    int from = lineStart(input, at);
    int to = from;
    while (to < input.length && input[to++] != '\n') {
      // to the end of the line
    }
    byte[] line = Arrays.copyOfRange(input, from, to);
    int way = random.nextInt(3);
    byte[] without = way == 0 ? input : joined(input, from, new byte[0], to);
    int there = lineStart(without, random.nextInt(without.length + 1));
    return way == 1 ? without : joined(without, there, line, there);
  }

  private static int lineStart(byte[] input, int at) {
    int from = at;
    while (from > 0 && input[from - 1] != '\n') {
      from--;
    }
    return from;
  }

  /** A stretch of another kept input comes in. */
  private byte[] spliced(byte[] input, int at) {
    byte[] other = any(kept);
    int from = random.nextInt(other.length + 1);
    int length = random.nextInt(1 + Math.min(other.length - from, 1 << random.nextInt(10)));
    return joined(input, at, Arrays.copyOfRange(other, from, from + length), at);
  }
}
