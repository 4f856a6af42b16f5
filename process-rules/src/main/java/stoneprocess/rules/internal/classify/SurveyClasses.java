package stoneprocess.rules.internal.classify;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.parameter.NamedScale;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.AgeClass;
import stoneprocess.core.survey.CementSurface;
import stoneprocess.core.survey.Damp;
import stoneprocess.core.survey.DampSource;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.PieceSize;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.LastGrit;
import stoneprocess.rules.feature.EdgeLength;
import stoneprocess.rules.feature.FinishGap;
import stoneprocess.rules.feature.FinishMatch;
import stoneprocess.rules.feature.SupplyClass;

/** Answers of a survey that have to be measured by a scale, or read together, before they are classes. */
final class SurveyClasses {
    private static final NamedScale<AgeClass> AGE = new NamedScale<>("age", AgeClass.class);

    private static final NamedScale<PieceSize> PIECES = new NamedScale<>("piece", PieceSize.class);

    private SurveyClasses() {}

    /** The class of a measured answer, or all classes when it is unknown. */
    static <E extends Enum<E> & Term> Set<E> scaled(
            Situation situation, SurveyField<? extends Quantity> field, NamedScale<E> scale) {
        return situation
                .survey()
                .answer(field)
                .value()
                .<Set<E>>map(
                        measured -> EnumSet.of(scale.in(situation.parameters()).classify(measured)))
                .orElseGet(() -> EnumSet.allOf(scale.classes()));
    }

    /** As answered; a layer that nobody looked for is none in a floor laid, bed included, after asbestos was banned. */
    static Set<HazardousLayer> layer(Situation situation) {
        boolean open = !situation.survey().answer(SurveyField.HAZARDOUS_LAYER).isKnown();
        boolean young = scaled(situation, SurveyField.LAID_AGO, AGE).stream()
                .allMatch(age -> age.compareTo(AgeClass.ASBESTOS_YEARS) < 0);
        return open && young
                ? EnumSet.of(HazardousLayer.NONE, HazardousLayer.CLEARED)
                : situation.answer(SurveyField.HAZARDOUS_LAYER, HazardousLayer.class);
    }

    /** As answered; else large pieces are no mosaic. Small ones are not only one: they may be cleft or glazed as well. */
    static Set<Face> laidFace(Situation situation) {
        Set<Face> faces = EnumSet.copyOf(situation.answer(SurveyField.FACE, Face.class));
        Set<PieceSize> sizes = scaled(situation, SurveyField.TILE_EDGE, PIECES);
        if (faces.size() > 1 && sizes.equals(EnumSet.of(PieceSize.LARGE))) {
            faces.remove(Face.MOSAIC);
        }
        return faces;
    }

    /** Moisture against the dry reference; where nobody read a meter, what is told of water in the floor. */
    static Set<Damp> damp(Situation situation) {
        Share tolerance = situation.parameters().get("moisture.above-reference", Share.class);
        return DerivedFigure.MOISTURE_ABOVE_REFERENCE
                .of(situation.survey(), situation.parameters())
                .map(excess -> new Share(Math.max(0, excess)))
                .<Set<Damp>>map(excess ->
                        EnumSet.of(excess.compareTo(tolerance) > 0 ? Damp.ABOVE_REFERENCE : Damp.AS_DRY_REFERENCE))
                .orElseGet(() -> situation
                                .survey()
                                .answer(SurveyField.DAMP)
                                .value()
                                .filter(source -> source != DampSource.NONE)
                                .isPresent()
                        ? EnumSet.of(Damp.ABOVE_REFERENCE)
                        : EnumSet.allOf(Damp.class));
    }

    /** As answered; else diamond, powder and crystalliser tell that the surface had been ground. */
    static Set<CementSurface> cementFace(Situation situation) {
        if (situation.survey().answer(SurveyField.CEMENT_SURFACE).isKnown()) {
            return situation.answer(SurveyField.CEMENT_SURFACE, CementSurface.class);
        }
        EnumSet<CementSurface> surfaces = EnumSet.noneOf(CementSurface.class);
        for (LastTreatment treatment : situation.answer(SurveyField.LAST_TREATMENT, LastTreatment.class)) {
            switch (treatment) {
                case DIAMOND, POWDER, CRYSTALLISER -> surfaces.add(CementSurface.GROUND);
                case NONE, COATING -> surfaces.addAll(EnumSet.allOf(CementSurface.class));
            }
        }
        return surfaces;
    }

    /** How much edge there is for the area; a length of nothing needs no area. */
    static Set<EdgeLength> edges(Situation situation) {
        Optional<Length> edges = situation.survey().answer(SurveyField.EDGES).value();
        if (edges.isEmpty()) {
            return EnumSet.allOf(EdgeLength.class);
        }
        if (edges.get().millimetres() == 0) {
            return EnumSet.of(EdgeLength.NONE);
        }
        return DerivedFigure.EDGES_BEYOND_NARROW
                .of(situation.survey(), situation.parameters())
                .<Set<EdgeLength>>map(beyond -> EnumSet.of(beyond > 0 ? EdgeLength.MUCH : EdgeLength.USUAL))
                .orElseGet(() -> EnumSet.of(EdgeLength.USUAL, EdgeLength.MUCH));
    }

