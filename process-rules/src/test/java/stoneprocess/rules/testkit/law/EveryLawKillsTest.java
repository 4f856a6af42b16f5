package stoneprocess.rules.testkit.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Extractor;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.Occupied;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.Floors;
import stoneprocess.rules.feature.Condition.LocalScratches;
import stoneprocess.rules.feature.Condition.Scratches;
import stoneprocess.rules.feature.Site.HistoricFabric;
import stoneprocess.rules.feature.Site.PeopleAbout;
import stoneprocess.rules.internal.engine.HandMadeRule;

/** A law that nothing breaks says nothing: for each law a respondent with one fault, and a floor that shows it. */
class EveryLawKillsTest {
    private static final int SEEDS = 60;

    /** Laws whose spoilt respondents stand in {@link LawMutantTest}. */
    private static final Set<String> ELSEWHERE = Set.of(
            "grit-path-is-legal",
            "scratch-never-gets-coarser",
            "order-makes-no-difference",
            "unknown-is-never-bolder",
            "refusal-stands",
            "same-answer-again",
            "json-is-lossless",
            "less-on-hand-is-never-better");

    private static final FloorSurvey DULL = Floors.unremarkable().build();
    private static final FloorSurvey MARBLE = Floors.calciteMarble(Floors.scratched(ScratchClass.SEEN, 60))
            .set(SurveyField.GOAL, Goal.POLISH)
            .set(SurveyField.FINISH_NOW, Finish.HONE)
            .build();
    private static final FloorSurvey FELT =
            Floors.damaged(Floors.scratched(ScratchClass.FELT_BY_NAIL, 60)).build();
    private static final FloorSurvey DEEP =
            Floors.damaged(Floors.scratched(ScratchClass.DEEP, 60)).build();
    private static final GritSequence ALL = GritSequence.standard();
    private static final FloorSurvey GAP = Floors.damaged(Floors.scratched(ScratchClass.SEEN, 80))
            .set(SurveyField.GRADES, List.of(ALL.get("metal-16", ""), ALL.get("resin-3000", "")))
            .build();

    /** A fault, the law that finds it, and the floor. */
    private record Mutant(String fault, String law, Respondent respondent, FloorSurvey floor) {}

    private static final List<Mutant> MUTANTS = mutants();

    private static List<Mutant> mutants() {
        List<Mutant> mutants = new ArrayList<>();
        mutants.addAll(ofAnswers());
        mutants.addAll(ofPlans());
        mutants.addAll(ofWarnings());
        mutants.addAll(ofFloors());
        return mutants;
    }

