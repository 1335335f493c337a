package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.RejectedExecutionException;
import org.junit.jupiter.api.Test;

/** Work is done on each, on as many threads as are asked for, and all of it is waited for. */
class LockstepTest {

  @Test
  void oneThreadIsTheCallersOwn() {
    Set<Thread> on = ConcurrentHashMap.newKeySet();
    try (Lockstep lockstep = new Lockstep(1)) {
      lockstep.run(List.of(1, 2, 3), each -> on.add(Thread.currentThread()));
    }
    assertEquals(Set.of(Thread.currentThread()), on);
  }

  @Test
  void severalWorkAtOnceAndEndWithTheProgram() {
    Set<Thread> on = ConcurrentHashMap.newKeySet();
    CountDownLatch both = new CountDownLatch(2);
    Set<Integer> done = ConcurrentHashMap.newKeySet();
    Lockstep lockstep = new Lockstep(2);
    lockstep.run(
        List.of(1, 2),
        each -> {
          on.add(Thread.currentThread());
          both.countDown();
          await(both);
          done.add(each);
        });
    assertEquals(Set.of(1, 2), done);
    assertEquals(2, on.size());
    assertTrue(on.stream().allMatch(Thread::isDaemon));
    assertTrue(on.stream().allMatch(thread -> thread.getName().equals("lozengy-walker")));
    lockstep.close();
    assertThrows(
        RejectedExecutionException.class, () -> lockstep.run(List.of(1, 2), each -> done.add(0)));
    assertFalse(done.contains(0));
  }

  @Test
  void whatFailsIsTold() {
    IllegalStateException cause = new IllegalStateException("of the work");
    try (Lockstep lockstep = new Lockstep(2)) {
      IllegalStateException told =
          assertThrows(
              IllegalStateException.class,
              () ->
                  lockstep.run(
                      List.of(1, 2),
                      each -> {
                        throw cause;
                      }));
      assertSame(cause, told.getCause());
    }
  }

  @Test
  void anInterruptedCallerWaitsToTheEndAndStaysInterrupted() {
    Set<Integer> done = ConcurrentHashMap.newKeySet();
    CountDownLatch begun = new CountDownLatch(2);
    try (Lockstep lockstep = new Lockstep(2)) {
      Thread.currentThread().interrupt();
      lockstep.run(
          List.of(1, 2),
          each -> {
            begun.countDown();
            await(begun);
            done.add(each);
          });
      assertTrue(Thread.interrupted());
      assertEquals(Set.of(1, 2), done);
      lockstep.run(List.of(3), done::add);
      assertFalse(Thread.interrupted());
    }
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
