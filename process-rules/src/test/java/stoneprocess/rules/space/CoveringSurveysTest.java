package stoneprocess.rules.space;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.source.Card;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.decide.Topics;
import stoneprocess.rules.internal.run.Program;

/**
 * Every combination of three answers on a survey. Few floors of them can be worked on, since some answer stops each; so
 * a second array varies only what does not stop a floor. The property {@code space.rows} says how many rows of each are
 * planned.
 */
class CoveringSurveysTest {
    private static final int SLICE = 60;
    private static final CoveringSurveys ALL = CoveringSurveys.of(Parameters.standard(), GritSequence.standard());

    /** Answers of which some class stops or holds a floor, or leaves nothing to cut. */
    private static final Set<String> STOPPING = Set.of(
            "stone.laboratory",
            "stone.face",
            "stone.mix",
            "stone.identified-by",
            "stone.acid-drop",
            "stone.scriber",
            "build-up.sounding",
            "build-up.hazardous-layer",
            "condition.coating",
            "condition.cleaning-trial",
            "site.historic",
            "site.volts",
            "site.amps",
            "equipment.grades",
            "damages.flaking");

    @Test
    void any_three_answers_stand_together_in_every_combination() {
        List<CoveringSurveys.Column> columns = ALL.columns();
        List<int[]> seen = new ArrayList<>();
        for (int row = 0; row < ALL.size(); row++) {
            for (FloorSurvey survey : ALL.surveys(row)) {
                seen.add(columns.stream()
                        .mapToInt(column -> column.values().indexOf(answer(survey, column.name())))
                        .toArray());
            }
        }
        long combinations = 0;
        long missing = 0;
        for (int a = 0; a < columns.size(); a++) {
            int first = columns.get(a).values().size();
            for (int b = a + 1; b < columns.size(); b++) {
                int second = columns.get(b).values().size();
                for (int c = b + 1; c < columns.size(); c++) {
                    int third = columns.get(c).values().size();
                    BitSet met = new BitSet(first * second * third);
                    for (int[] row : seen) {
                        met.set((row[a] * second + row[b]) * third + row[c]);
                    }
                    combinations += (long) first * second * third;
                    missing += (long) first * second * third - met.cardinality();
                }
            }
        }
        System.out.printf(
                "%d answers, %,d combinations of three classes in %,d rows, %,d surveys%n",
                columns.size(), combinations, ALL.size(), seen.size());
        assertThat(missing)
                .as("a glazed face that a scriber scratches and acid attacks")
                .isEqualTo(1);
    }

    private static Optional<Object> answer(FloorSurvey survey, String name) {
        if (name.equals(CoveringSurveys.SPREAD)) {
            return Optional.of(Term.parse(
                    CoveringSurveys.Spread.class, survey.zones().get(0).name(), "zones"));
        }
        for (DamageKind kind : DamageKind.values()) {
            if (name.equals("damages." + kind.key())) {
                return survey.zones()
                        .get(0)
                        .damage(kind)
                        .value()
                        .flatMap(Damage::look)
                        .map(look -> (Object) look);
            }
        }
        return survey.answer(SurveyField.named(name)).value().map(value -> (Object) value);
    }

    @Test
    void every_row_is_answered_and_all_rows_together_make_every_class_of_answer_and_most_rules_speak() {
        List<String> workable = new ArrayList<>(Forgetting.names());
        workable.removeAll(STOPPING);
        CoveringSurveys worked = CoveringSurveys.of(Parameters.standard(), GritSequence.standard(), workable);
        int asked = Integer.getInteger("space.rows", SLICE);
        Advisor advisor = Advisor.standard();
        Map<Status, Integer> statuses = new EnumMap<>(Status.class);
        Set<String> silent = new TreeSet<>(advisor.rulebase().cards().stream()
                .filter(card -> Program.RECOMMEND
                        .stages()
                        .contains(Topics.named(card.topic()).stage()))
                .map(Card::id)
                .toList());
        int rules = silent.size();
        for (CoveringSurveys space : List.of(ALL, worked)) {
            int rows = Math.min(asked, space.size());
            IntStream.range(0, rows)
                    .map(i -> (int) ((long) i * space.size() / rows))
                    .mapToObj(space::surveys)
                    .flatMap(List::stream)
                    .map(advisor::recommend)
                    .forEach(answer -> {
                        statuses.merge(answer.status(), 1, Integer::sum);
                        reasons(answer).map(Reason::rule).forEach(silent::remove);
                    });
        }
        int draws = Math.min(5 * asked, 20_000);
        SurveyGenerator generator = SurveyGenerator.of(new Share(95));
        for (int seed = 0; seed < draws; seed++) {
            SurveyKind kind = SurveyKind.values()[seed % SurveyKind.values().length];
            Recommendation answer =
                    advisor.recommend(generator.draw(kind, Parameters.standard(), new SplittableRandom(seed)));
            statuses.merge(answer.status(), 1, Integer::sum);
            reasons(answer).map(Reason::rule).forEach(silent::remove);
        }
        System.out.printf(
                "%d and %d rows, %d of each planned: %s; of %d planning rules silent: %s%n",
                ALL.size(), worked.size(), asked, statuses, rules, silent);
        assertThat(statuses.keySet()).contains(Status.PLANNED, Status.PROVISIONAL, Status.REFUSED, Status.IMPASSE);
        boolean whole = asked >= Math.max(ALL.size(), worked.size());
        assertThat(silent).hasSizeLessThanOrEqualTo(whole ? rules / 40 : rules / 4);
    }

    private static Stream<Reason> reasons(Recommendation recommendation) {
        return recommendation.outcomes().stream()
                .filter(Decision.class::isInstance)
                .map(Decision.class::cast)
                .flatMap(decision -> Stream.of(decision.won(), decision.outweighed(), decision.vetoed()))
                .flatMap(List::stream);
    }
}