    private static List<Mutant> ofAnswers() {
        FloorSurvey loose =
                Floors.unremarkable().set(SurveyField.SOUNDING, Sounding.LOOSE).build();
        FloorSurvey noMachine = Floors.unremarkable()
                .set(SurveyField.MACHINES, Floors.machines(MachineClass.EDGE_TOOL))
                .build();
        return List.of(
                new Mutant(
                        "calls a plan a refusal",
                        "status-fits-the-answer",
                        Spoilt.says(Spoilt.status(Status.REFUSED)),
                        DULL),
                new Mutant(
                        "refuses on a suspicion",
                        "refusal-rests-on-what-is-known",
                        Spoilt.says(Spoilt.refusals(EveryLawKillsTest::doubted)),
                        loose),
                new Mutant(
                        "holds and asks nothing",
                        "hold-is-explained",
                        Spoilt.says(Spoilt.questions(List.of())),
                        Floors.unknownStone()),
                new Mutant(
                        "says no and offers nothing",
                        "impasse-offers-a-way-out",
                        Spoilt.says(Spoilt.offers(offers -> List.of())),
                        noMachine),
                new Mutant(
                        "asks for the area that it was told",
                        "question-is-open",
                        Spoilt.says(Spoilt.questions(List.of(
                                new Question("site.area", List.of("MAC-009"), List.of(), List.of(Topics.MACHINE))))),
                        DULL),
                new Mutant(
                        "lists the routine backwards",
                        "values-are-of-the-domain",
                        Spoilt.says(Spoilt.values(Topics.UPKEEP, values -> {
                            Collections.reverse(values);
                            return values;
                        })),
                        DULL),
                new Mutant(
                        "adds an upkeep that no rule asked for",
                        "record-explains-the-outcome",
                        Spoilt.says(Spoilt.values(Topics.UPKEEP, values -> List.copyOf(Topics.UPKEEP.domain()))),
                        DULL),
                new Mutant(
                        "has a rule that vetoes the warning of dust",
                        "safety-rules-stand",
                        Spoilt.rules(
                                List.of(),
                                HandMadeRule.of(
                                        "BAD-001",
                                        Topics.WARNINGS,
                                        Scratches.class,
                                        scratches -> true,
                                        scratches -> Topics.WARNINGS.veto(Hazard.SILICA_DUST))),
                        DULL),
                new Mutant(
                        "has a value without a word",
                        "every-key-has-text",
                        Spoilt.says(Spoilt.values(Topics.UPKEEP, values -> List.of(Wordless.MOON_DUST))),
                        DULL),
                new Mutant(
                        "offers the first of the missing grades only",
                        "offer-taken-is-kept",
                        Spoilt.says(Spoilt.offers(offers -> offers.stream()
                                .<CounterOffer<?>>map(EveryLawKillsTest::firstOnly)
                                .toList())),
                        GAP));
    }

    /** A value of no topic, for which there are no words. */
    private enum Wordless implements Term {
        MOON_DUST
    }

    private static Reason doubted(Reason reason) {
        return new Reason(
                reason.kind(),
                reason.rule(),
                reason.values(),
                reason.facts().stream()
                        .map(fact -> new MatchedFact(fact.name(), fact.mayBe(), false, fact.fields(), fact.topics()))
                        .toList());
    }

    private static <V> CounterOffer<V> firstOnly(CounterOffer<V> offer) {
        return offer.kind() == OfferKind.GET_GRADES
                ? new CounterOffer<>(offer.kind(), offer.topic(), offer.values().subList(0, 1), offer.rules())
                : offer;
    }

