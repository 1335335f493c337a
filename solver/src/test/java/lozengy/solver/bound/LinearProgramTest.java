package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What is put into a linear program, read back as scaled by hand. */
class LinearProgramTest {

  @Test
  void variablesAreScaledToRunFromNoughtToOne() {
    LinearProgram program = new LinearProgram();
    program.addConstant(5);
    int x = program.variable(-1, 3, 2);
    int s = program.squared(3, 2);
    assertEquals(2, program.variables());
    assertEquals(5 - 2, program.constant());
    assertEquals(8, program.gain(x));
    assertEquals(0, program.bend(x));
    assertEquals(0, program.gain(s));
    assertEquals(18, program.bend(s));
    assertEquals(0, program.value(x, 0.25));
    assertEquals(3, program.value(x, 1));
    assertEquals(1.5, program.value(s, 0.5));
  }

  /** The row 2x + y = 5 with x from -1 to 3 and y from 0 to 0.5 is 8x' + 0.5y' = 7 of parts. */
  @Test
  void rowsAreScaledByAPowerOfTwo() {
    LinearProgram program = new LinearProgram();
    int x = program.variable(-1, 3, 0);
    int y = program.variable(0, 0.5, 0);
    int none = program.variable(4, 4, 0);
    program.equalTo(5);
    program.put(x, 2);
    program.put(y, 1);
    program.atMost(1);
    program.put(y, -0.75);
    program.atMost(-3);
    program.put(none, 7);
    program.scale();
    assertEquals(3, program.rows());
    assertEquals(1 + 4 + 3 + 3, program.terms());
    assertTrue(program.equal(0));
    assertFalse(program.equal(1));
    assertEquals(0, program.start(0));
    assertEquals(2, program.start(1));
    assertEquals(3, program.start(2));
    assertEquals(4, program.start(3));
    assertEquals(x, program.column(0));
    assertEquals(y, program.column(1));
    assertEquals(1, program.coefficient(0));
    assertEquals(0.5 / 8, program.coefficient(1));
    assertEquals(7 / 8.0, program.right(0));
    // 0.375 lies between a quarter and a half
    assertEquals(-1.5, program.coefficient(2));
    assertEquals(4, program.right(1));
    assertEquals(0, program.coefficient(3));
    assertEquals(-3 - 28, program.right(2));
  }

  /** As many as make every array grow more than once. */
  @Test
  void largeProgramsHoldWhatIsPut() {
    LinearProgram program = new LinearProgram();
    for (int i = 0; i < 300; i++) {
      if (i % 2 == 0) {
        program.variable(i, i + 1.0, i);
      } else {
        program.squared(1, i);
      }
    }
    for (int row = 0; row < 400; row++) {
      if (row % 3 == 0) {
        program.equalTo(row);
      } else {
        program.atMost(row);
      }
      for (int entry = 0; entry < 3; entry++) {
        program.put((row + entry) % 300, row + entry);
      }
    }
    double constant = 0;
    for (int i = 0; i < 300; i++) {
      constant += i % 2 == 0 ? i * (double) i : 0;
      assertEquals(i % 2 == 0 ? i : 0, program.gain(i));
      assertEquals(i % 2 == 0 ? 0 : i, program.bend(i));
      assertEquals(i % 2 == 0 ? i + 1 : 1, program.value(i, 1));
    }
    assertEquals(constant, program.constant());
    assertEquals(1200.0 + 300 + 400 + 1, program.terms());
    for (int row = 0; row < 400; row++) {
      assertEquals(row % 3 == 0, program.equal(row));
      double right = row;
      for (int entry = 0; entry < 3; entry++) {
        int variable = (row + entry) % 300;
        assertEquals(variable, program.column(3 * row + entry));
        assertEquals(row + entry, program.coefficient(3 * row + entry));
        right -= variable % 2 == 0 ? (row + entry) * (double) variable : 0;
      }
      assertEquals(3 * row, program.start(row));
      assertEquals(right, program.right(row));
    }
    assertEquals(1200, program.start(400));
  }
}
