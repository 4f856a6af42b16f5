package stoneprocess.rules.testkit.law;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.BiPredicate;
import java.util.function.Consumer;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Body;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.Backing;
import stoneprocess.core.survey.Bed;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.IdentifiedBy;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** Laws about two floors that differ in one thing. Where both have a plan, the plans differ in one direction only. */
final class FloorLaws {
    private static final BiPredicate<Recommendation, Recommendation> FIRST_CUT_DECIDED =
            Breaches.decide(Topics.FIRST_CUT, Subject.OPEN_FIELD);

    static final Law WORSE_DAMAGE_IS_NEVER_CUT_FINER = Breaches.lawOfPlans(
            "worse-damage-is-never-cut-finer",
            "A floor that is scratched, worn, etched, lipped or wavy one class worse, over the same share, is not cut finer"
                    + " first, unless its damage passes to repair or to preparation",
            "What a finer grade cannot reach stays. Common practice, no source",
            FloorLaws::worse,
            FIRST_CUT_DECIDED.and(
                    (before, after) -> same(Topics.REPAIRS, before, after) && same(Topics.PREPARATION, before, after)),
            (before, after, breaches) -> breaches.notBelow(Topics.FIRST_CUT, Subject.OPEN_FIELD, before, after));

    static final Law WIDER_DAMAGE_IS_NEVER_CUT_FINER = Breaches.lawOfPlans(
            "wider-damage-is-never-cut-finer",
            "A floor whose damage covers all of its zone is not cut finer first than one where it covers a part",
            "Few places are repaired by themselves, many decide the floor. Common practice, no source",
            FloorLaws::wider,
            FIRST_CUT_DECIDED,
            (before, after, breaches) -> breaches.notBelow(Topics.FIRST_CUT, Subject.OPEN_FIELD, before, after));

    static final Law TENDER_FLOOR_IS_NEVER_CUT_COARSER = Breaches.lawOfPlans(
            "tender-floor-is-never-cut-coarser",
            "A floor that is thinner, on a mesh or historic is not cut coarser first",
            "What is ground away does not come back. Common practice, no source",
            oneOf(List.of(
                    worse -> worse.set(SurveyField.THICKNESS, new Length(6)),
                    worse -> worse.set(SurveyField.BACKING, Backing.MESH),
                    worse -> worse.set(SurveyField.HISTORIC, Historic.YES))),
            FIRST_CUT_DECIDED,
            (before, after, breaches) -> breaches.notAbove(Topics.FIRST_CUT, Subject.OPEN_FIELD, before, after));

    static final Law THIRSTY_FLOOR_NEVER_GETS_MORE_WATER = Breaches.lawOfPlans(
            "thirsty-floor-never-gets-more-water",
            "A floor that drinks, is damp, has open joints, salts or flakes, lies on gypsum or timber or is heated gets no"
                    + " more water at the same step",
            "Water in the bed brings salts, stains and warping. Common practice, no source",
            FloorLaws::thirstier,
            Breaches.sameStep(
                    (one, other) -> one.step().method() == other.step().method()),
            (before, after, breaches) -> Breaches.eachSameStep(
                    before,
                    after,
                    (one, other) -> breaches.require(
                            one.step().method() != other.step().method()
                                    || other.step().water().compareTo(one.step().water()) <= 0,
                            Topics.WATER_LEVEL,
                            one.subject(),
                            "at most " + one.step().water().key(),
                            other.step().water().key())));

    static final Law HARDER_STONE_NEVER_TAKES_FEWER_PASSES = Breaches.lawOfPlans(
            "harder-stone-never-takes-fewer-passes",
            "A stone no softer than another, held together alike, takes no fewer passes at the same step with the same"
                    + " machine and weight where as much is to be taken off",
            "Passes go by how fast the stone is cut. Common practice, no source",
            FloorLaws::otherStone,
            (before, after) -> isNoSofter(before, after)
                    && Breaches.sameStep(FloorLaws::sameTask).test(before, after),
            FloorLaws::passes);

