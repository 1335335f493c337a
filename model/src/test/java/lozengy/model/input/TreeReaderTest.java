package lozengy.model.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TreeReaderTest {

  private static Node read(String name, String text) {
    Mistakes mistakes = new Mistakes();
    Node root = TreeReader.read(SourceText.of(name, text), mistakes);
    mistakes.throwIfAny();
    return root;
  }

  private static String fault(String name, String text) {
    return assertThrows(InputException.class, () -> read(name, text)).getMessage();
  }

  private static String fault(byte[] bytes) {
    return assertThrows(
            InputException.class, () -> SourceText.read("a file", new ByteArrayInputStream(bytes)))
        .getMessage();
  }

  @Test
  void yamlKeepsLinesTextAndQuotes() {
    Node root = read("a.yaml", "a: 1.50\nb:\n  - NO\n  - \"x\"\n  - ~\n");
    assertEquals(
        new Node.Mapping(
            1,
            List.of(
                new Node.Field(1, "a", new Node.Scalar(1, "1.50", false)),
                new Node.Field(
                    2,
                    "b",
                    new Node.Items(
                        2,
                        List.of(
                            new Node.Scalar(3, "NO", false),
                            new Node.Scalar(4, "x", true),
                            new Node.Scalar(5, "~", false)))))),
        root);
  }

  @Test
  void jsonKeepsLinesTextAndQuotes() {
    Node root = read("a", "\n{\"a\": 1.50,\n \"b\": [\"x\", null,\n true]}");
    assertEquals(
        new Node.Mapping(
            2,
            List.of(
                new Node.Field(2, "a", new Node.Scalar(2, "1.50", false)),
                new Node.Field(
                    3,
                    "b",
                    new Node.Items(
                        3,
                        List.of(
                            new Node.Scalar(3, "x", true),
                            new Node.Scalar(3, "null", false),
                            new Node.Scalar(4, "true", false)))))),
        root);
  }

  @ParameterizedTest
  @CsvSource({
    "a.yaml, 'a: 1', false",
    "a.JSON, '[1]', true",
    "standard input, ' {\"a\": 1}', true",
    "standard input, 'a: {b: 1}', false",
  })
  void jsonIsToldByNameOrBrace(String name, String text, boolean json) {
    assertEquals(json, SourceText.of(name, text).json());
  }

  @Test
  void pathsLeadToLines() {
    Node root = read("a.yaml", "#\na:\n  - 1\n  -\n    b: 2\n");
    BriefPath a = BriefPath.of("a");
    assertEquals(2, root.lineAt(a));
    assertEquals(3, root.lineAt(a.item(0)));
    assertEquals(5, root.lineAt(a.item(1)));
    assertEquals(5, root.lineAt(a.item(1).field("b")));
    assertEquals(5, root.lineAt(a.item(1).field("b").part("x")));
    assertEquals(2, root.lineAt(a.item(9)));
    assertEquals(5, root.lineAt(a.item(1).field("c").field("d")));
    assertEquals(2, root.lineAt(BriefPath.of("z")));
    assertEquals(2, root.lineAt(BriefPath.ROOT));
    assertEquals(OptionalInt.of(5), root.lineOf(a.item(1).field("b")));
    assertEquals(OptionalInt.empty(), root.lineOf(a.item(9)));
  }

  @Test
  void aByteOrderMarkIsPassedOver() throws IOException {
    for (String text : List.of("{\"a\": 1}", "a: 1")) {
      byte[] bytes = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
      SourceText source = SourceText.read("a", new ByteArrayInputStream(bytes));
      assertEquals(text, source.text());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " \n\t\n"})
  void emptyTextIsTold(String text) {
    assertTrue(fault("a.yaml", text).startsWith("The input is empty. "));
    assertTrue(fault("a.json", text).startsWith("The input is empty. "));
  }

  @Test
  void nothingButCommentsIsTold() {
    assertTrue(fault("a.yaml", "# a\n\n# b\n").startsWith("The input holds nothing but comments"));
  }

  @Test
  void whatIsNoTextIsTold() {
    assertEquals(
        "line 2, The input is not UTF-8 text: it holds the byte 0xff. Check that it is a brief or"
            + " an arrangement, and save it as UTF-8",
        fault(new byte[] {'a', '\n', (byte) 0xff, 'b'}));
    assertTrue(fault(new byte[] {'a', (byte) 0xc3}).contains("the byte 0xc3"));
    assertTrue(
        fault(new byte[] {'a', 0, 'b'})
            .startsWith("line 1, The input is not UTF-8 text: it holds a zero byte"));
    assertTrue(
        fault("a: 1".getBytes(StandardCharsets.UTF_16)).startsWith("The input is UTF-16 text"));
    assertEquals(
        "line 2, This is not YAML: it holds the character U+0007. Take the character out",
        fault("a.yaml", "a: 1\nb: \u0007\n"));
  }

  @Test
  void tooLargeAnInputIsTold() {
    byte[] bytes = new byte[SourceText.MOST_YAML_BYTES + 1];
    Arrays.fill(bytes, (byte) '#');
    assertTrue(fault(bytes).startsWith("The input is larger than the 8 MiB that are read as YAML"));
  }

  @Test
  void nestingIsBounded() {
    assertTrue(
        fault("a.json", "[".repeat(50_000_000))
            .startsWith("line 1, The input is nested 32 deep or more"));
    assertTrue(
        fault("a.json", "{\"a\":".repeat(1000))
            .startsWith("line 1, The input is nested 32 deep or more"));
    for (String nested : List.of("[", "{a: ", "- ", "? ")) {
      String text = "# YAML\n" + nested.repeat(10_000);
      assertTrue(fault("a.yaml", text).startsWith("line 2, The input is nested 32 deep or more"));
    }
    StringBuilder stairs = new StringBuilder();
    for (int i = 0; i < 100; i++) {
      stairs.append(" ".repeat(i)).append("a:\n");
    }
    assertTrue(
        fault("a.yaml", stairs.toString()).startsWith("line 31, The input is nested 32 deep"));
    assertEquals(1, read("a.json", "[".repeat(31) + "]".repeat(31)).line());
  }

  @Test
  void whatAParserWouldTakeLongOverIsRefused() {
    String much = "a".repeat(5_000_000);
    assertTrue(
        fault("a.yaml", "a: 1\nb: " + much)
            .startsWith("line 2, The line holds 5,000,003 characters"));
    for (String text :
        List.of("\"" + much + "\"", "{\"" + much + "\": 1}", "[" + "1".repeat(5_000_000) + "]")) {
      assertTrue(
          fault("a.json", text).startsWith("The JSON text holds a name, a text or a number"));
    }
    assertTrue(
        fault("a.json", "[" + "[],".repeat(12_000_000))
            .startsWith("line 1, The input holds more than 12,000,000"));
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "|{\"a\": }|, |line 1, This is not JSON: Unexpected character ('}' (code 125)): expected a"
            + " value|",
        "|{\"a\": 1|, |line 1, This is not JSON: Unexpected end-of-input: expected close marker for"
            + " Object|",
        "|{\"a\": 1} x|, |line 1, This is not JSON: Unrecognized token 'x'|",
        "|{\"a\": 1} {}|, |line 1, Something follows after the end of the JSON text|",
        "|{\"a\": 1, \"a\": 2}|, |line 1, a: The field \"a\" is given twice|",
        "|{\"a\": [{\"b\": 1, \"b\": 2}]}|, |line 1, a[0].b: The field \"b\" is given twice|",
        "|{\"a\": 01}|, |line 1, This is not JSON: Invalid numeric value: Leading zeroes not"
            + " allowed|",
        "|{// no|, |line 1, This is not JSON: Unexpected character ('/' (code 47))|",
      })
  void badJsonIsTold(String text, String start) {
    String fault = fault("a.json", text);
    assertTrue(fault.startsWith(start), fault);
  }

  @Test
  void fieldsGivenTwiceAreToldInLongMappings() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 40; i++) {
      text.append("f").append(i % 39).append(": 1\n");
    }
    assertEquals(
        "line 40, f0: The field \"f0\" is given twice. Keep one of the two",
        fault("a.yaml", text.toString()));
  }
}
