package stoneprocess.rules.testkit.law;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.CementSurface;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Extractor;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.IdentifiedBy;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.SolventRag;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.StoneColour;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.Condition.Scratches;
import stoneprocess.rules.internal.engine.HandMadeRule;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.space.SurveyGenerator;
import stoneprocess.rules.space.Unremarkable;
import stoneprocess.rules.testkit.SurveyKind;

/** The floors on which the laws are tried: typical ones, some of the other kinds, and some built for what is seldom met. */
final class LawFloors {
    /** How many floors a law has to meet before it says something. */
    static final int LEAST_MET = 100;

    private static final int TYPICAL = 300;
    private static final int OTHERS = 90;
    private static final int BUILT = 500;
    private static final GritSequence ALL = GritSequence.standard();
    private static final List<SurveyGenerator> KNOWN = Stream.of(100, 95, 80, 50)
            .map(share -> SurveyGenerator.of(new Share(share)))
            .toList();
    private static final List<SurveyKind> OTHER_KINDS =
            List.of(SurveyKind.VALID, SurveyKind.BOUNDARY, SurveyKind.NEAR_MISS);

    /** Wishes for crystalliser on every floor; no shipped rule wishes for acid. */
    static final LoadedRule WISH_FOR_ACID = HandMadeRule.of(
            "BAD-001",
            Topics.POLISHING_AGENT,
            Scratches.class,
            scratches -> true,
            scratches -> Topics.POLISHING_AGENT.wish(PolishingAgent.CRYSTALLISER));

    private static final Respondent WISHES_ACID = Respondent.remembering(Spoilt.rules(List.of(), WISH_FOR_ACID), 200);

    /** A change of a typical floor that makes a law more likely to meet it, and that leaves the law something to judge. */
    private interface Build {
        FloorSurvey of(FloorSurvey floor, SplittableRandom random);
    }

    private static final Map<Law, Build> BUILDS = Map.of(
            PlanLaws.ACID_ONLY_ON_CALCITE, LawFloors::mostlyMarbleToPolish,
            PlanLaws.DRY_ONLY_WITH_EXTRACTOR, LawFloors::slabWithoutWater,
            PlanLaws.NO_ENGINE_INDOORS, LawFloors::slabUnderAnEngine,
            PlanLaws.COATING_COMES_OFF_FIRST, LawFloors::coated,
            PlanLaws.DENSIFIER_ONLY_ON_CONCRETE, LawFloors::mostlySlab,
            Laws.REFUSAL_STANDS, LawFloors::refused,
            AnswerLaws.REFUSAL_IS_CERTAIN, LawFloors::refused,
            AnswerLaws.OFFER_TAKEN_IS_KEPT, LawFloors::fewGrits,
            FloorLaws.WIDER_DAMAGE_IS_NEVER_CUT_FINER, LawFloors::fewScratches,
            FloorLaws.HARDER_STONE_NEVER_TAKES_FEWER_PASSES, LawFloors::scratchedAlike);

    private static final List<Drawn> DRAWN = Stream.concat(
                    IntStream.range(0, TYPICAL).mapToObj(seed -> new Drawn(typical(seed), seed)),
                    IntStream.range(TYPICAL, TYPICAL + OTHERS).mapToObj(seed -> new Drawn(other(seed), seed)))
            .toList();

    private LawFloors() {}

    /**
     * A floor and what varies it.
     *
     * @param seed chooses among variations of the floor
     */
    record Drawn(FloorSurvey floor, long seed) {}

    /** Who answers for a law in the normal run: the shipped rules, but for a law that these never meet. */
    static Respondent respondent(Law law) {
        return law == PlanLaws.ACID_ONLY_ON_CALCITE ? WISHES_ACID : Spoilt.SHIPPED;
    }

    /** The first floor of the normal run on which a law finds fault with somebody; asked as often as there. */
    static Optional<Drawn> finds(Law law, Respondent respondent) {
        int met = 0;
        for (Drawn drawn : (Iterable<Drawn>) Stream.concat(built(law), all().stream())::iterator) {
            if (!law.violations(respondent, drawn.floor(), drawn.seed()).isEmpty()) {
                return Optional.of(drawn);
            }
            met += law.meets(respondent, drawn.floor(), drawn.seed()) ? 1 : 0;
            if (met >= LEAST_MET && !Laws.ofOneAnswer().contains(law)) {
                break;
            }
        }
        return Optional.empty();
    }

    /** Floors of all kinds, most of them typical. */
    static List<Drawn> all() {
        return DRAWN;
    }

    /** Floors built for a law that meets few of the others; none for the rest. */
    static Stream<Drawn> built(Law law) {
        Build build = BUILDS.get(law);
        return build == null
                ? Stream.empty()
                : IntStream.range(0, BUILT)
                        .mapToObj(seed -> new Drawn(build.of(typical(seed), new SplittableRandom(~seed)), seed));
    }

    private static FloorSurvey typical(int seed) {
        return SurveyKind.TYPICAL.draw(KNOWN.get(0), Parameters.standard(), new SplittableRandom(1955L + seed));
    }