    static final Law LITRES_GO_WITH_AREA = Breaches.lawOfPlans(
            "litres-go-with-area",
            "On twice the area the same step at the same water level takes twice the litres",
            "Coverage is litres over area",
            (survey, random) -> survey.answer(SurveyField.AREA)
                    .value()
                    .filter(area -> area.squareMetres() <= 500_000)
                    .map(area -> survey.toBuilder()
                            .set(SurveyField.AREA, new Area(2 * area.squareMetres()))
                            .build()),
            Breaches.sameStep((one, other) ->
                    hasSameWater(one, other) && one.step().litresPerPass().isPresent()),
            FloorLaws::litres);

    static final Law HIGHER_WISH_NEVER_ENDS_COARSER = Breaches.lawOfPlans(
            "higher-wish-never-ends-coarser",
            "Who wishes for the next higher finish gets no lower finish, and no coarser last grade without powder after it",
            "Gloss rises with the fineness of the last grade; powder takes the place of grades finer than 800 (Murrell,"
                    + " Spot Work and More Tech Tips, second hand). Common practice, no source",
            (survey, random) -> survey.answer(SurveyField.GOAL)
                    .value()
                    .filter(goal -> goal.compareTo(Goal.HONE) >= 0 && goal.compareTo(Goal.HIGH_GLOSS) < 0)
                    .map(goal -> survey.toBuilder()
                            .set(SurveyField.GOAL, Goal.values()[goal.ordinal() + 1])
                            .build()),
            Breaches.decide(Topics.FINISH, Subject.FLOOR),
            (before, after, breaches) -> {
                breaches.notBelow(Topics.FINISH, Subject.FLOOR, before, after);
                if (after.values(Topics.POLISHING_AGENT, Subject.FLOOR).stream()
                        .allMatch(agent -> agent == PolishingAgent.NONE)) {
                    breaches.notBelow(Topics.LAST_GRIT, Subject.FLOOR, before, after);
                }
            });

    static final Law NAMES_MAKE_NO_DIFFERENCE = Breaches.law(
            "names-make-no-difference",
            "The title of a floor and the names of its zones change nothing",
            "A name is no fact about the stone",
            (survey, random) -> Optional.of(renamed(survey)),
            (before, after) -> true,
            FloorLaws::alike);

    static final Law ORDER_OF_ZONES_MAKES_NO_DIFFERENCE = Breaches.law(
            "order-of-zones-makes-no-difference",
            "Zones and readings noted in another order change nothing",
            "A crew walks the floor as it likes",
            (survey, random) -> {
                List<Zone> zones = new ArrayList<>(survey.zones());
                List<GlossReading> readings = new ArrayList<>(survey.readings());
                Collections.reverse(zones);
                Collections.reverse(readings);
                return Optional.of(
                        survey.toBuilder().zones(zones).readings(readings).build());
            },
            (before, after) -> true,
            FloorLaws::alike);

    static final Law SPLIT_ZONE_MAKES_NO_DIFFERENCE = Breaches.law(
            "split-zone-makes-no-difference",
            "A zone noted as two halves of the same look changes nothing",
            "How finely a crew divides a floor is no fact about the stone",
            FloorLaws::split,
            (before, after) -> true,
            FloorLaws::alike);

    static final Law DRAWN_PINS_ARE_KEPT = new Law(
            "what-is-done-is-kept",
            "What is given as closed keeps its value, and everything that closed before it stays as it was",
            "What was cut already cannot be decided again",
            Law.Meeting.where(FloorLaws::hasCutToPin),
            FloorLaws::pinned);

    static final Law PINNING_WHAT_WAS_DECIDED_CHANGES_NOTHING = new Law(
            "pinning-what-was-decided-changes-nothing",
            "Given one of its own decisions as closed, a floor gets the same answer on every other topic",
            "Planning on from the middle is planning from the start",
            Law.Meeting.ALWAYS,
            FloorLaws::pinnedAgain);

