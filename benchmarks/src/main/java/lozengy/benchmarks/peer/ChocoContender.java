package lozengy.benchmarks.peer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.limits.FailCounter;
import org.chocosolver.solver.search.loop.lns.INeighborFactory;
import org.chocosolver.solver.search.loop.lns.neighbors.INeighbor;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.selectors.values.IntDomainRandom;
import org.chocosolver.solver.search.strategy.selectors.variables.DomOverWDeg;
import org.chocosolver.solver.variables.IntVar;

/**
 * Plain Choco on {@link ChocoModel}: dom/wdeg with random values for the first solution, and its
 * own large-neighbourhood search from there. As many solvers side by side as there are threads,
 * every other one with random neighbourhoods, the rest with propagation-guided ones; the best of
 * all counts.
 */
public final class ChocoContender implements Peer {

  /** Failures after which a neighbourhood is given up. */
  private static final int NEIGHBOURHOOD_FAILS = 100;

  private final int threads;

  /**
   * Makes it.
   *
   * @param threads solvers to run side by side
   */
  public ChocoContender(int threads) {
    this.threads = threads;
  }

  @Override
  public String name() {
    return "choco";
  }

  /** What one of the solvers brought. */
  private record Part(double statedSeconds, List<Incumbent> found, Proof proof) {}

  @Override
  public Run run(Blanket blanket, long seed, double limitSeconds) {
    return run(blanket, Optional.empty(), seed, limitSeconds);
  }

  @Override
  public Run from(Blanket blanket, Sequences start, long seed, double limitSeconds) {
    return run(blanket, Optional.of(start), seed, limitSeconds);
  }

  private Run run(Blanket blanket, Optional<Sequences> start, long seed, double limitSeconds) {
    Stopwatch watch = new Stopwatch();
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Part>> parts = new ArrayList<>();
      for (int thread = 0; thread < threads; thread++) {
        long own = seed * threads + thread;
        boolean guided = thread % 2 == 1;
        parts.add(pool.submit(() -> part(blanket, start, own, guided, watch, limitSeconds)));
      }
      List<Incumbent> found = new ArrayList<>();
      double statedSeconds = 0;
      Proof proof = Proof.NONE;
      for (Future<Part> future : parts) {
        Part part = future.get();
        found.addAll(part.found());
        statedSeconds = Math.max(statedSeconds, part.statedSeconds());
        proof = part.proof() == Proof.NONE ? proof : part.proof();
      }
      found.sort(Comparator.comparingDouble(Incumbent::seconds));
      return new Run(statedSeconds, watch.seconds(), found, proof, OptionalDouble.empty());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while solving", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a solver failed", e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private static Part part(
      Blanket blanket,
      Optional<Sequences> start,
      long seed,
      boolean guided,
      Stopwatch watch,
      double limitSeconds) {
    ChocoModel stated = new ChocoModel(blanket);
    double statedSeconds = watch.seconds();
    IntVar[] all = stated.all();
    Solver solver = stated.model().getSolver();
    solver.setSearch(
        Search.intVarSearch(new DomOverWDeg<>(all, seed), new IntDomainRandom(seed), all),
        Search.minDomLBSearch(stated.model().retrieveIntVars(true)));
    INeighbor neighbourhood =
        guided ? INeighborFactory.propagationGuided(seed, all) : INeighborFactory.random(seed, all);
    FailCounter fails = new FailCounter(stated.model(), NEIGHBOURHOOD_FAILS);
    if (start.isPresent()) {
      solver.setLNS(neighbourhood, fails, stated.solution(start.get()));
    } else {
      solver.setLNS(neighbourhood, fails);
    }
    solver.addStopCriterion(() -> watch.seconds() >= limitSeconds);
    List<Incumbent> found = new ArrayList<>();
    while (solver.solve()) {
      found.add(new Incumbent(watch.seconds(), stated.sequences()));
    }
    if (watch.seconds() >= limitSeconds) {
      return new Part(statedSeconds, found, Proof.NONE);
    }
    return new Part(statedSeconds, found, found.isEmpty() ? Proof.IMPOSSIBLE : Proof.NONE);
  }
}
