package stoneprocess.core.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.WavinessClass;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Derived;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

class TopicTest {
    private static final Choice<Finish> FLOOR =
            Choice.of("finish", Stage.GO_NO_GO, Scope.FLOOR, PolicyKind.ONE, Finish.class);
    private static final Choice<Finish> STEP =
            Choice.of("sheen", Stage.EQUIPMENT, Scope.STEP, PolicyKind.ONE, Finish.class);

    @Test
    void contributions_are_sets_in_the_order_of_the_domain() {
        assertThat(values(FLOOR.need(Finish.POLISH, Finish.HONE))).isEqualTo(List.of(Finish.HONE, Finish.POLISH));
        assertThat(values(FLOOR.needAtLeast(Finish.POLISH))).isEqualTo(List.of(Finish.POLISH, Finish.HIGH_GLOSS));
        assertThat(values(FLOOR.needAtMost(Finish.SATIN))).isEqualTo(List.of(Finish.HONE, Finish.SATIN));
        assertThat(values(FLOOR.vetoAbove(Finish.POLISH))).isEqualTo(List.of(Finish.HIGH_GLOSS));
        assertThat(values(FLOOR.wish(Finish.POLISH, Finish.HONE))).isEqualTo(List.of(Finish.POLISH, Finish.HONE));
    }

    private static List<?> values(Contribution contribution) {
        return contribution.values();
    }

    @Test
    void a_set_from_the_lowest_or_to_the_highest_value_is_the_whole_domain() {
        List<Finish> all = List.of(Finish.values());
        assertThat(values(FLOOR.needAtLeast(Finish.HONE))).isEqualTo(all);
        assertThat(values(FLOOR.needAtMost(Finish.HIGH_GLOSS))).isEqualTo(all);
        assertThat(values(FLOOR.needAtLeast(Finish.HIGH_GLOSS))).isEqualTo(List.of(Finish.HIGH_GLOSS));
        assertThat(values(FLOOR.needAtMost(Finish.HONE))).isEqualTo(List.of(Finish.HONE));
        assertThat(values(FLOOR.vetoAbove(Finish.HIGH_GLOSS))).isEqualTo(List.of());
        assertThat(values(FLOOR.vetoAbove(Finish.HONE))).isEqualTo(all.subList(1, all.size()));
    }

    @ParameterizedTest
    @EnumSource(Finish.class)
    void a_veto_above_excludes_what_a_need_at_most_does_not_allow(Finish value) {
        List<Object> both = new ArrayList<>(values(FLOOR.needAtMost(value)));
        both.addAll(values(FLOOR.vetoAbove(value)));
        assertThat(both).isEqualTo(List.of(Finish.values()));
    }

    @Test
    void a_contribution_says_what_it_is() {
        assertThat(List.of(
                        FLOOR.need(Finish.HONE).kind(),
                        FLOOR.needAtLeast(Finish.HONE).kind(),
                        FLOOR.needAtMost(Finish.HONE).kind(),
                        FLOOR.need(Set.of(Finish.HONE)).kind()))
                .containsOnly(ContributionKind.NEED);
        assertThat(FLOOR.wish(Finish.HONE).kind()).isEqualTo(ContributionKind.WISH);
        assertThat(FLOOR.veto(Finish.HONE).kind()).isEqualTo(ContributionKind.VETO);
        assertThat(FLOOR.vetoAbove(Finish.HONE).kind()).isEqualTo(ContributionKind.VETO);
        assertThat(FLOOR.veto(Finish.POLISH, Finish.HONE))
                .isEqualTo(FLOOR.on(Subject.FLOOR).veto(Finish.HONE, Finish.POLISH));
        assertThat(FLOOR.need(Set.of(Finish.POLISH, Finish.HONE))).isEqualTo(FLOOR.need(Finish.HONE, Finish.POLISH));
    }

    @Test
    void the_order_of_a_wish_matters_and_that_of_a_need_does_not() {
        assertThat(FLOOR.wish(Finish.POLISH, Finish.HONE)).isNotEqualTo(FLOOR.wish(Finish.HONE, Finish.POLISH));
        assertThat(FLOOR.need(Finish.POLISH, Finish.HONE)).isEqualTo(FLOOR.need(Finish.HONE, Finish.POLISH));
    }