    private static FloorSurvey other(int seed) {
        return OTHER_KINDS
                .get(seed % OTHER_KINDS.size())
                .draw(KNOWN.get(seed % KNOWN.size()), Parameters.standard(), new SplittableRandom(1955L + seed));
    }

    private static FloorSurvey mostlyMarbleToPolish(FloorSurvey floor, SplittableRandom random) {
        FloorSurvey.Builder built =
                floor.toBuilder().set(SurveyField.GOAL, Goal.POLISH).set(SurveyField.HISTORIC, Historic.NO);
        if (random.nextInt(4) > 0) {
            built.set(SurveyField.STONE_NAME, "calcite-marble")
                    .set(SurveyField.IDENTIFIED_BY, IdentifiedBy.PETROGRAPHER)
                    .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                    .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                    .set(SurveyField.COLOUR, StoneColour.PALE)
                    .unknown(SurveyField.CEMENT_SURFACE);
        }
        return withAllGrits(built).build();
    }

    private static FloorSurvey.Builder slab(FloorSurvey floor) {
        return withAllGrits(floor.toBuilder())
                .set(SurveyField.STONE_NAME, "concrete")
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                .set(SurveyField.SCRIBER, ScriberTest.NOT_SCRATCHED)
                .set(SurveyField.CEMENT_SURFACE, CementSurface.GROUND)
                .set(SurveyField.COATING, Coating.NONE);
    }

    private static FloorSurvey slabWithoutWater(FloorSurvey floor, SplittableRandom random) {
        Damage deep = Damage.seen(DamageKind.SCRATCHES, ScratchClass.DEEP, new Share(80));
        FloorSurvey.Builder built = slab(floor)
                .set(SurveyField.WATER_SUPPLY, Presence.NONE)
                .zones(floor.zones().stream().map(zone -> zone.with(deep)).toList());
        if (random.nextInt(4) > 0) {
            built.set(SurveyField.EXTRACTOR, Extractor.HEPA);
        }
        return built.build();
    }

    private static FloorSurvey slabUnderAnEngine(FloorSurvey floor, SplittableRandom random) {
        FloorSurvey.Builder built =
                slab(floor).set(SurveyField.MACHINES, Set.of(MachineClass.PROPANE_MACHINE, MachineClass.EDGE_TOOL));
        if (random.nextInt(4) > 0) {
            built.set(SurveyField.SETTING, Setting.OUTDOORS).unknown(SurveyField.ROOM_VOLUME);
        }
        return built.build();
    }

    private static FloorSurvey mostlySlab(FloorSurvey floor, SplittableRandom random) {
        return random.nextInt(4) > 0 ? slab(floor).build() : floor;
    }

    private static FloorSurvey coated(FloorSurvey floor, SplittableRandom random) {
        List<Coating> coats = List.of(Coating.WAX, Coating.ACRYLIC, Coating.URETHANE, Coating.EPOXY);
        return floor.toBuilder()
                .set(SurveyField.COATING, coats.get(random.nextInt(coats.size())))
                .set(SurveyField.SOLVENT_RAG, SolventRag.FILM)
                .build();
    }

    /** A dull floor with scratches of one look over a small part. */
    private static FloorSurvey fewScratches(FloorSurvey floor, SplittableRandom random) {
        ScratchClass[] looks = ScratchClass.values();
        ScratchClass look = looks[1 + random.nextInt(looks.length - 1)];
        Zone zone = Unremarkable.floor().build().zones().get(0);
        return floor.toBuilder()
                .zones(List.of(
                        zone.with(Damage.seen(DamageKind.SCRATCHES, look, new Share(1 + 3 * random.nextDouble())))))
                .build();
    }

    /** Some of these are refused for another reason, or for several. */
    private static FloorSurvey refused(FloorSurvey floor, SplittableRandom random) {
        FloorSurvey.Builder built = floor.toBuilder();
        return (random.nextBoolean()
                        ? built.set(SurveyField.SOUNDING, Sounding.LOOSE)
                        : built.set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.CONFIRMED))
                .build();
    }

    private static FloorSurvey fewGrits(FloorSurvey floor, SplittableRandom random) {
        return floor.toBuilder()
                .set(
                        SurveyField.GRADES,
                        ALL.grades().stream()
                                .filter(grade -> random.nextInt(3) == 0)
                                .toList())
                .build();
    }

    /** The depth is measured, so that as much is to be taken off whatever the stone. */
    private static FloorSurvey scratchedAlike(FloorSurvey floor, SplittableRandom random) {
        Damage measured =
                Damage.measured(DamageKind.SCRATCHES, new Length(0.05 + 0.2 * random.nextDouble()), new Share(80));
        return withAllGrits(floor.toBuilder())
                .set(SurveyField.STONE_NAME, random.nextBoolean() ? "calcite-marble" : "limestone")
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                .unknown(SurveyField.CEMENT_SURFACE)
                .zones(floor.zones().stream().map(zone -> zone.with(measured)).toList())
                .build();
    }

    private static FloorSurvey.Builder withAllGrits(FloorSurvey.Builder floor) {
        return floor.set(SurveyField.GRADES, ALL.grades());
    }
}
