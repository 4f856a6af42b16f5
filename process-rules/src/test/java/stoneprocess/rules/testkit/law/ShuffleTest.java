package stoneprocess.rules.testkit.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.space.SurveyGenerator;

/** Rules and facts in drawn orders, on 2 to 16 threads at once; how many is set by the property audit.shuffles. */
class ShuffleTest {
    private static final int SHUFFLES = Integer.getInteger("audit.shuffles", 120);
    private static final int[] THREADS = {2, 4, 8, 16};
    private static final Respondent SHIPPED = Respondent.of(Advisor.standard());

    @Test
    void no_order_and_no_number_of_threads_makes_a_difference() throws Exception {
        List<FloorSurvey> floors = IntStream.range(0, 50)
                .mapToObj(i -> SurveyGenerator.of(new Share(100 - i % 5 * 10)).draw(new SplittableRandom(77 + i)))
                .toList();
        List<Recommendation> expected = floors.stream().map(SHIPPED::recommend).toList();
        int tried = 0;
        for (int threads : THREADS) {
            List<Callable<Boolean>> work = new ArrayList<>();
            for (int i = 0; i < SHUFFLES / THREADS.length; i++) {
                int floor = i % floors.size();
                long seed = 1_000_000L * threads + i;
                work.add(() -> SHIPPED.recommendInOrder(floors.get(floor), seed).equals(expected.get(floor)));
            }
            ExecutorService pool = Executors.newFixedThreadPool(threads);
            try {
                for (Future<Boolean> same : pool.invokeAll(work)) {
                    assertThat(same.get()).isTrue();
                    tried++;
                }
            } finally {
                pool.shutdownNow();
            }
        }
        System.out.printf("Orders of rules and facts tried on 2 to 16 threads: %d, no difference%n", tried);
        assertThat(tried).isEqualTo(SHUFFLES / THREADS.length * THREADS.length);
    }
}