    static final List<Law> ALL = List.of(
            WORSE_DAMAGE_IS_NEVER_CUT_FINER,
            WIDER_DAMAGE_IS_NEVER_CUT_FINER,
            TENDER_FLOOR_IS_NEVER_CUT_COARSER,
            THIRSTY_FLOOR_NEVER_GETS_MORE_WATER,
            HARDER_STONE_NEVER_TAKES_FEWER_PASSES,
            LITRES_GO_WITH_AREA,
            HIGHER_WISH_NEVER_ENDS_COARSER,
            NAMES_MAKE_NO_DIFFERENCE,
            ORDER_OF_ZONES_MAKES_NO_DIFFERENCE,
            SPLIT_ZONE_MAKES_NO_DIFFERENCE,
            DRAWN_PINS_ARE_KEPT,
            PINNING_WHAT_WAS_DECIDED_CHANGES_NOTHING);

    private static final List<DamageKind> CUT_OUT =
            List.of(DamageKind.SCRATCHES, DamageKind.WEAR, DamageKind.ETCHES, DamageKind.LIPPAGE, DamageKind.WAVINESS);

    private FloorLaws() {}

    private static Breaches.Change oneOf(List<Consumer<FloorSurvey.Builder>> changes) {
        return (survey, random) -> {
            FloorSurvey.Builder changed = survey.toBuilder();
            changes.get(random.nextInt(changes.size())).accept(changed);
            return Optional.of(changed.build());
        };
    }

    private static boolean same(Topic<?> topic, Recommendation one, Recommendation other) {
        return outcomes(topic, one).equals(outcomes(topic, other));
    }

    private static List<List<String>> outcomes(Topic<?> topic, Recommendation answer) {
        return answer.outcomes().stream()
                .filter(outcome -> outcome.topic() == topic)
                .map(FloorLaws::values)
                .toList();
    }

    private static List<String> values(Outcome outcome) {
        return outcome instanceof Decision<?> decision ? decision.keys() : List.of("impasse");
    }

    private record Place(Zone zone, Damage damage) {}

    private static Optional<Place> drawn(FloorSurvey survey, SplittableRandom random) {
        List<Place> places = survey.zones().stream()
                .flatMap(zone -> CUT_OUT.stream()
                        .flatMap(kind -> zone.damage(kind).value().stream())
                        .map(damage -> new Place(zone, damage)))
                .toList();
        return places.isEmpty() ? Optional.empty() : Optional.of(places.get(random.nextInt(places.size())));
    }

    private static FloorSurvey with(FloorSurvey survey, Zone zone, Damage damage) {
        Map<DamageKind, Damage> damages = new HashMap<>(zone.damages());
        damages.put(damage.kind(), damage);
        Zone changed = new Zone(zone.name(), zone.kind(), zone.share(), damages);
        return survey.toBuilder()
                .zones(survey.zones().stream()
                        .map(other -> other.equals(zone) ? changed : other)
                        .toList())
                .build();
    }

    private static Optional<FloorSurvey> worse(FloorSurvey survey, SplittableRandom random) {
        return drawn(survey, random).flatMap(place -> {
            Damage damage = place.damage();
            List<Term> terms = damage.kind().terms();
            boolean measured = damage.depth().isPresent();
            int next = damage.look().map(terms::indexOf).orElse(terms.size()) + 1;
            if (measured || next >= terms.size()) {
                return Optional.empty();
            }
            Share share = next == 1 ? new Share(1) : damage.share().orElse(new Share(100));
            return Optional.of(with(survey, place.zone(), Damage.seen(damage.kind(), terms.get(next), share)));
        });
    }

    private static Optional<FloorSurvey> wider(FloorSurvey survey, SplittableRandom random) {
        return drawn(survey, random)
                .filter(place -> place.damage()
                        .share()
                        .filter(share -> share.percent() > 0)
                        .isPresent())
                .map(place -> with(
                        survey,
                        place.zone(),
                        new Damage(
                                place.damage().kind(),
                                place.damage().look(),
                                place.damage().depth(),
                                Optional.of(new Share(100)))));
    }