    /** What the circuit carries without a break. */
    static Set<SupplyClass> supply(Situation situation) {
        return DerivedFigure.SUPPLY
                .of(situation.survey(), situation.parameters())
                .<Set<SupplyClass>>map(kilowatts -> EnumSet.of(
                        DerivedFigure.SUPPLY_SCALE.in(situation.parameters()).classify(new Power(kilowatts))))
                .orElseGet(() -> EnumSet.allOf(SupplyClass.class));
    }

    /** A gloss counts where a sample is to be matched; while the goal is unknown it could be any other. */
    static Set<Finish> wanted(Situation situation) {
        FloorSurvey survey = situation.survey();
        Optional<Goal> goal = survey.answer(SurveyField.GOAL).value();
        if (goal.isEmpty()) {
            return EnumSet.allOf(Finish.class);
        }
        if (goal.get() == Goal.JUST_BETTER) {
            return situation.answer(SurveyField.FINISH_NOW, Finish.class);
        }
        if (goal.get() != Goal.MATCH_SAMPLE) {
            return EnumSet.of(Finish.valueOf(goal.get().name()));
        }
        return scaled(situation, SurveyField.GOAL_GLOSS, Finish.SCALE);
    }

    /** Whether the floor has the finish that is wanted; who wants a polish is content with a floor that shines more. */
    static Set<FinishGap> gap(Situation situation) {
        if (situation.survey().answer(SurveyField.GOAL).value().equals(Optional.of(Goal.JUST_BETTER))) {
            return EnumSet.of(FinishGap.MET);
        }
        Set<Finish> wanted = wanted(situation);
        Set<Finish> now = situation.answer(SurveyField.FINISH_NOW, Finish.class);
        EnumSet<FinishGap> gaps = EnumSet.noneOf(FinishGap.class);
        for (Finish target : wanted) {
            for (Finish present : now) {
                boolean met = target == present || target == Finish.POLISH && present == Finish.HIGH_GLOSS;
                gaps.add(met ? FinishGap.MET : FinishGap.NOT_MET);
            }
        }
        return gaps;
    }

    /** Whether one of what a field lists is on hand. */
    static <E extends Enum<E>> Set<Presence> onHand(Situation situation, SurveyField<Set<E>> field, E kind) {
        return situation
                .survey()
                .answer(field)
                .value()
                .<Set<Presence>>map(listed -> EnumSet.of(listed.contains(kind) ? Presence.PRESENT : Presence.NONE))
                .orElseGet(() -> EnumSet.allOf(Presence.class));
    }

    /** Whether any grit is on hand. */
    static Set<Presence> anyGrade(Situation situation) {
        return situation
                .survey()
                .answer(SurveyField.GRADES)
                .value()
                .<Set<Presence>>map(grades -> EnumSet.of(grades.isEmpty() ? Presence.NONE : Presence.PRESENT))
                .orElseGet(() -> EnumSet.allOf(Presence.class));
    }

    /** The last grit that the finest resin grit on hand makes possible. */
    static Set<LastGrit> finestOnHand(Situation situation) {
        return situation
                .survey()
                .answer(SurveyField.GRADES)
                .value()
                .<Set<LastGrit>>map(grades -> EnumSet.of(finest(grades)))
                .orElseGet(() -> EnumSet.allOf(LastGrit.class));
    }

    private static LastGrit finest(List<AbrasiveGrade> grades) {
        int finest = grades.stream()
                .filter(grade -> grade.bond() == Bond.RESIN)
                .mapToInt(AbrasiveGrade::number)
                .max()
                .orElse(0);
        return Stream.of(LastGrit.values())
                .filter(grit -> grit.number() <= finest)
                .reduce((coarser, finer) -> finer)
                .orElse(LastGrit.G120);
    }

    /** The finish as it is called against what the brightest zone reads. */
    static Set<FinishMatch> statedFinish(Situation situation) {
        Set<Finish> brightest = glossRead(situation, Comparator.reverseOrder());
        Set<Finish> called = situation.answer(SurveyField.FINISH_NOW, Finish.class);
        EnumSet<FinishMatch> matches = EnumSet.noneOf(FinishMatch.class);
        for (Finish read : brightest) {
            for (Finish name : called) {
                matches.add(read.compareTo(name) < 0 ? FinishMatch.READS_LOWER : FinishMatch.MATCHES);
            }
        }
        return matches;
    }

    /** The class of the first zone in an order, by the mean of its readings at 60 degrees on clean, dry stone. */
    static Set<Finish> glossRead(Situation situation, Comparator<Double> order) {
        return situation.survey().readings().stream()
                .filter(reading -> reading.geometry() == Geometry.DEG_60 && reading.state() == SurfaceState.CLEAN_DRY)
                .collect(Collectors.groupingBy(
                        GlossReading::zone,
                        Collectors.averagingDouble(reading -> reading.gloss().gloss())))
                .values()
                .stream()
                .min(order)
                .<Set<Finish>>map(mean ->
                        EnumSet.of(Finish.SCALE.in(situation.parameters()).classify(new Gloss(mean))))
                .orElseGet(() -> EnumSet.allOf(Finish.class));
    }
}
