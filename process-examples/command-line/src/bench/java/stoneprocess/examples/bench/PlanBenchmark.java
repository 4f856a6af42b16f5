package stoneprocess.examples.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import stoneprocess.core.answer.Explanation;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.Advisor;

/** What it costs to plan a floor, and to explain all of the plan beside it. Read the ratio, not the times. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 10, time = 8)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PlanBenchmark {
    @Param({"ferry-hall-granite", "reading-room-marble"})
    private String sample = "";

    private final Advisor advisor = Advisor.standard();
    private FloorSurvey survey = FloorSurvey.builder("not read yet").build();

    /** Reads the shipped sample. */
    @Setup
    public void read() throws IOException {
        survey = Json.SURVEY.read(Files.readString(Path.of("surveys", sample + ".json")));
    }

    /** The recommendation alone. */
    @Benchmark
    public Recommendation plan() {
        return advisor.recommend(survey);
    }

    /** The recommendation, why each of its decisions, and why not each other value of their domains. */
    @Benchmark
    public Recommendation planAndExplainAll(Blackhole answers) {
        Recommendation recommendation = advisor.recommend(survey);
        Explanation explanation = advisor.explain(recommendation);
        for (Matter matter : explanation.matters()) {
            Topic<?> topic = matter.topic();
            answers.consume(explanation.why(topic, matter.subject()));
            for (String value : explanation.alternatives(topic, matter.subject())) {
                answers.consume(explanation.whyNot(topic, matter.subject(), value));
            }
        }
        return recommendation;
    }
}