    private static Optional<FloorSurvey> thirstier(FloorSurvey survey, SplittableRandom random) {
        List<Consumer<FloorSurvey.Builder>> changes = new ArrayList<>(List.of(
                worse -> worse.set(SurveyField.WATER_DROP, WaterDrop.DARKENS_AT_ONCE),
                worse -> worse.set(SurveyField.DRY_REFERENCE, new Share(1)).set(SurveyField.MOISTURE, new Share(9)),
                worse -> worse.set(SurveyField.JOINTS, Joints.OPEN),
                worse -> worse.set(SurveyField.BED, Bed.GYPSUM_SCREED),
                worse -> worse.set(SurveyField.BED, Bed.WOOD)));
        for (DamageKind kind : List.of(DamageKind.SALTS, DamageKind.FLAKING)) {
            survey.zones().stream()
                    .findFirst()
                    .ifPresent(zone -> changes.add(worse ->
                            worse.zones(with(survey, zone, Damage.seen(kind, Presence.PRESENT, new Share(20)))
                                    .zones())));
        }
        return oneOf(changes).of(survey, random);
    }

    /** Another name, found by the same means and with no test to contradict it. */
    private static Optional<FloorSurvey> otherStone(FloorSurvey survey, SplittableRandom random) {
        List<String> names = StoneCatalogue.standard().all().stream()
                .map(stone -> stone.name())
                .toList();
        return Optional.of(survey.toBuilder()
                .set(SurveyField.STONE_NAME, names.get(random.nextInt(names.size())))
                .set(SurveyField.IDENTIFIED_BY, IdentifiedBy.LOOK)
                .unknown(SurveyField.ACID_DROP)
                .unknown(SurveyField.SCRIBER)
                .build());
    }

    /** The same machine and weight, and as much to take off: a grade scratches a hard stone less deep. */
    private static boolean sameTask(Breaches.Placed one, Breaches.Placed other) {
        return one.step().machine() == other.step().machine()
                && one.step().weight() == other.step().weight()
                && other.step().depth().high().compareTo(one.step().depth().high()) >= 0;
    }

    private static boolean isNoSofter(Recommendation before, Recommendation after) {
        List<Family> one = before.values(Topics.STONE, Subject.FLOOR);
        List<Family> other = after.values(Topics.STONE, Subject.FLOOR);
        return !one.isEmpty()
                && !other.isEmpty()
                && hardness(other).compareTo(hardness(one)) >= 0
                && Stream.concat(one.stream(), other.stream())
                        .allMatch(family -> Traits.of(family).body().equals(Set.of(Body.STONE))
                                && family != Family.SANDSTONE
                                && family != Family.TUFF);
    }

    private static void passes(Recommendation before, Recommendation after, Breaches breaches) {
        Breaches.eachSameStep(before, after, (slow, harder) -> {
            breaches.require(
                    !sameTask(slow, harder)
                            || harder.step().passes().high()
                                    >= slow.step().passes().high(),
                    Topics.PASSES,
                    slow.subject(),
                    "at least " + slow.step().passes(),
                    harder.step().passes());
        });
    }

    private static Hardness hardness(List<Family> families) {
        return Collections.max(families.stream()
                .flatMap(family -> Traits.of(family).hardness().stream())
                .toList());
    }

    private static boolean hasSameWater(Breaches.Placed one, Breaches.Placed other) {
        return one.step().water() == other.step().water()
                && one.step().method() == other.step().method();
    }

    private static void litres(Recommendation before, Recommendation after, Breaches breaches) {
        Breaches.eachSameStep(before, after, (one, other) -> {
            if (!hasSameWater(one, other) || one.step().litresPerPass().isEmpty()) {
                return;
            }
            double litres = one.step().litresPerPass().get().high().litres();
            double twice = other.step()
                    .litresPerPass()
                    .map(range -> range.high().litres())
                    .orElse(0.0);
            breaches.require(
                    Math.abs(twice - 2 * litres) <= 0.01 + 1e-6 * litres,
                    Topics.LITRES,
                    one.subject(),
                    2 * litres + " l",
                    twice + " l");
        });
    }

    private static FloorSurvey renamed(FloorSurvey survey) {
        FloorSurvey.Builder other = FloorSurvey.builder("Quay Hall, Merrowhithe");
        for (SurveyField<?> field : SurveyField.all()) {
            survey.answer(field).value().ifPresent(value -> other.put(field, value));
        }
        survey.zones()
                .forEach(zone -> other.zone(new Zone(named(zone.name()), zone.kind(), zone.share(), zone.damages())));
        survey.readings()
                .forEach(reading -> other.reading(
                        new GlossReading(named(reading.zone()), reading.geometry(), reading.gloss(), reading.state())));
        return other.build();
    }

