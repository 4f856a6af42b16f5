package stoneprocess.examples.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.site.GlossQuestion;
import stoneprocess.core.site.GritDone;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.sheet.GlossSheet;

/** Tells what a floor reads, could read and would read after its plan. */
@Command(
        name = "gloss",
        description = "Prints what a floor reads, what its stone could read, and what the plan would bring.",
        footer = {"", "A gloss is one argument, a number and its unit: \"2 GU\"."})
final class GlossCommand extends ConsoleCommand {
    private static final Map<String, String> OPTIONS = Map.of(
            "target", "--gloss", "within", "--within", "zone", "--zone", "grit", "--after", "passes", "--passes");

    private static final class HoldPoint {
        @Option(
                names = "--after",
                required = true,
                paramLabel = "GRIT",
                description = "A resin grit worked since the survey; may be repeated, in the order worked.")
        private int grit;

        @Option(
                names = "--passes",
                required = true,
                paramLabel = "NUMBER",
                description = "Passes of that grit done by then.")
        private int passes;

        @Option(
                names = "--reads",
                paramLabel = "GLOSS",
                description = "What the zone then read at 60 degrees, as \"25.8 GU,27 GU\".")
        private String reads = "";
    }

    @Parameters(paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Option(
            names = "--gloss",
            paramLabel = "GLOSS",
            description = "Gloss to reach at 60 degrees; without it the lower limit of the plan's finish.")
    private @Nullable String target;

    @Option(
            names = "--within",
            paramLabel = "GLOSS",
            description = "How close a zone's mean shall be known, either way: \"2 GU\" (default).",
            defaultValue = "2 GU")
    private String within = "";

    @Option(
            names = "--zone",
            paramLabel = "NAME",
            description = "Zone to forecast; without it the dullest of the open field.")
    private @Nullable String zone;

    @ArgGroup(exclusive = false, multiplicity = "0..*")
    private List<HoldPoint> holdPoints = new ArrayList<>();

    @Mixin
    private Reader reader = new Reader();

    @Override
    public Integer call() {
        GlossQuestion question = byOption(this::question);
        Recommendation recommendation = Advisor.standard().recommend(survey(survey));
        console().print(byOption(() -> reader.texts().page(GlossSheet.of(recommendation, question))));
        return ExitCode.DONE;
    }

    private GlossQuestion question() {
        return new GlossQuestion(
                Optional.ofNullable(target).map(text -> gloss("--gloss", text)),
                gloss("--within", within),
                Optional.ofNullable(zone),
                holdPoints.stream().map(GlossCommand::done).toList());
    }

    /** Names the option that stands for the field of the question. */
    private static <T> T byOption(Supplier<T> answer) {
        try {
            return answer.get();
        } catch (InvalidInputException e) {
            throw new InvalidInputException(OPTIONS.getOrDefault(e.field(), e.field()), e.value(), e.accepted());
        }
    }

    private static GritDone done(HoldPoint point) {
        List<Gloss> reads = Arrays.stream(point.reads.split(","))
                .filter(text -> !point.reads.isEmpty())
                .map(text -> gloss("--reads", text.strip()))
                .toList();
        return new GritDone(point.grit, point.passes, reads);
    }

    private static Gloss gloss(String option, String text) {
        if (Quantity.parse(text, option) instanceof Gloss gloss) {
            return gloss;
        }
        throw new InvalidInputException(option, text, "a gloss, for example 2 GU");
    }
}
