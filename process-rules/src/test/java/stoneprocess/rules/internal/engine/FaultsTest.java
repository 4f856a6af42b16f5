package stoneprocess.rules.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.overlay.Overlay;

/** An advisor goes on being right after a call was torn in the middle, and while its surroundings change. */
class FaultsTest {
    private static final FloorSurvey FLOOR = Floors.wornGranite();
    private static final Recommendation USUAL = Advisor.standard().recommend(FLOOR);

    @Test
    void a_stack_that_ends_in_the_middle_of_a_call_leaves_the_advisor_as_it_was() throws Exception {
        Advisor advisor = Advisor.of(Rulebase.with(Overlay.none()), Options.defaults());
        assertThat(advisor.recommend(FLOOR)).isEqualTo(USUAL);
        int torn = 0;
        int answered = 0;
        for (int calls = 100; calls < 400_000; calls += calls / 5) {
            AtomicReference<@Nullable Object> ending = new AtomicReference<>();
            int below = calls;
            Thread thread = new Thread(null, () -> ending.set(recommendBelow(below, advisor)), "deep", 1 << 19);
            thread.start();
            thread.join();
            if (ending.get() instanceof StackOverflowError) {
                torn++;
            } else {
                assertThat(ending.get()).isEqualTo(USUAL);
                answered++;
            }
            assertThat(advisor.recommend(FLOOR)).isEqualTo(USUAL);
        }
        assertThat(torn).as("calls torn").isPositive();
        assertThat(answered).as("calls answered").isPositive();
    }

    private static Object recommendBelow(int calls, Advisor advisor) {
        try {
            return under(calls, advisor);
        } catch (StackOverflowError torn) {
            return torn;
        }
    }

    private static Object under(int calls, Advisor advisor) {
        return calls == 0 ? advisor.recommend(FLOOR) : under(calls - 1, advisor);
    }

    @Test
    void memory_that_ends_in_the_middle_of_a_call_leaves_the_advisor_as_it_was() throws Exception {
        Process process = new ProcessBuilder(List.of(
                        System.getProperty("java.home") + "/bin/java",
                        "-Xmx48m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        ShortOfMemory.class.getName()))
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        assertThat(said).contains("torn").contains("all right afterwards");
    }

    /** Takes all memory but a little, calls, gives it back, calls again. */
    static final class ShortOfMemory {
        private static @Nullable List<byte[]> taken = new ArrayList<>();

        private ShortOfMemory() {}

        public static void main(String[] arguments) {
            Advisor advisor = Advisor.standard();
            Recommendation usual = advisor.recommend(FLOOR);
            int torn = 0;
            for (int left = 0; left < 3; left++) {
                torn += recommendShort(advisor, left * 400) ? 1 : 0;
                if (!advisor.recommend(FLOOR).equals(usual)) {
                    throw new IllegalStateException("another answer after memory had ended");
                }
            }
            if (torn == 0) {
                throw new IllegalStateException("no call was torn");
            }
            System.out.println(torn + " calls torn, all right afterwards");
        }

        /** True where the call was torn; the given kibibytes are left to it. */
        private static boolean recommendShort(Advisor advisor, int kibibytes) {
            byte[] spared = new byte[kibibytes * 1024 + 1];
            List<byte[]> hoard = new ArrayList<>(100_000);
            taken = hoard;
            try {
                for (int size : new int[] {1 << 20, 1 << 15, 1 << 10}) {
                    hoard(hoard, size);
                }
                spared = null;
                advisor.recommend(FLOOR);
                return false;
            } catch (OutOfMemoryError ended) {
                return true;
            } finally {
                taken = null;
            }
        }

        private static void hoard(List<byte[]> hoard, int size) {
            try {
                while (true) {
                    hoard.add(new byte[size]);
                }
            } catch (OutOfMemoryError full) {
                // Smaller pieces follow.
            }
        }
    }

    @Test
    void a_thread_that_is_interrupted_plans_and_follows_and_stays_interrupted() {
        JobLog log = new JobLog("log", List.of());
        Object usual = Advisor.standard().followUp(USUAL, log);
        Thread.currentThread().interrupt();
        try {
            assertThat(Advisor.standard().recommend(FLOOR)).isEqualTo(USUAL);
            assertThat(Advisor.standard().followUp(USUAL, log)).isEqualTo(usual);
            assertThat(Thread.currentThread().isInterrupted()).isTrue();
        } finally {
            Thread.interrupted();
        }
    }

    @Test
    void a_class_loader_that_is_closed_under_it_makes_no_other_answer() throws Exception {
        List<URL> urls = new ArrayList<>();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            urls.add(new File(entry).toURI().toURL());
        }
        URLClassLoader isolated = new URLClassLoader(urls.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
        Object advisor = isolated.loadClass(Advisor.class.getName())
                .getMethod("standard")
                .invoke(null);
        Method recommend = advisor.getClass().getMethod("recommend", isolated.loadClass(FloorSurvey.class.getName()));
        Class<?> floors = isolated.loadClass(Floors.class.getName());
        Object floor = floors.getMethod("wornGranite").invoke(null);
        Object before = recommend.invoke(advisor, floor);
        isolated.close();
        assertThat(recommend.invoke(advisor, floor)).isEqualTo(before);
        try {
            Object other =
                    recommend.invoke(advisor, floors.getMethod("unknownStone").invoke(null));
            assertThat(other.getClass().getMethod("outcomes").invoke(other).toString())
                    .isEqualTo(Advisor.standard()
                            .recommend(Floors.unknownStone())
                            .outcomes()
                            .toString());
        } catch (InvocationTargetException missing) {
            assertThat(missing.getCause()).isInstanceOf(LinkageError.class);
        }
    }

    @Test
    void defaults_of_language_and_time_that_change_between_calls_make_no_difference() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        String usual = Json.RECOMMENDATION.print(USUAL);
        try {
            for (String tag : List.of("ar-EG", "tr-TR", "th-TH-u-nu-thai", "de-DE")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
                assertThat(Advisor.standard().recommend(FLOOR)).as(tag).isEqualTo(USUAL);
                assertThat(Advisor.standard().recommend(FLOOR).toString())
                        .as(tag)
                        .isEqualTo(USUAL.toString());
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
