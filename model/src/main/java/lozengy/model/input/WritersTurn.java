package lozengy.model.input;

import java.io.Closeable;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;

/**
 * The turn of one writer of a file; others, in this process or in another, wait for theirs. It is a
 * lock that the system holds on a file beside it, so that it ends with the process, however that
 * ends; what a killed process leaves of it is taken over by the next.
 *
 * <p>The lock's file is removed with the turn. One who has waited for a file that was removed then
 * holds a lock on nothing. So whoever gets the lock writes a word of its own into the file and
 * reads it back by the file's name: only who finds it there has the turn, and only who has the turn
 * removes the file.
 */
final class WritersTurn implements Closeable {

  private static final String ENDING = ".lock";

  /** A turn takes as long as writing one file. Who waits longer waits for a process that hangs. */
  private static final long MOST_SECONDS = 60;

  private static final int SHORT_MILLIS = 2;
  private static final int LONG_MILLIS = 20;

  /** Beyond what is written: some systems let nobody read what is locked. */
  private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

  /** Places at which a writer of this process has its turn, or waits for other processes. */
  private static final Set<Path> TAKEN = new HashSet<>();

  private final Path place;
  private final Path lock;
  private final SplittableRandom random = new SplittableRandom();
  private final long start = System.nanoTime();
  private FileChannel locked;
  private FileChannel readBack;

  private WritersTurn(Path place) {
    this.place = place;
    this.lock = place.resolveSibling("." + place.getFileName() + ENDING);
  }

  /**
   * Waits for a turn.
   *
   * @param place where the file lies, see {@link WholeFile#place}
   * @throws InputException if another holds its turn for too long
   * @throws IOException if the folder cannot take the lock's file, or the system has no locks
   */
  static WritersTurn at(Path place) throws IOException {
    WritersTurn turn = new WritersTurn(place);
    turn.take();
    return turn;
  }

  private void take() throws IOException {
    while (!takeHere()) {
      pause();
    }
    boolean done = false;
    try {
      while (!takeFromOthers()) {
        pause();
      }
      done = true;
    } finally {
      if (!done) {
        giveHere();
      }
    }
  }

  private boolean takeHere() {
    synchronized (TAKEN) {
      return TAKEN.add(place);
    }
  }

  private void giveHere() {
    synchronized (TAKEN) {
      TAKEN.remove(place);
    }
  }

  private boolean takeFromOthers() throws IOException {
    boolean done = false;
    try {
      locked =
          FileChannel.open(
              lock, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
      done = locked.tryLock(LOCKED_BYTE, 1, false) != null && standsThere(signed());
    } catch (OverlappingFileLockException e) {
      // this process has it, under another spelling of the place
    } catch (AccessDeniedException e) {
      if (!Files.isWritable(lock.getParent())) {
        throw e;
      }
      // some systems open no file that is being removed
    } finally {
      if (!done) {
        closeChannels();
      }
    }
    return done;
  }

  private byte[] signed() throws IOException {
    String word = ProcessHandle.current().pid() + " " + System.nanoTime() + " " + random.nextLong();
    byte[] bytes = word.getBytes(StandardCharsets.US_ASCII);
    locked.truncate(0);
    locked.write(ByteBuffer.wrap(bytes), 0);
    return bytes;
  }

  private boolean standsThere(byte[] word) throws IOException {
    try {
      // Left open until the turn ends: on some systems closing it would end the lock.
      readBack = FileChannel.open(lock, StandardOpenOption.READ);
    } catch (NoSuchFileException e) {
      return false;
    }
    ByteBuffer found = ByteBuffer.allocate(word.length);
    readBack.read(found, 0);
    return Arrays.equals(found.array(), word);
  }

  private void pause() throws IOException {
    if (System.nanoTime() - start > TimeUnit.SECONDS.toNanos(MOST_SECONDS)) {
      throw new InputException(
          List.of(
              new Mistake(
                  BriefPath.ROOT,
                  0,
                  MistakeCode.BUSY.about(place),
                  "Another process has been writing " + place + " for " + MOST_SECONDS + " s",
                  "End it and try again; if none runs, remove " + lock)));
    }
    try {
      Thread.sleep(random.nextInt(SHORT_MILLIS, LONG_MILLIS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while waiting to write " + place);
    }
  }

  private void closeChannels() throws IOException {
    for (FileChannel channel : new FileChannel[] {readBack, locked}) {
      if (channel != null) {
        channel.close();
      }
    }
    readBack = null;
    locked = null;
  }

  @Override
  public void close() throws IOException {
    try {
      Files.deleteIfExists(lock);
    } finally {
      try {
        closeChannels();
      } finally {
        giveHere();
      }
    }
  }
}
