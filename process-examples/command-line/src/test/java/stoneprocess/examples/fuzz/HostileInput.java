package stoneprocess.examples.fuzz;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.stone.Stone;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.examples.command.FloorCommand;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.RulesJson;
import stoneprocess.rules.overlay.Overlay;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.PlanText;
import stoneprocess.rules.text.document.Texts;

/**
 * Doors through which somebody else's bytes come in. Whatever the bytes are, the door lets through what it understands
 * or refuses with one line that names the field; anything else that is thrown is a fault.
 */
enum HostileInput {
    /** A survey as text, planned when it can be read. */
    SURVEY {
        @Override
        boolean enter(byte[] bytes) {
            Json.SURVEY.print(plan(Json.SURVEY.read(text(bytes))).survey());
            return true;
        }
    },

    /** A survey put together of the library's own words: each two bytes answer one question. */
    ANSWERS {
        @Override
        boolean enter(byte[] bytes) {
            Recommendation plan = plan(answered(bytes));
            TEXTS.page(PLAN_TEXT.document(plan, Detail.BRIEF));
            if (PlannedJob.isThere(plan)) {
                Estimate estimate = PlannedJob.of(plan, JobOptions.defaults()).estimate();
                if (estimate.clock().low().compareTo(estimate.clock().high()) > 0) {
                    throw new IllegalStateException("hours fall from low to high");
                }
            }
            return true;
        }
    },

    /** A job log as text, followed when it can be read. */
    JOB_LOG {
        @Override
        boolean enter(byte[] bytes) {
            JobLog log = Json.JOB_LOG.read(text(bytes));
            Json.NEXT_MOVE.print(ADVISOR.followUp(FERRY_HALL, log));
            return true;
        }
    },

    /** A house's own rules as text. A rulebase takes long to build, so that one in 64 is built. */
    HOUSE_RULES {
        @Override
        boolean enter(byte[] bytes) {
            Overlay overlay = RulesJson.OVERLAY.read(text(bytes));
            RulesJson.OVERLAY.print(overlay);
            if (Arrays.hashCode(bytes) % 64 != 0) {
                return false;
            }
            Advisor.of(Rulebase.with(overlay), Options.defaults()).recommend(FERRY_HALL.survey());
            return true;
        }
    },

    /** A price list as text, and the cost of a job by it. */
    PRICE_LIST {
        @Override
        boolean enter(byte[] bytes) {
            PriceList prices = Json.PRICE_LIST.read(text(bytes));
            Json.COST.print(prices.cost(ESTIMATE));
            return false;
        }
    },

    /** A stored recommendation as text, explained when it is one of this rulebase. */
    STORED {
        @Override
        boolean enter(byte[] bytes) {
            Recommendation stored = Json.RECOMMENDATION.read(text(bytes));
            TEXTS.page(PLAN_TEXT.document(stored, Detail.BRIEF));
            ADVISOR.followUp(stored, new JobLog("log", List.of()));
            return true;
        }
    },

    /** A command line: the first line of the text is its arguments, the rest is its standard input. */
    COMMAND {
        @Override
        boolean enter(byte[] bytes) {
            String[] lines = text(bytes).split("\n", 2);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            int exit = FloorCommand.run(
                    lines[0].isEmpty() ? new String[0] : lines[0].split(" "),
                    new ByteArrayInputStream((lines.length > 1 ? lines[1] : "").getBytes(StandardCharsets.UTF_8)),
                    new PrintStream(out, true, StandardCharsets.UTF_8),
                    new PrintStream(err, true, StandardCharsets.UTF_8));
            String said = err.toString(StandardCharsets.UTF_8);
            if (!EXITS.contains(exit) || said.contains("\tat ")) {
                throw new IllegalStateException("exit " + exit + ": " + said);
            }
            return exit == 0 && out.size() > 1000;
        }
    };

    private static final Set<Integer> EXITS = Set.of(0, 2, 3);
    private static final Advisor ADVISOR = Advisor.standard();
    private static final PlanText PLAN_TEXT = new PlanText(ADVISOR.rulebase().cards());
    private static final Texts TEXTS = Texts.english();
    private static final Recommendation FERRY_HALL = plan(Json.SURVEY.read(sample("surveys/ferry-hall-granite.json")));
    private static final Estimate ESTIMATE =
            PlannedJob.of(FERRY_HALL, JobOptions.defaults()).estimate();

    /**
     * Takes the bytes in.
     *
     * @return whether they came as far as a plan, or as far as this door leads
     * @throws InvalidInputException when they are refused, as they may be
     */
    abstract boolean enter(byte[] bytes);

    static String sample(String path) {
        try {
            return Files.readString(Path.of(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Recommendation plan(FloorSurvey survey) {
        return ADVISOR.recommend(survey);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static FloorSurvey answered(byte[] bytes) {
        FloorSurvey.Builder builder = bytes.length % 2 == 0
                ? FERRY_HALL.survey().toBuilder()
                : FloorSurvey.builder("answered").zones(FERRY_HALL.survey().zones());
        List<SurveyField<?>> fields = SurveyField.all();
        for (int i = 0; i + 1 < bytes.length; i += 2) {
            SurveyField<?> field = fields.get(Byte.toUnsignedInt(bytes[i]) % fields.size());
            int chosen = Byte.toUnsignedInt(bytes[i + 1]);
            if (chosen == 255) {
                builder.unknown(field);
            } else {
                answer(builder, field, chosen);
            }
        }
        return builder.build();
    }

    private static void answer(FloorSurvey.Builder builder, SurveyField<?> field, int chosen) {
        if (field.kind() instanceof FieldKind.Choice choice) {
            Object[] words = choice.type().getEnumConstants();
            builder.put(field, words[chosen % words.length]);
        } else if (field.kind() instanceof FieldKind.Choices choices) {
            Object[] words = choices.type().getEnumConstants();
            builder.put(field, Set.of(words[chosen % words.length]));
        } else if (field.kind() instanceof FieldKind.Measure measure) {
            double low = measure.limits().low();
            double value = low + (measure.limits().high() - low) * Math.pow(chosen / 254.0, 4);
            builder.put(
                    field,
                    Quantity.of(BigDecimal.valueOf(value), measure.dimension().unit()));
        } else if (field.kind() instanceof FieldKind.StoneName) {
            List<Stone> stones = StoneCatalogue.standard().all();
            builder.put(field, stones.get(chosen % stones.size()).name());
        }
    }

    /** Words that a mutator may put in, one a line, as it wants them. */
    static String words() {
        StringBuilder words = new StringBuilder();
        SurveyField.all()
                .forEach(field ->
                        words.append(quoted(field.name().substring(field.name().indexOf('.') + 1))));
        for (DamageKind kind : DamageKind.values()) {
            words.append(quoted(kind.key()));
        }
        List.of("unknown", "1e999", "-0", "\\x00", "\\xff", "GU", "mm", "m2", "null", "[", "{", "format")
                .forEach(word -> words.append(quoted(word)));
        return words.toString();
    }

    private static String quoted(String word) {
        return "\"" + word + "\"\n";
    }
}
