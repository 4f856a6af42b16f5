package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.meaning.RuleReach;
import stoneprocess.rules.internal.run.Run;

/**
 * Finds what is worth finding out: answers each unknown fact in every way that the rules can tell apart, one fact at a
 * time, and sees which topics end otherwise. Where one answer alone tells nothing, because it only counts together with
 * another that is not known either, such as volts with amperes, the other is answered too.
 */
public final class WhatElseSearch {
    /** What one question may try; a floor of three zones of which nothing is known stays far below. */
    private static final int STEPS = 10_000;

    private static final String ZONE = "floor";

    private final RuleReach reach;
    private final Parameters parameters;
    private final GritSequence sequence;
    private final FloorSurvey survey;
    private final SearchBudget budget;
    private final List<String> untried = new ArrayList<>();

    WhatElseSearch(
            RuleReach reach, FloorSurvey survey, Parameters parameters, GritSequence sequence, SearchBudget budget) {
        this.reach = reach;
        this.survey = survey;
        this.parameters = parameters;
        this.sequence = sequence;
        this.budget = budget;
    }

    /** What is worth finding out about a floor, by the given rules. */
    public static WhatElse find(
            RuleReach reach, FloorSurvey survey, Parameters parameters, GritSequence sequence, RulebaseStamp stamp) {
        return new WhatElseSearch(reach, survey, parameters, sequence, new SearchBudget(STEPS)).answer(stamp);
    }

    /** What the search comes to. */
    WhatElse answer(RulebaseStamp stamp) {
        Base asItIs = base(survey);
        List<WhatElse.Open> open = new ArrayList<>();
        for (String name : Candidates.names()) {
            if (unknown(name)) {
                add(open, name, topics(asItIs, name), howFound(name));
            }
        }
        if (survey.readings().isEmpty()) {
            Base zoned = zoned(asItIs);
            add(open, Facts.READINGS, topics(zoned, Facts.READINGS, read(zoned.survey())), HowFound.METER);
        }
        open.sort(Comparator.comparing(question -> -question.topics().size()));
        return new WhatElse(open, untried, stamp);
    }

    /**
     * A floor to which one answer is added.
     *
     * @param floor the floor
     * @param ends how its topics end without that answer
     */
    private record Base(SurveyedFloor floor, Map<Matter, Object> ends) {
        FloorSurvey survey() {
            return floor.survey();
        }
    }

    private Base base(FloorSurvey of) {
        SurveyedFloor floor = new SurveyedFloor(of, parameters, sequence);
        return new Base(floor, ends(floor.run(reach.all(), Stage.SAFETY)));
    }

    /** The same with one zone where it has none, so that something can be seen or read there. */
    private Base zoned(Base base) {
        return base.survey().zones().isEmpty()
                ? new Base(new SurveyedFloor(withZone(base.survey()), parameters, sequence), base.ends())
                : base;
    }

    private void add(List<WhatElse.Open> open, String name, Set<Topic<?>> topics, HowFound howFound) {
        if (budget.isCutShort()) {
            untried.add(name);
        }
        if (!topics.isEmpty()) {
            List<Topic<?>> ordered =
                    RuleReach.decided().stream().filter(topics::contains).toList();
            open.add(new WhatElse.Open(name, ordered, howFound));
        }
    }

    private boolean unknown(String name) {
        Optional<DamageKind> kind = Facts.damage(name);
        return kind.map(damage -> survey.zones().isEmpty()
                        || survey.zones().stream()
                                .anyMatch(zone -> !zone.damage(damage).isKnown()))
                .orElseGet(() -> !survey.answer(SurveyField.named(name)).isKnown());
    }

    private static HowFound howFound(String name) {
        return Facts.damage(name)
                .map(DamageKind::howFound)
                .orElseGet(() -> SurveyField.named(name).howFound());
    }

    private Set<Topic<?>> topics(Base base, String name) {
        Set<Topic<?>> topics = topicsOf(base, name);
        if (!topics.isEmpty()) {
            return topics;
        }
        for (String partner : Candidates.names()) {
            if (!partner.equals(name) && unknown(partner) && feedTheSame(name, partner)) {
                for (FloorSurvey known : answered(zonedFor(partner, base), partner)) {
                    if (budget.step()) {
                        topics.addAll(topicsOf(base(known), name));
                    }
                }
            }
        }
        return topics;
    }