    /** Another name of the same length or less, so that it stays one that is accepted. */
    private static String named(String name) {
        return new StringBuilder(name).reverse().toString().strip() + "'";
    }

    private static Optional<FloorSurvey> split(FloorSurvey survey, SplittableRandom random) {
        if (survey.zones().isEmpty()) {
            return Optional.empty();
        }
        Zone zone = survey.zones().get(random.nextInt(survey.zones().size()));
        Share half = new Share(zone.share().percent() / 2);
        List<Zone> zones = new ArrayList<>(survey.zones());
        zones.remove(zone);
        zones.add(new Zone(zone.name(), zone.kind(), half, zone.damages()));
        zones.add(new Zone(zone.name() + "'", zone.kind(), half, zone.damages()));
        return Optional.of(survey.toBuilder().zones(zones).build());
    }

    private static void alike(Recommendation before, Recommendation after, Breaches breaches) {
        for (Outcome outcome : before.outcomes()) {
            Optional<Outcome> again = after.outcomes().stream()
                    .filter(other -> other.closes(outcome.topic(), outcome.subject()))
                    .findFirst();
            if (!again.equals(Optional.of(outcome))) {
                breaches.add(outcome.topic(), outcome.subject(), outcome, again);
            }
        }
        breaches.require(
                before.plan().equals(after.plan()) && before.warnings().equals(after.warnings()),
                Topics.VERDICT,
                "the same plan and warnings",
                after.plan());
    }

    private static boolean hasCutToPin(Recommendation answer) {
        return answer.decision(Topics.FIRST_CUT, Subject.OPEN_FIELD).isPresent() && answer.status() != Status.REFUSED;
    }

    private static List<Violation> pinned(Respondent respondent, FloorSurvey survey, long seed) {
        Recommendation free = respondent.recommend(survey);
        Breaches breaches = new Breaches("what-is-done-is-kept", survey);
        if (!hasCutToPin(free)) {
            return breaches.found();
        }
        List<Cut> cuts = Topics.FIRST_CUT.domain();
        Cut drawn = cuts.get(1 + new SplittableRandom(seed).nextInt(cuts.size() - 1));
        Decision<Cut> pin = new Decision<>(
                Topics.FIRST_CUT, Subject.OPEN_FIELD, List.of(drawn), List.of(), List.of(), List.of(), List.of());
        Recommendation pinned = respondent.recommendPinned(survey, List.of(pin));
        Optional<Decision<Cut>> kept = pinned.decision(Topics.FIRST_CUT, Subject.OPEN_FIELD);
        breaches.require(kept.equals(Optional.of(pin)), Topics.FIRST_CUT, Subject.OPEN_FIELD, pin, kept);
        for (Outcome outcome : free.outcomes()) {
            boolean before = outcome.topic().stage().compareTo(Topics.FIRST_CUT.stage()) < 0;
            breaches.require(
                    !before || pinned.outcomes().contains(outcome),
                    outcome.topic(),
                    outcome.subject(),
                    outcome,
                    "not as before");
        }
        return breaches.found();
    }

    private static List<Violation> pinnedAgain(Respondent respondent, FloorSurvey survey, long seed) {
        Recommendation free = respondent.recommend(survey);
        Breaches breaches = new Breaches("pinning-what-was-decided-changes-nothing", survey);
        List<Outcome> outcomes = free.outcomes();
        Outcome pin = outcomes.get(new SplittableRandom(seed).nextInt(outcomes.size()));
        Recommendation pinned = respondent.recommendPinned(survey, List.of(pin));
        breaches.require(
                pinned.outcomes().equals(outcomes),
                pin.topic(),
                pin.subject(),
                "the same outcomes",
                pinned.outcomes().stream()
                        .filter(outcome -> !outcomes.contains(outcome))
                        .toList());
        breaches.require(pinned.plan().equals(free.plan()), Topics.VERDICT, free.plan(), pinned.plan());
        return breaches.found();
    }
}
