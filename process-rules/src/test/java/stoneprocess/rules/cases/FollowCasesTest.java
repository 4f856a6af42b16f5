package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.Sign;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Move;
import stoneprocess.rules.Advisor;

/** What an expert would say to a job log and to a fault, written from the trade; each file names its source. */
class FollowCasesTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final List<FollowCase> FOLLOW = FollowCase.all("follow");
    private static final List<FollowCase> DIAGNOSE = FollowCase.all("diagnose");
    private static final Map<String, FollowCase> BY_NAME =
            DIAGNOSE.stream().collect(Collectors.toMap(FollowCase::name, Function.identity()));

    static List<FollowCase> follow() {
        return FOLLOW;
    }

    static List<FollowCase> diagnose() {
        return DIAGNOSE;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("follow")
    void says_what_the_expert_would_do_next(FollowCase expert) {
        assertThat(expert.misses(expert.answer(ADVISOR))).as(expert.name()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("diagnose")
    void traces_the_fault_as_the_expert_and_says_what_tells_the_causes_apart(FollowCase expert) {
        NextMove answer = expert.answer(ADVISOR);

        assertThat(expert.misses(answer)).as(expert.name()).isEmpty();
        assertThat(answer.checks()).as(expert.name()).isNotEmpty();
    }

    @Test
    void there_are_cases_enough_and_some_rest_on_something_published() {
        for (List<FollowCase> cases : List.of(FOLLOW, DIAGNOSE)) {
            assertThat(cases).hasSizeGreaterThanOrEqualTo(45);
            assertThat(cases).filteredOn(FollowCasesTest::published).hasSizeGreaterThanOrEqualTo(8);
        }
    }

    private static boolean published(FollowCase expert) {
        return !expert.source().startsWith("common practice")
                && !expert.source().startsWith("from memory");
    }

    @ParameterizedTest
    @EnumSource(Fault.class)
    void every_cause_leads_in_a_case_whose_look_alike_has_the_same_sign_and_another_cause(Fault fault) {
        assertThat(DIAGNOSE)
                .as(fault.key())
                .filteredOn(expert -> expert.leading().contains(fault))
                .anySatisfy(expert -> {
                    FollowCase other = BY_NAME.get(expert.lookAlike().orElse("none"));
                    assertThat(other).isNotNull();
                    assertThat(other.otherThan(fault)).isTrue();
                });
    }

    @Test
    void look_alikes_share_a_sign() {
        assertThat(DIAGNOSE)
                .filteredOn(expert -> expert.lookAlike().isPresent())
                .allSatisfy(expert -> {
                    FollowCase other = BY_NAME.get(expert.lookAlike().orElseThrow());
                    assertThat(other).as(expert.name()).isNotNull();
                    assertThat(signs(expert)).as(expert.name()).containsAnyElementsOf(signs(other));
                });
    }

    private static Set<Sign> signs(FollowCase expert) {
        Set<Sign> signs = expert.asked();
        entries(expert, Entry.Looked.class)
                .forEach(look -> signs.addAll(look.signs().orElse(Set.of())));
        return signs;
    }

    private static <E extends Entry> Stream<E> entries(FollowCase expert, Class<E> kind) {
        return expert.log().entries().stream().filter(kind::isInstance).map(kind::cast);
    }

    @Test
    void every_move_event_and_note_has_a_case() {
        EnumSet<Move> moves = EnumSet.noneOf(Move.class);
        EnumSet<EventKind> events = EnumSet.noneOf(EventKind.class);
        EnumSet<NoteKind> notes = EnumSet.noneOf(NoteKind.class);
        for (FollowCase expert : FOLLOW) {
            Set<Move> wanted = expert.wanted(Move.class, "move");
            if (wanted.size() == 1) {
                moves.addAll(wanted);
            }
            entries(expert, Entry.Happened.class).map(Entry.Happened::kind).forEach(events::add);
            notes.addAll(expert.notes());
        }
        assertThat(moves).containsExactly(Move.values());
        assertThat(events).containsExactly(EventKind.values());
        assertThat(notes).containsExactly(NoteKind.values());
    }
}
