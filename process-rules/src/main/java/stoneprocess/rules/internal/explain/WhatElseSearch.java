package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.Collection;
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
    private static final String ZONE = "floor";

    private final RuleReach reach;
    private final Parameters parameters;
    private final GritSequence sequence;
    private final FloorSurvey survey;

    private WhatElseSearch(RuleReach reach, FloorSurvey survey, Parameters parameters, GritSequence sequence) {
        this.reach = reach;
        this.survey = survey;
        this.parameters = parameters;
        this.sequence = sequence;
    }

    /** What is worth finding out about a floor, by the given rules. */
    public static WhatElse find(
            RuleReach reach, FloorSurvey survey, Parameters parameters, GritSequence sequence, RulebaseStamp stamp) {
        return new WhatElse(new WhatElseSearch(reach, survey, parameters, sequence).open(), stamp);
    }

    private List<WhatElse.Open> open() {
        List<WhatElse.Open> open = new ArrayList<>();
        for (String name : Candidates.names()) {
            if (unknown(name)) {
                add(open, name, topics(name), howFound(name));
            }
        }
        if (survey.readings().isEmpty()) {
            add(open, Facts.READINGS, topics(survey, read()), HowFound.METER);
        }
        open.sort(Comparator.comparing(question -> -question.topics().size()));
        return open;
    }

    private static void add(List<WhatElse.Open> open, String name, Set<Topic<?>> topics, HowFound howFound) {
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

    private Set<Topic<?>> topics(String name) {
        Set<Topic<?>> topics = topics(survey, answered(survey, name));
        if (!topics.isEmpty()) {
            return topics;
        }
        for (String partner : Candidates.names()) {
            if (!partner.equals(name) && unknown(partner) && feedTheSame(name, partner)) {
                for (FloorSurvey known : answered(survey, partner)) {
                    topics.addAll(topics(known, answered(known, name)));
                }
            }
        }
        return topics;
    }

    private static boolean feedTheSame(String name, String partner) {
        return Facts.types().stream()
                .map(Facts::reads)
                .anyMatch(fields -> fields.contains(name) && fields.contains(partner));
    }

    /** The survey with every answer that the rules can tell apart; damage that is unknown in several zones in each, and
     * in all of them alike. */
    private List<FloorSurvey> answered(FloorSurvey base, String name) {
        Optional<DamageKind> kind = Facts.damage(name);
        if (kind.isPresent() && base.zones().isEmpty()) {
            return answered(withZone(base), name);
        }
        List<FloorSurvey> answered = new ArrayList<>();
        for (Change change : new Candidates(new SurveyedFloor(base, parameters, sequence), reach).of(name)) {
            if (change.isFoundOut()) {
                possible(base, change).ifPresent(answered::add);
            }
        }
        kind.ifPresent(damage -> damage.terms().forEach(look -> answered.add(everywhere(base, damage, look))));
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
    private List<FloorSurvey> read() {
        FloorSurvey base = survey.zones().isEmpty() ? withZone(survey) : survey;
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

    /** Topics that end otherwise in one of the answered surveys. */
    private Set<Topic<?>> topics(FloorSurvey base, Collection<FloorSurvey> answered) {
        Map<Matter, Object> before = ends(base);
        Set<Topic<?>> topics = new HashSet<>();
        for (FloorSurvey known : answered) {
            Map<Matter, Object> after = ends(known);
            Stream.concat(before.keySet().stream(), after.keySet().stream())
                    .filter(matter -> !Objects.equals(before.get(matter), after.get(matter)))
                    .forEach(matter -> topics.add(matter.topic()));
        }
        return topics;
    }

    /** The values of each topic for each subject; an impasse is an end of its own. */
    private Map<Matter, Object> ends(FloorSurvey of) {
        Run run = new SurveyedFloor(of, parameters, sequence).run(reach.all(), Stage.SAFETY);
        Map<Matter, Object> ends = new LinkedHashMap<>();
        for (Outcome outcome : run.outcomes()) {
            Object end = outcome instanceof Decision<?> decision ? decision.keys() : "impasse";
            ends.put(Matter.of(outcome), end);
        }
        return ends;
    }
}