    private static List<Mutant> ofPlans() {
        FloorSurvey waxed =
                Floors.unremarkable().set(SurveyField.COATING, Coating.WAX).build();
        FloorSurvey cabin = Floors.unremarkable()
                .set(SurveyField.AREA, new Area(6))
                .set(SurveyField.MACHINES, Floors.machines(MachineClass.PLANETARY, MachineClass.EDGE_TOOL))
                .build();
        FloorSurvey dusty =
                DEEP.toBuilder().set(SurveyField.EXTRACTOR, Extractor.VACUUM).build();
        FloorSurvey hone = FELT.toBuilder().set(SurveyField.GOAL, Goal.HONE).build();
        FloorSurvey sandstone = FELT.toBuilder()
                .set(SurveyField.STONE_NAME, "sandstone")
                .set(SurveyField.GOAL, Goal.POLISH)
                .build();
        return List.of(
                new Mutant(
                        "seals what was not decided",
                        "plan-says-what-was-decided",
                        Spoilt.says(Spoilt.sealer(Sealer.IMPREGNATOR)),
                        DULL),
                new Mutant("cuts without a test area", "test-area-before-a-cut", without("TST-001"), DULL),
                new Mutant("looks at no grade in low light", "every-grade-is-checked", without("CHK-002"), DULL),
                new Mutant("hands nothing over", "plan-ends-with-care", without("CLO-006"), DULL),
                new Mutant("cuts through the wax", "coating-comes-off-first", without("PRE-003"), waxed),
                new Mutant(
                        "crystallises granite",
                        "acid-only-on-calcite",
                        Spoilt.rules(List.of("POW-"), LawFloors.WISH_FOR_ACID),
                        DULL),
                new Mutant(
                        "densifies granite",
                        "densifier-only-on-concrete",
                        Spoilt.rules(
                                List.of("DEN-"),
                                HandMadeRule.of(
                                        "BAD-001",
                                        Topics.DENSIFIER,
                                        Scratches.class,
                                        scratches -> true,
                                        scratches -> Topics.DENSIFIER.wish(Densifier.AFTER_FINE_HONE))),
                        DULL),
                new Mutant(
                        "grinds dry with a shop vacuum",
                        "dry-only-with-extractor",
                        Spoilt.rules(
                                List.of("MET-"),
                                HandMadeRule.of(
                                        "BAD-001",
                                        Topics.METAL_METHOD,
                                        Scratches.class,
                                        scratches -> true,
                                        scratches -> Topics.METAL_METHOD.wish(WorkMethod.DRY))),
                        dusty),
                new Mutant(
                        "runs an engine in the hall",
                        "no-engine-indoors",
                        Spoilt.says(Spoilt.steps(
                                answer -> true,
                                step -> Spoilt.with(
                                        step, MachineClass.PROPANE_MACHINE, step.litresPerPass(), step.passes()))),
                        DULL),
                new Mutant("plans a machine that is not there", "machines-are-on-hand", without("MAC-006"), cabin),
                new Mutant(
                        "gives everybody a mirror",
                        "finish-is-within-the-wish",
                        Spoilt.rules(
                                List.of("FIN-001"),
                                HandMadeRule.of(
                                        "BAD-001",
                                        Topics.FINISH,
                                        Scratches.class,
                                        scratches -> true,
                                        scratches -> Topics.FINISH.need(Finish.HIGH_GLOSS))),
                        hone),
                new Mutant("polishes sandstone", "finish-is-within-reach", without("FIN-002"), sandstone),
                new Mutant(
                        "stops a grade early at the edges",
                        "tracks-end-alike",
                        Spoilt.says(Spoilt.tracks(tracks -> {
                            Track last = tracks.remove(tracks.size() - 1);
                            tracks.add(new Track(
                                    last.kind(),
                                    last.steps().subList(0, last.steps().size() - 1)));
                            return tracks;
                        })),
                        DULL),
                new Mutant(
                        "forgets the litres",
                        "figures-are-possible",
                        Spoilt.says(Spoilt.steps(
                                answer -> true,
                                step -> Spoilt.with(step, step.machine(), Optional.empty(), step.passes()))),
                        DULL),
                new Mutant(
                        "takes its time at 1500",
                        "more-load-is-never-slower",
                        Spoilt.says(Spoilt.steps(
                                answer -> true,
                                step -> step.grade().number() == 1500
                                        ? Spoilt.with(step, step.machine(), step.litresPerPass(), Range.of(90, 99))
                                        : step)),
                        MARBLE),
                new Mutant(
                        "lists the open field twice",
                        "totals-are-sums",
                        Spoilt.says(Spoilt.tracks(tracks -> {
                            tracks.add(tracks.get(0));
                            return tracks;
                        })),
                        DULL));
    }

    private static List<Mutant> ofWarnings() {
        FloorSurvey empty =
                DULL.toBuilder().set(SurveyField.OCCUPIED, Occupied.NO).build();
        return List.of(
                new Mutant(
                        "warns and says nothing to do",
                        "warning-is-complete",
                        Spoilt.says(Spoilt.warnings(warning -> new SafetyWarning(
                                warning.hazard(),
                                List.of(),
                                warning.decides(),
                                warning.rules(),
                                warning.sources(),
                                warning.certain()))),
                        DULL),
                new Mutant("overlooks the people about", "site-is-warned-of", without("SAF-020"), DULL),
                new Mutant(
                        "cuts without a word of dust",
                        "plan-is-warned-of",
                        Spoilt.rules(List.of("SAF-001", "SAF-030", "SAF-033")),
                        DULL),
                new Mutant(
                        "has a rule that hushes noise where people are about",
                        "hazard-never-silences-another",
                        Spoilt.rules(
                                List.of(),
                                HandMadeRule.of(
                                        "BAD-001",
                                        Topics.WARNINGS,
                                        PeopleAbout.class,
                                        people -> people.mayBe().equals(Set.of(Occupied.YES)),
                                        people -> Topics.WARNINGS.veto(Hazard.NOISE))),
                        empty));
    }