    @Test
    void a_value_outside_the_domain_is_refused_with_the_domain() {
        assertThatThrownBy(() -> new Contribution(
                        ContributionKind.WISH, FLOOR, Subject.FLOOR, List.of(Finish.HONE, WavinessClass.FLAT)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("finish: 'hone, flat' is not accepted; accepted: some of hone, satin, semi-gloss, polish,"
                        + " high-gloss");
    }

    static Stream<Arguments> scopes() {
        Subject track = new Subject.OfTrack(TrackKind.EDGE);
        Subject step = new Subject.OfStep(TrackKind.EDGE, "resin-800");
        Subject zone = new Subject.OfZone("lane");
        return Stream.of(
                Arguments.of(Scope.FLOOR, Subject.FLOOR, List.of(track, step, zone)),
                Arguments.of(Scope.TRACK, track, List.of(step, zone)),
                Arguments.of(Scope.STEP, step, List.of(Subject.FLOOR, track, zone)));
    }

    @Test
    void what_is_said_about_the_floor_counts_for_its_tracks() {
        Choice<Finish> topic = Choice.of("sheen", Stage.EQUIPMENT, Scope.TRACK, PolicyKind.ONE, Finish.class);
        assertThat(topic.wish(Finish.HONE).subject()).isEqualTo(Subject.FLOOR);
    }

    @ParameterizedTest
    @MethodSource("scopes")
    void a_topic_is_decided_for_subjects_of_its_scope_only(Scope scope, Subject fits, List<Subject> others) {
        Choice<Finish> topic = Choice.of("sheen", Stage.EQUIPMENT, scope, PolicyKind.ONE, Finish.class);
        assertThat(topic.on(fits).wish(Finish.HONE).subject()).isEqualTo(fits);
        for (Subject other : others) {
            assertThatThrownBy(() -> topic.on(other).wish(Finish.HONE))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessage("sheen.subject: '" + other.key() + "' is not accepted; accepted: a " + scope.key());
        }
    }

    @Test
    void a_topic_tells_how_it_is_closed() {
        assertThat(FLOOR.domain()).containsExactly(Finish.values());
        assertThat(FLOOR.isCautiousFirst()).isFalse();
        assertThat(FLOOR.isBlocking()).isFalse();
        assertThat(FLOOR.whenUncertain()).isEmpty();
        Choice<Finish> strict = FLOOR.cautiousFirst().blocking().whenUncertain(Finish.SATIN);
        assertThat(strict.isCautiousFirst()).isTrue();
        assertThat(strict.isBlocking()).isTrue();
        assertThat(strict.whenUncertain()).contains(Finish.SATIN);
        assertThat(strict.id()).isEqualTo(FLOOR.id());
        assertThat(strict.policy()).isEqualTo(PolicyKind.ONE);
        assertThat(FLOOR.isBlocking()).isFalse();
    }

    @Test
    void of_the_derived_topics_only_the_path_ends_the_planning() {
        for (Topic<?> topic : Topics.all()) {
            if (topic instanceof Derived) {
                assertThat(topic.domain()).isEmpty();
                assertThat(topic.isBlocking()).as(topic.id()).isEqualTo(topic == Topics.GRIT_PATH);
            }
        }
    }

    @Test
    void values_are_found_again_by_their_keys() {
        foundAgain(Topics.FINISH, List.of(Finish.SATIN, Finish.HONE), "satin", "hone");
        foundAgain(
                Topics.GRIT_PATH,
                List.of(new Grit(Bond.METAL, 60), new Grit(Bond.RESIN, 800)),
                "metal-60",
                "resin-800");
        foundAgain(Topics.PASSES, List.of(Range.of(4, 6)), "4", "6");
        foundAgain(Topics.LITRES, List.of(Range.of(new Volume(2.5), new Volume(10))), "2.5 l", "10 l");
        foundAgain(Topics.LITRES, List.of());
    }

    private static <V> void foundAgain(Topic<V> topic, List<V> values, String... keys) {
        assertThat(topic.keys(values)).containsExactly(keys);
        assertThat(topic.parse(List.of(keys), "values")).isEqualTo(values);
    }

    @Test
    void keys_of_no_value_are_refused_with_the_field() {
        for (ThrowingCallable parse : List.<ThrowingCallable>of(
                () -> Topics.FINISH.parse(List.of("shiny"), "values"),
                () -> Topics.GRIT_PATH.parse(List.of("resin-0"), "values"),
                () -> Topics.GRIT_PATH.parse(List.of("resin-30001"), "values"),
                () -> Topics.GRIT_PATH.parse(List.of("wood-60"), "values"),
                () -> Topics.PASSES.parse(List.of("4"), "values"),
                () -> Topics.PASSES.parse(List.of("6", "4"), "values"),
                () -> Topics.PASSES.parse(List.of("4", "many"), "values"),
                () -> Topics.LITRES.parse(List.of("4 mm", "5 mm"), "values"))) {
            assertThatThrownBy(parse).isInstanceOf(InvalidInputException.class).hasMessageStartingWith("values: ");
        }
    }

    @Test
    void a_card_speaks_about_a_choice_and_nothing_else() {
        assertThat(Topics.choice("finish")).isEqualTo(Topics.FINISH);
        for (String id : List.of("litres", "carpet")) {
            assertThatThrownBy(() -> Topics.choice(id))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith("topic: '" + id + "' is not accepted; accepted: one of stone, verdict");
        }
    }

    @Test
    void a_decision_gives_its_value_only_when_it_has_one() {
        assertThat(decision(Finish.HONE).value()).isEqualTo(Finish.HONE);
        assertThat(decision(Finish.HONE).key()).isEqualTo("hone");
        assertThatThrownBy(() -> decision().value())
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("finish of floor: '0 values' is not accepted; accepted: one value");
        assertThatThrownBy(() -> decision(Finish.HONE, Finish.SATIN).value()).isInstanceOf(InvalidInputException.class);
    }

    private static Decision<Finish> decision(Finish... values) {
        return new Decision<>(FLOOR, Subject.FLOOR, List.of(values), List.of(), List.of(), List.of(), List.of());
    }

    @Test
    void a_reason_is_certain_when_every_fact_it_rests_on_is_known() {
        MatchedFact known = new MatchedFact("Scratches", List.of("deep"), true, List.of("scratches"), List.of());
        MatchedFact open = new MatchedFact("Wear", List.of("none", "dull"), false, List.of("wear"), List.of());
        assertThat(new Reason(ContributionKind.NEED, "CUT-001", List.of(Bond.METAL), List.of(known)).certain())
                .isTrue();
        assertThat(new Reason(ContributionKind.NEED, "CUT-001", List.of(Bond.METAL), List.of(known, open)).certain())
                .isFalse();
    }

    @Test
    void a_subject_that_does_not_fit_the_topic_is_refused() {
        Subject step = new Subject.OfStep(TrackKind.EDGE, "resin-800");
        assertThat(STEP.on(step).need(Finish.HONE).subject()).isEqualTo(step);
        assertThatThrownBy(() -> STEP.need(Finish.HONE))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("sheen.subject");
        assertThatThrownBy(() -> FLOOR.on(step).need(Finish.HONE)).isInstanceOf(InvalidInputException.class);
    }

    @Test
    void an_unknown_value_is_refused_with_the_domain() {
        assertThat(FLOOR.value("semi-gloss")).isEqualTo(Finish.SEMI_GLOSS);
        assertThatThrownBy(() -> FLOOR.value("shiny"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("hone, satin, semi-gloss, polish, high-gloss");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"floor", "open-field", "local-repair", "edge/resin-800", "zone:lane by the door", "zone:edge/x"})
    void a_subject_is_found_again_by_its_key(String key) {
        assertThat(Subject.parse(key, "subject").key()).isEqualTo(key);
    }

    @Property(seed = "1955")
    void every_subject_is_found_again_by_its_key(
            @ForAll TrackKind track, @ForAll @StringLength(min = 1, max = 60) String name) {
        for (Subject subject : List.of(
                Subject.FLOOR, new Subject.OfTrack(track), new Subject.OfStep(track, name), new Subject.OfZone(name))) {
            assertThat(Subject.parse(subject.key(), "subject")).isEqualTo(subject);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "roof", "roof/resin-800", "edge/", "zone:", "Floor", "floor/resin-800", "edge resin-800"})
    void a_key_of_no_subject_is_refused(String key) {
        assertThatThrownBy(() -> Subject.parse(key, "decisions[0].subject"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("decisions[0].subject: '" + key + "' is not accepted; accepted: floor, zone: and a name, or"
                        + " one of open-field, edge, local-repair, alone or with / and a grade");
    }
}
