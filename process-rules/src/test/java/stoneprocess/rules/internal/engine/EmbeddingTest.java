package stoneprocess.rules.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.lang.reflect.Field;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.kie.api.runtime.KieSession;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.overlay.Overlay;

/** The library inside somebody else's program. */
class EmbeddingTest {
    private static Advisor builtAnew() {
        return Advisor.of(Rulebase.with(Overlay.none()), Options.defaults());
    }

    @Test
    void a_null_context_class_loader_makes_no_difference_and_is_left_alone() {
        Recommendation usual = Advisor.standard().recommend(Floors.wornGranite());
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        thread.setContextClassLoader(null);
        try {
            assertThat(builtAnew().recommend(Floors.wornGranite())).isEqualTo(usual);
            assertThat(thread.getContextClassLoader()).isNull();
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    @Test
    void a_context_class_loader_that_knows_nothing_of_the_library_makes_no_difference() throws Exception {
        Recommendation usual = Advisor.standard().recommend(Floors.wornGranite());
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        try (URLClassLoader stranger = new URLClassLoader(new URL[0], ClassLoader.getPlatformClassLoader())) {
            thread.setContextClassLoader(stranger);
            assertThat(builtAnew().recommend(Floors.wornGranite())).isEqualTo(usual);
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    @Test
    void an_isolated_class_loader_runs_a_library_of_its_own() throws Exception {
        String usual =
                Advisor.standard().recommend(Floors.unknownStone()).outcomes().toString();
        List<URL> urls = new ArrayList<>();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            urls.add(new File(entry).toURI().toURL());
        }
        try (URLClassLoader isolated =
                new URLClassLoader(urls.toArray(URL[]::new), ClassLoader.getPlatformClassLoader())) {
            Class<?> advisorClass = isolated.loadClass(Advisor.class.getName());
            assertThat(advisorClass).isNotEqualTo(Advisor.class);
            Class<?> surveyClass = isolated.loadClass(FloorSurvey.class.getName());
            Object survey = isolated.loadClass(Floors.class.getName())
                    .getMethod("unknownStone")
                    .invoke(null);
            Object advisor = advisorClass.getMethod("standard").invoke(null);
            Object recommendation =
                    advisorClass.getMethod("recommend", surveyClass).invoke(advisor, survey);
            Object outcomes = recommendation.getClass().getMethod("outcomes").invoke(recommendation);
            assertThat(outcomes.toString()).isEqualTo(usual);
        }
    }

    @Test
    void two_rulebases_work_side_by_side_in_many_threads() throws Exception {
        Advisor standard = Advisor.standard();
        Advisor house = Advisor.of(
                Rulebase.with(Overlay.none().switchOff("PRE-001", "site manager", "walls are tiled to the floor")),
                Options.defaults());
        Recommendation usual = standard.recommend(Floors.wornGranite());
        Recommendation changed = house.recommend(Floors.wornGranite());
        assertThat(changed.outcomes()).isNotEqualTo(usual.outcomes());

        ExecutorService pool = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Boolean>> calls = new ArrayList<>();
            for (int i = 0; i < 80; i++) {
                boolean even = i % 2 == 0;
                calls.add(() -> (even ? standard : house)
                        .recommend(Floors.wornGranite())
                        .equals(even ? usual : changed));
            }
            for (Future<Boolean> answer : pool.invokeAll(calls)) {
                assertThat(answer.get()).isTrue();
            }
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void sessions_do_not_pile_up_over_a_thousand_runs() throws Exception {
        Engine engine = new Engine(ShippedRules.load());
        for (int i = 0; i < 1_000; i++) {
            engine.start().close();
        }
        try (EngineRun run = engine.start()) {
            Field field = EngineRun.class.getDeclaredField("session");
            field.setAccessible(true);
            KieSession session = (KieSession) field.get(run);
            assertThat(session.getKieBase().getKieSessions()).hasSizeLessThanOrEqualTo(1);
            assertThat(session.getFactCount()).isZero();
            assertThat(session.getAgendaEventListeners())
                    .as("listeners of this run only")
                    .hasSize(1);
            assertThat(session.getRuleRuntimeEventListeners()).hasSize(1);
        }
    }
}