    private static List<Mutant> ofFloors() {
        FloorSurvey marble =
                Floors.calciteMarble(Floors.scratched(ScratchClass.SEEN, 60)).build();
        FloorSurvey deep = Floors.calciteMarble(Floors.scratched(ScratchClass.FELT_BY_NAIL, 60))
                .build();
        FloorSurvey few = Floors.damaged(Floors.dull(80), Floors.scratched(ScratchClass.FELT_BY_NAIL, 2))
                .build();
        FloorSurvey halves = Floors.unremarkable()
                .zones(List.of(
                        Floors.zone("a", 50, Map.of(DamageKind.WEAR, Floors.dull(80))),
                        Floors.zone(
                                "b",
                                50,
                                Map.of(DamageKind.SCRATCHES, Floors.scratched(ScratchClass.FELT_BY_NAIL, 80)))))
                .build();
        return List.of(
                new Mutant(
                        "has no cut for what a nail feels",
                        "worse-damage-is-never-cut-finer",
                        Spoilt.rules(List.of("CUT-003", "CUT-004")),
                        marble),
                new Mutant(
                        "has no cut for many scratches",
                        "wider-damage-is-never-cut-finer",
                        Spoilt.rules(
                                List.of("CUT-003", "CUT-004", "CUT-001"),
                                HandMadeRule.of(
                                        "BAD-001",
                                        Topics.FIRST_CUT,
                                        LocalScratches.class,
                                        some -> some.mayBe().equals(Set.of(ScratchClass.FELT_BY_NAIL)),
                                        some -> Topics.FIRST_CUT
                                                .on(Subject.OPEN_FIELD)
                                                .needAtLeast(Cut.HONE))),
                        few),
                new Mutant(
                        "grinds what is historic",
                        "tender-floor-is-never-cut-coarser",
                        Spoilt.rules(
                                List.of("CUT-024"),
                                HandMadeRule.of(
                                        "BAD-001",
                                        Topics.FIRST_CUT,
                                        HistoricFabric.class,
                                        historic -> historic.mayBe().equals(Set.of(Historic.YES)),
                                        historic -> Topics.FIRST_CUT.needAtLeast(Cut.FINE_GRIND))),
                        DULL),
                new Mutant(
                        "reads the drop of water backwards",
                        "thirsty-floor-never-gets-more-water",
                        Spoilt.reads(survey -> survey.toBuilder()
                                .set(
                                        SurveyField.WATER_DROP,
                                        survey.answer(SurveyField.WATER_DROP)
                                                        .value()
                                                        .equals(Optional.of(WaterDrop.DARKENS_AT_ONCE))
                                                ? WaterDrop.NOT_DARKENED
                                                : WaterDrop.DARKENS_AT_ONCE)
                                .build()),
                        deep),
                new Mutant(
                        "goes over granite once",
                        "harder-stone-never-takes-fewer-passes",
                        Spoilt.says(Spoilt.steps(
                                answer -> !answer.values(Topics.STONE, Subject.FLOOR)
                                        .contains(Family.CALCITE_MARBLE),
                                step -> Spoilt.with(step, step.machine(), step.litresPerPass(), Range.of(1, 1)))),
                        marble.toBuilder().set(SurveyField.STONE_NAME, "marble").build()),
                new Mutant(
                        "takes every floor for 60 square metres",
                        "litres-go-with-area",
                        Spoilt.reads(survey -> survey.toBuilder()
                                .set(SurveyField.AREA, new Area(60))
                                .build()),
                        DULL),
                new Mutant(
                        "hears a hone in a high gloss",
                        "higher-wish-never-ends-coarser",
                        Spoilt.reads(survey ->
                                survey.answer(SurveyField.GOAL).value().equals(Optional.of(Goal.HIGH_GLOSS))
                                        ? survey.toBuilder()
                                                .set(SurveyField.GOAL, Goal.HONE)
                                                .build()
                                        : survey),
                        MARBLE),
                new Mutant(
                        "is kinder to a hall with a name",
                        "names-make-no-difference",
                        Spoilt.reads(survey -> survey.title().startsWith("Quay")
                                ? survey.toBuilder()
                                        .set(SurveyField.OCCUPIED, Occupied.NO)
                                        .build()
                                : survey),
                        DULL),
                new Mutant(
                        "reads the first zone only",
                        "order-of-zones-makes-no-difference",
                        Spoilt.reads(survey -> survey.toBuilder()
                                .zones(survey.zones().subList(0, 1))
                                .build()),
                        halves),
                new Mutant(
                        "overlooks small zones",
                        "split-zone-makes-no-difference",
                        Spoilt.reads(survey -> survey.toBuilder()
                                .zones(survey.zones().stream()
                                        .filter(zone -> zone.share().percent() > 40)
                                        .toList())
                                .build()),
                        halves),
                new Mutant(
                        "plans afresh whatever was done",
                        "what-is-done-is-kept",
                        Spoilt.pins((survey, pins) -> Spoilt.SHIPPED.recommend(survey)),
                        DULL),
                new Mutant(
                        "forgets the wish once something is done",
                        "pinning-what-was-decided-changes-nothing",
                        Spoilt.pins((survey, pins) -> Spoilt.SHIPPED.recommendPinned(
                                survey.toBuilder().unknown(SurveyField.GOAL).build(), pins)),
                        DULL));
    }

