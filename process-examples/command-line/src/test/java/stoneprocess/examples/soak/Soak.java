package stoneprocess.examples.soak;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.space.SurveyGenerator;

/**
 * Eight threads of mixed calls on one advisor for as long as is asked, with what the process holds at every tenth of the
 * time: heap after collection, metaspace, threads, open files. It fails when a call fails or the heap has grown by more
 * than a quarter from the first tenth to the last. See {@code docs/reliability.md}.
 */
public final class Soak {
    private static final int THREADS = 8;
    private static final Advisor ADVISOR = Advisor.standard();

    private Soak() {}

    /** @param arguments the minutes */
    public static void main(String[] arguments) throws Exception {
        Duration whole = Duration.ofSeconds(Math.round(60 * Double.parseDouble(arguments[0])));
        Instant start = Instant.now();
        AtomicLong calls = new AtomicLong();
        AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < THREADS; i++) {
            SplittableRandom random = new SplittableRandom(i);
            Thread thread = new Thread(() -> {
                try {
                    while (failure.get() == null
                            && Duration.between(start, Instant.now()).compareTo(whole) < 0) {
                        call(random);
                        calls.incrementAndGet();
                    }
                } catch (Throwable thrown) {
                    failure.set(thrown);
                }
            });
            thread.start();
            threads.add(thread);
        }
        long first = 0;
        long last = 0;
        System.out.println("minutes  calls  heap MB  metaspace MB  threads  files");
        for (int tenth = 1; tenth <= 10; tenth++) {
            Thread.sleep(whole.dividedBy(10).toMillis());
            last = heapAfterCollection();
            first = tenth == 1 ? last : first;
            System.out.printf(
                    "%7.1f %6d %8.1f %13.1f %8d %6d%n",
                    Duration.between(start, Instant.now()).toSeconds() / 60.0,
                    calls.get(),
                    last / 1e6,
                    metaspace() / 1e6,
                    ManagementFactory.getThreadMXBean().getThreadCount(),
                    openFiles());
        }
        for (Thread thread : threads) {
            thread.join();
        }
        if (failure.get() != null) {
            throw new IllegalStateException("a call failed", failure.get());
        }
        if (last > first * 1.25) {
            throw new IllegalStateException("the heap grew from " + first + " to " + last + " bytes");
        }
    }

    private static void call(SplittableRandom random) {
        FloorSurvey survey =
                SurveyGenerator.of(new Share(40 + random.nextInt(61))).draw(random);
        Recommendation plan = ADVISOR.recommend(survey);
        switch (random.nextInt(40)) {
            case 0 -> ADVISOR.whatElse(survey);
            case 1 -> ADVISOR.howTo(survey, Topics.VERDICT, Subject.FLOOR, "go");
            case 2, 3, 4 -> ADVISOR.explain(plan).why(Topics.VERDICT, Subject.FLOOR);
            case 5, 6, 7 -> Json.RECOMMENDATION.read(Json.RECOMMENDATION.print(plan));
            default -> {
                if (plan.status() == Status.PLANNED
                        && !plan.plan().orElseThrow().tracks().isEmpty()) {
                    ADVISOR.followUp(plan, new JobLog("log", List.of()));
                    if (survey.answer(SurveyField.AREA).isKnown() && PlannedJob.isThere(plan)) {
                        PlannedJob.of(plan, JobOptions.defaults()).estimate();
                    }
                }
            }
        }
    }

    private static long heapAfterCollection() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    private static long metaspace() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getName().equals("Metaspace"))
                .map(MemoryPoolMXBean::getUsage)
                .mapToLong(usage -> usage.getUsed())
                .sum();
    }

    /** Open files of this process; -1 where the machine does not tell. */
    private static long openFiles() throws IOException {
        Path folder = Path.of("/proc/self/fd");
        if (!Files.isDirectory(folder)) {
            return -1;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }
}
