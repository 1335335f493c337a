package lozengy.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ShellWordTest {

  @Test
  void aWordThatAShellWouldTakeApartStandsWithinQuotes() {
    assertEquals("throws/my-throw.json", ShellWord.of("throws/my-throw.json"));
    assertEquals("'my throw.json'", ShellWord.of("my throw.json"));
    assertEquals("'Anna'\\''s.json'", ShellWord.of("Anna's.json"));
    assertEquals("'a;b$c.json'", ShellWord.of("a;b$c.json"));
    assertEquals("''", ShellWord.of(""));
  }

  @Test
  void itStaysOnOneLine() {
    assertEquals("'a b'", ShellWord.of("a\nb"));
  }
}
