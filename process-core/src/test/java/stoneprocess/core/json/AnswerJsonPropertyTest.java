package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.Closing;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Given;
import stoneprocess.core.answer.Ground;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.MatterDifference;
import stoneprocess.core.answer.Side;
import stoneprocess.core.answer.SilentRule;
import stoneprocess.core.answer.Split;
import stoneprocess.core.answer.TrackDifference;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.source.Sources;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

/** Invented answers about plans, with every part of their forms. */
class AnswerJsonPropertyTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema WHY = REGISTRY.getSchema(Json.WHY.schema(), InputFormat.JSON);
    private static final Schema WHY_NOT = REGISTRY.getSchema(Json.WHY_NOT.schema(), InputFormat.JSON);
    private static final Schema DIFFERENCE = REGISTRY.getSchema(Json.DIFFERENCE.schema(), InputFormat.JSON);
    private static final Recommendation PLANNED = Examples.planned();
    private static final Outcome CUT = PLANNED.outcomes().get(0);
    private static final Outcome PATH = PLANNED.outcomes().get(1);

    @Provide
    Arbitrary<Why> whys() {
        return Combinators.combine(cards(), answers().list().ofMaxSize(3), amounts(), policies(), policies())
                .as((card, answers, amount, first, second) -> new Why(
                        List.of(new Ground(PATH, first, List.of(Matter.of(CUT))), new Ground(CUT, second, List.of())),
                        List.of(card),
                        answers,
                        Map.of("step-ratio.aim", amount)));
    }

    @Provide
    Arbitrary<WhyNot> whyNots() {
        Arbitrary<Outcome> outcomes = Arbitraries.of(
                CUT,
                PATH,
                Examples.impasse().outcomes().get(0),
                Examples.impasse().outcomes().get(1));
        Arbitrary<ContributionKind> kinds = Arbitraries.of(ContributionKind.class);
        return Combinators.combine(
                        Arbitraries.of(WhyNotKind.class),
                        outcomes,
                        kinds,
                        silent().list().ofMaxSize(2),
                        cards(),
                        answers().list().ofMaxSize(3))
                .as((kind, outcome, said, silent, card, answers) -> new WhyNot(
                        "grind",
                        kind,
                        outcome,
                        by(kind, outcome, said),
                        List.of(),
                        silent,
                        List.of(Matter.of(CUT)),
                        List.of(card),
                        answers));
    }

    /** Rules speak of a cut; of a path they do not, but may leave out the bond that it lacks. */
    private static List<Reason> by(WhyNotKind kind, Outcome outcome, ContributionKind said) {
        if (kind == WhyNotKind.BOND_LEFT_OUT) {
            return List.of(Examples.reason(said, List.of(Bond.METAL)));
        }
        return outcome.topic() == Topics.FIRST_CUT ? List.of(Examples.reason(said)) : List.of();
    }

    @Provide
    Arbitrary<Difference> differences() {
        Arbitrary<Side<?>> sides = Combinators.combine(
                        Arbitraries.of(Closing.class),
                        Arbitraries.of(Cut.HONE, Cut.GRIND).list().ofMaxSize(2))
                .as((closing, values) -> new Side<>(Topics.FIRST_CUT, closing, values, List.of("CUT-003")));
        Arbitrary<MatterDifference> matters = Combinators.combine(
                        Arbitraries.of(Subject.FLOOR, Subject.EDGE), sides, sides)
                .as((subject, one, other) -> new MatterDifference(new Matter(Topics.FIRST_CUT, subject), one, other));
        Preparation rested =
                new Preparation(Task.REGROUT, Optional.of(Range.of(new TimeSpan(1440), new TimeSpan(4320))));
        return Combinators.combine(
                        Arbitraries.of(Status.class),
                        Arbitraries.of(Status.class),
                        matters.list().ofMaxSize(3),
                        Arbitraries.of(TrackKind.class),
                        answers().list().ofMaxSize(2),
                        Arbitraries.of(OfferKind.class))
                .as((one, other, matter, track, answers, offer) -> new Difference(
                        one,
                        other,
                        matter,
                        List.of(new TrackDifference(track, List.of("resin-120"), List.of())),
                        new Split<>(List.of(rested), List.of(new Preparation(Task.MASK, Optional.empty()))),
                        new Split<>(PLANNED.warnings(), List.of()),
                        new Split<>(List.of(), List.of("site.area")),
                        new Split<>(
                                List.of(new CounterOffer<>(
                                        offer, Topics.FINISH, List.of(Finish.HONE), List.of("FIN-001"))),
                                List.of()),
                        new Split<>(answers, List.of()),
                        List.of("lippage.high"),
                        new Split<>(List.of("ab".repeat(32)), List.of("cd".repeat(32)))));
    }

    private static Arbitrary<PolicyKind> policies() {
        return Arbitraries.of(PolicyKind.class);
    }

    private static Arbitrary<Quantity> amounts() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 1000),
                        Arbitraries.integers().between(0, 3))
                .as((number, kind) -> switch (kind) {
                    case 0 -> new Length(number / 100.0);
                    case 1 -> new Share(number / 10.0);
                    case 2 -> new Gloss(number / 10.0);
                    default -> new Area(number);
                });
    }

    private static Arbitrary<FieldAnswer> answers() {
        Arbitrary<Given> given = Combinators.combine(
                        Arbitraries.of("lane", "whole").optional(),
                        Arbitraries.of("seen", "none").list().ofMaxSize(2),
                        amounts().list().ofMaxSize(2))
                .as(Given::new);
        return Combinators.combine(
                        Arbitraries.of(FieldAnswer.names()),
                        Arbitraries.of(true, false),
                        given.list().ofMaxSize(2))
                .as(FieldAnswer::new);
    }

    private static Arbitrary<Card> cards() {
        return Combinators.combine(
                        Arbitraries.of(Sources.standard().all()),
                        Arbitraries.of(true, false),
                        Arbitraries.of("Some start at 100").optional())
                .as((source, locked, differs) -> new Card(
                        "CUT-003",
                        "Scratches that a nail feels start at 200",
                        "A finer grade would leave the groove",
                        source,
                        "0.1",
                        locked,
                        List.of("LOCAL_REPAIR"),
                        Optional.empty(),
                        differs,
                        "first-cut",
                        Topics.FIRST_CUT));
    }

    private static Arbitrary<SilentRule> silent() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 9),
                        Arbitraries.of("none", "seen").list().ofMaxSize(2))
                .as((steps, actual) -> new SilentRule(
                        "CUT-003",
                        List.of(new Unmet(
                                "Scratches",
                                actual,
                                List.of("felt-by-nail"),
                                steps,
                                List.of("damages.scratches"),
                                List.of()))));
    }

    @Property(tries = 200, seed = "1955")
    void any_answer_why_survives_printing_and_reading(@ForAll("whys") Why why) {
        String json = Json.WHY.print(why);
        assertThat(Json.WHY.read(json)).isEqualTo(why);
        assertThat(Json.WHY.print(Json.WHY.read(json))).isEqualTo(json);
        assertThat(WHY.validate(json, InputFormat.JSON)).isEmpty();
    }

    @Property(tries = 200, seed = "1955")
    void any_answer_why_not_survives_printing_and_reading(@ForAll("whyNots") WhyNot whyNot) {
        String json = Json.WHY_NOT.print(whyNot);
        assertThat(Json.WHY_NOT.read(json)).isEqualTo(whyNot);
        assertThat(WHY_NOT.validate(json, InputFormat.JSON)).isEmpty();
    }

    @Property(tries = 200, seed = "1955")
    void any_difference_survives_printing_and_reading(@ForAll("differences") Difference difference) {
        String json = Json.DIFFERENCE.print(difference);
        assertThat(Json.DIFFERENCE.read(json)).isEqualTo(difference);
        assertThat(DIFFERENCE.validate(json, InputFormat.JSON)).isEmpty();
    }

    @Test
    void what_is_wrong_is_named_with_its_field() {
        Difference same = Difference.between(PLANNED, PLANNED);
        String difference = Json.DIFFERENCE.print(same);
        assertThatThrownBy(() -> Json.DIFFERENCE.read(difference.replace("\"tracks\"", "\"trucks\"")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("trucks");
        assertThatThrownBy(() -> Json.DIFFERENCE.read(difference.replace("provisional", "perhaps")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("one: 'perhaps' is not accepted");
        String why = Json.WHY.print(whys().sample());
        assertThatThrownBy(() -> Json.WHY.read(why.replace("why/1", "why/2")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("format: 'why/2' is not accepted; accepted: why/1");
        assertThatThrownBy(() -> Json.WHY.read(why.replaceAll("(\"id\" ?: )\"CUT-003\"", "$1\"CUT-004\"")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("cards: 'without CUT-003' is not accepted; accepted: the card of every rule that is named");
    }
}