    private static Respondent without(String id) {
        return Spoilt.rules(List.of(id));
    }

    @TestFactory
    Stream<DynamicTest> each_fault_is_found_and_the_shipped_rules_have_none() {
        return MUTANTS.stream()
                .map(mutant -> DynamicTest.dynamicTest(mutant.law() + ": " + mutant.fault(), () -> killed(mutant)));
    }

    private static void killed(Mutant mutant) {
        Law law = Laws.named(mutant.law());
        Respondent spoilt = Respondent.remembering(mutant.respondent(), 200);
        Optional<Long> seed = LongStream.range(0, SEEDS)
                .filter(drawn -> !law.violations(spoilt, mutant.floor(), drawn).isEmpty())
                .boxed()
                .findFirst();
        assertThat(seed).as(mutant.fault()).isPresent();
        assertThat(law.violations(Spoilt.SHIPPED, mutant.floor(), seed.orElseThrow()))
                .isEmpty();
        assertThat(law.meets(spoilt, mutant.floor(), seed.orElseThrow()))
                .as("a floor that is met")
                .isTrue();
    }

    /** Among the floors on which the laws are tried, and no more of them. */
    @TestFactory
    Stream<DynamicTest> each_fault_is_found_among_the_floors_of_the_normal_run() {
        return MUTANTS.stream()
                .map(mutant -> DynamicTest.dynamicTest(
                        mutant.law() + ": " + mutant.fault(),
                        () -> assertThat(LawFloors.finds(
                                        Laws.named(mutant.law()), Respondent.remembering(mutant.respondent(), 200)))
                                .isPresent()));
    }

    @Test
    void no_law_is_without_a_fault_that_it_finds() {
        Set<String> killing = new TreeSet<>(ELSEWHERE);
        MUTANTS.forEach(mutant -> killing.add(mutant.law()));

        assertThat(Laws.all()).extracting(Law::id).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(killing);
    }
}