    private Set<Topic<?>> topicsOf(Base base, String name) {
        Base answerable = zonedFor(name, base);
        return topics(answerable, name, answered(answerable, name));
    }

    private Base zonedFor(String name, Base base) {
        return Facts.damage(name).isPresent() ? zoned(base) : base;
    }

    private static boolean feedTheSame(String name, String partner) {
        return Facts.types().stream()
                .map(Facts::reads)
                .anyMatch(fields -> fields.contains(name) && fields.contains(partner));
    }

    /** The survey with every answer that the rules can tell apart; damage that is unknown in several zones in each, and
     * in all of them alike. */
    private List<FloorSurvey> answered(Base base, String name) {
        List<FloorSurvey> answered = new ArrayList<>();
        Candidates candidates = new Candidates(base.floor(), reach);
        for (Change change : candidates.of(name)) {
            if (change.isFoundOut() && !candidates.isTwin(change)) {
                possible(base.survey(), change).ifPresent(answered::add);
            }
        }
        Facts.damage(name)
                .ifPresent(damage ->
                        damage.terms().forEach(look -> answered.add(everywhere(base.survey(), damage, look))));
        return answered;
    }

    private static Optional<FloorSurvey> possible(FloorSurvey base, Change change) {
        try {
            return Optional.of(change.in(base));
        } catch (InvalidInputException impossible) {
            // It contradicts another answer, so that nobody will find it.
            return Optional.empty();
        }
    }

    private static FloorSurvey withZone(FloorSurvey base) {
        return base.toBuilder()
                .zone(new Zone(ZONE, ZoneKind.FIELD, new Share(100), Map.of()))
                .build();
    }

    private static FloorSurvey everywhere(FloorSurvey base, DamageKind kind, Term look) {
        Damage damage = look.equals(kind.none())
                ? Damage.none(kind)
                : new Damage(kind, Optional.of(look), Optional.empty(), Optional.of(new Share(100)));
        List<Zone> zones = base.zones().stream()
                .map(zone -> zone.damage(kind).isKnown() ? zone : zone.with(damage))
                .toList();
        return base.toBuilder().zones(zones).build();
    }

    /** The survey with one reading of a clean, dry surface, of every finish that it may show. */
    private List<FloorSurvey> read(FloorSurvey base) {
        List<Quantity> glosses = new ArrayList<>(List.of(new Gloss(0)));
        glosses.addAll(Finish.SCALE.in(parameters).limits());
        List<FloorSurvey> read = new ArrayList<>();
        for (Quantity gloss : glosses) {
            GlossReading reading = new GlossReading(
                    base.zones().get(0).name(), Geometry.DEG_60, (Gloss) gloss, SurfaceState.CLEAN_DRY);
            read.add(base.toBuilder().reading(reading).build());
        }
        return read;
    }

    /** Topics that end otherwise in one of the surveys that answer a name; what the rules see alike is run once. */
    private Set<Topic<?>> topics(Base base, String name, List<FloorSurvey> answered) {
        Set<Topic<?>> topics = new HashSet<>();
        Set<List<Object>> seen = new HashSet<>();
        for (FloorSurvey known : answered) {
            if (!budget.step()) {
                break;
            }
            SurveyedFloor.Changed changed = base.floor().changed(reach.all(), Stage.SAFETY, known, Set.of(name));
            if (seen.add(changed.seen())) {
                budget.replanned();
                Map<Matter, Object> after = ends(changed.run(reach.all(), Stage.SAFETY));
                Stream.concat(base.ends().keySet().stream(), after.keySet().stream())
                        .filter(matter -> !Objects.equals(base.ends().get(matter), after.get(matter)))
                        .forEach(matter -> topics.add(matter.topic()));
            }
        }
        return topics;
    }

    /** The values of each topic for each subject; an impasse is an end of its own. */
    private static Map<Matter, Object> ends(Run run) {
        Map<Matter, Object> ends = new LinkedHashMap<>();
        for (Outcome outcome : run.outcomes()) {
            Object end = outcome instanceof Decision<?> decision ? decision.keys() : "impasse";
            ends.put(Matter.of(outcome), end);
        }
        return ends;
    }
}
