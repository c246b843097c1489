package org.mantice.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.mantice.search.DifferentPath.Answer;
import org.mantice.search.DifferentPath.Requirement;

class DifferentPathTest {
    private static final long NO_LIMIT = Long.MAX_VALUE;

    @Test
    void theBestPathThatDiffersEnoughFromOneIsBruteForce() {
        int found = 0;
        for (int seed = 0; seed < 300; seed++) {
            LayeredGraph graph = lattice(seed);
            ShortestPaths paths = ShortestPaths.of(graph);
            if (!paths.feasible()) continue;
            PathDifference difference = PathDifference.from(paths.best().orElseThrow());
            for (int least = 0; least <= 8; least++) {
                Requirement one = new Requirement(difference, least);

                Answer answer = DifferentPath.best(paths, List.of(one), NO_LIMIT, () -> false);

                assertThat(answer.path())
                        .as("seed %s, %s", seed, least)
                        .isEqualTo(bruteForce(graph, List.of(one), NO_LIMIT));
                assertThat(answer.proven()).isTrue();
                if (answer.path().isPresent()) found++;
            }
        }
        assertThat(found).isGreaterThan(700);
    }

    @Test
    void movesMayCountAsDifferencesAndSeveralAtOnce() {
        PathDifference difference = new PathDifference() {
            @Override
            public int state(int stage, int state) {
                return stage % 2 == 0 ? state : 0;
            }

            @Override
            public int move(int stage, int source, int target) {
                return source < target ? 2 : 0;
            }
        };
        for (int seed = 0; seed < 200; seed++) {
            LayeredGraph graph = lattice(seed);
            for (int least : new int[] {1, 3, 7}) {
                List<Requirement> one = List.of(new Requirement(difference, least));

                assertThat(DifferentPath.best(ShortestPaths.of(graph), one, NO_LIMIT, () -> false)
                                .path())
                        .as("seed %s, %s", seed, least)
                        .isEqualTo(bruteForce(graph, one, NO_LIMIT));
            }
        }
    }

    @Test
    void theBestPathThatDiffersEnoughFromTwoIsBruteForce() {
        for (int seed = 0; seed < 200; seed++) {
            LayeredGraph graph = lattice(seed);
            ShortestPaths paths = ShortestPaths.of(graph);
            List<Path> references = paths.best(2);
            List<Requirement> requirements = requirements(references, 1 + seed % 4);

            Answer answer = DifferentPath.best(paths, requirements, NO_LIMIT, () -> false);

            assertThat(answer.path()).as("seed %s", seed).isEqualTo(bruteForce(graph, requirements, NO_LIMIT));
            assertThat(answer.proven()).isTrue();
        }
    }

    @Test
    void nothingDearerThanTheLimitIsFound() {
        int beyond = 0;
        for (int seed = 0; seed < 200; seed++) {
            LayeredGraph graph = lattice(seed);
            ShortestPaths paths = ShortestPaths.of(graph);
            if (!paths.feasible()) continue;
            List<Requirement> one = requirements(paths.best(1), 2);
            long limit = paths.best().orElseThrow().cost() + 1;

            Answer answer = DifferentPath.best(paths, one, limit, () -> false);

            assertThat(answer.path()).as("seed %s", seed).isEqualTo(bruteForce(graph, one, limit));
            if (answer.path().isEmpty() && bruteForce(graph, one, NO_LIMIT).isPresent()) beyond++;
        }
        assertThat(beyond).isGreaterThan(10);
    }

    @Test
    void differentPathsConcedeNoMoreThanTheBest() {
        int conceding = 0;
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            LayeredGraph graph = Lattices.random(random, 6, 4, 4, 80, new ConcessionScale(2), 60);
            ShortestPaths paths = ShortestPaths.of(graph);
            List<Requirement> one = requirements(paths.best(1), 1);

            Answer answer = DifferentPath.best(paths, one, NO_LIMIT, () -> false);

            assertThat(answer.path()).as("seed %s", seed).isEqualTo(bruteForce(graph, one, NO_LIMIT));
            if (answer.path().isPresent() && answer.path().get().concessions() > 0) conceding++;
        }
        assertThat(conceding).isGreaterThan(10);
    }

    @Test
    void differencesFromManyAreMetAndWhatIsCalledProvenIsTheBest() {
        int found = 0;
        int proven = 0;
        int possible = 0;
        for (int seed = 0; seed < 300; seed++) {
            LayeredGraph graph = lattice(seed);
            ShortestPaths paths = ShortestPaths.of(graph);
            List<Requirement> requirements = requirements(paths.best(4), 3);
            Optional<Path> expected = bruteForce(graph, requirements, NO_LIMIT);

            Answer answer = DifferentPath.best(paths, requirements, NO_LIMIT, () -> false);

            answer.path().ifPresent(path -> assertThat(requirements).allMatch(one -> one.isMetBy(path)));
            if (expected.isPresent()) {
                possible++;
                long cost = expected.get().cost();
                answer.costBound().ifPresent(bound -> assertThat(bound).isLessThanOrEqualTo(cost));
                if (answer.proven())
                    assertThat(answer.path().orElseThrow().cost()).isEqualTo(cost);
            }
            if (answer.path().isPresent()) found++;
            if (answer.path().isPresent() && answer.proven()) proven++;
        }
        assertThat(possible).isGreaterThan(80);
        assertThat(found).isGreaterThan(possible * 3 / 4);
        assertThat(proven).isPositive();
    }

    @Test
    void nonsenseIsRefused() {
        PathDifference none = (stage, state) -> 0;
        PathDifference negative = (stage, state) -> -1;
        ShortestPaths paths = ShortestPaths.of(lattice(2));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Requirement(none, 9))
                .withMessage("least is 9; allowed: 0 to 8");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> DifferentPath.best(paths, List.of(new Requirement(negative, 1)), NO_LIMIT, () -> false))
                .withMessage("difference is -1; allowed: 0 or more");
        assertThatIllegalArgumentException().isThrownBy(() -> DifferentPath.best(paths, List.of(), -1, () -> false));
    }

    @Test
    void aCancelledSearchStops() {
        ShortestPaths paths = ShortestPaths.of(lattice(2));
        List<Requirement> one = requirements(paths.best(1), 1);

        assertThatThrownBy(() -> DifferentPath.best(paths, one, NO_LIMIT, () -> true))
                .isInstanceOf(CancellationException.class);
    }

    private static LayeredGraph lattice(int seed) {
        Random random = new Random(seed);
        return Lattices.random(random, 7, 4, 1 + random.nextInt(9), 70);
    }

    private static List<Requirement> requirements(List<Path> references, int least) {
        return references.stream()
                .map(path -> new Requirement(PathDifference.from(path), least))
                .toList();
    }

    private static Optional<Path> bruteForce(LayeredGraph graph, List<Requirement> requirements, long limit) {
        List<Path> all = Lattices.all(graph);
        return all.stream()
                .filter(path -> path.concessions() == all.get(0).concessions() && path.cost() <= limit)
                .filter(path ->
                        requirements.stream().allMatch(one -> one.difference().of(path) >= one.least()))
                .findFirst();
    }
}
