package stoneprocess.core.plan;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.TrackKind;

/**
 * The answer to a survey. It holds keys and arguments, never sentences; text is made from it last. The same survey,
 * parameters, sequence and rulebase give an equal recommendation. Immutable and safe to share between threads. It
 * advises; local codes and the roles that its warnings name decide.
 *
 * <p>Every quantity in it carries its unit, see {@link stoneprocess.core.quantity.Dimension}. Each figure has its source
 * with the parameter that it comes from, each reason with the card of its rule, each warning by id as in
 * {@link stoneprocess.core.source.Sources}. No component is null: what is not there is an empty list or empty.
 *
 * @param status what it amounts to
 * @param plan what is done; empty when refused or at an impasse
 * @param refusals the reasons of a refusal; none otherwise
 * @param warnings hazards, in the order of {@link Hazard}; never left out because there is no plan
 * @param questions what nobody knows yet, the weightiest first
 * @param counterOffers ways out of an impasse or a refusal; none otherwise
 * @param outcomes how every topic was closed, in the order of the topic table
 * @param survey the survey that it answers
 * @param sequence the grades that were to choose from
 * @param parameters the numbers that it was made with, each with unit and source
 * @param rulebase which rules made it
 */
public record Recommendation(
        Status status,
        Optional<Plan> plan,
        List<Reason> refusals,
        List<SafetyWarning> warnings,
        List<Question> questions,
        List<CounterOffer<?>> counterOffers,
        List<Outcome> outcomes,
        FloorSurvey survey,
        GritSequence sequence,
        Parameters parameters,
        RulebaseStamp rulebase) {
    /** The kinds of damage by whose share of the floor the cut is decided. */
    public static final List<DamageKind> CUT_BY_SHARE =
            List.of(DamageKind.SCRATCHES, DamageKind.WEAR, DamageKind.ETCHES, DamageKind.LIPPAGE, DamageKind.WAVINESS);

    /** Version of the recommendation's JSON form. */
    public static final String FORMAT = "floor-recommendation/1";

    /**
     * Copies the lists.
     *
     * @throws NullPointerException when a list or one of its members is null
     */
    public Recommendation {
        Refuse.nulls(
                Recommendation.class,
                status,
                plan,
                refusals,
                warnings,
                questions,
                counterOffers,
                outcomes,
                survey,
                sequence,
                parameters,
                rulebase);
        refusals = List.copyOf(refusals);
        warnings = List.copyOf(warnings);
        questions = List.copyOf(questions);
        counterOffers = List.copyOf(counterOffers);
        outcomes = List.copyOf(outcomes);
    }

    /**
     * The decision of a topic for a subject; empty when it was not reached or ended in an impasse.
     *
     * @param topic one of the topics that rules decide
     * @param subject what fits the topic's scope: the floor, a track, or a track at one grit
     * @throws InvalidInputException for a subject of another scope, naming those that are accepted
     */
    public <V> Optional<Decision<V>> decision(Topic<V> topic, Subject subject) {
        if (!topic.scope().fits(subject)) {
            throw new InvalidInputException(
                    topic.id() + ".subject", subject.key(), topic.scope().subjects());
        }
        return Outcome.decision(outcomes, topic, subject);
    }

    /**
     * The values of a topic for a subject; none when it was not decided.
     *
     * @param topic one of the table, chosen by rules or derived
     * @param subject as in {@link #decision}
     * @throws InvalidInputException for a subject of another scope
     */
    public <V> List<V> values(Topic<V> topic, Subject subject) {
        return decision(topic, subject).map(Decision::values).orElse(List.of());
    }

    /** The planned steps of a part of the floor, in their order; none without a plan and where it is not cut. */
    public List<PlannedStep> steps(TrackKind kind) {
        return plan.map(known -> known.steps(kind)).orElse(List.of());
    }

    /**
     * Holds its parts against one another, as a stored one is when it is read: the plan, the warnings and the refusals
     * are those of its outcomes, lanes are zones of its survey. Whether the rules would decide so again is not looked at.
     *
     * @throws InvalidInputException naming the first part that contradicts another, and what the other says
     */
    public void requireCoherent() {
        new Coherence(this).require();
    }

    /** All impasses, in the order of the topic table; none when every topic was decided. */
    public List<Impasse<?>> impasses() {
        return outcomes.stream()
                .<Impasse<?>>mapMulti((outcome, impasses) -> outcome.stuck().ifPresent(impasses))
                .toList();
    }

    /** The findings of a kind of damage in any zone; slight lippage needs no treatment and is none. */
    public List<Damage> told(DamageKind kind) {
        int mildest = kind == DamageKind.LIPPAGE ? LippageClass.MODERATE.ordinal() : 1;
        return survey.zones().stream()
                .flatMap(zone -> zone.damage(kind).value().stream())
                .filter(damage -> damage.severity(parameters) >= mildest)
                .toList();
    }

    /** The told damages by whose share the cut is decided and of which nobody said how much of the floor has them. */
    public List<DamageKind> withoutShare() {
        return CUT_BY_SHARE.stream()
                .filter(kind ->
                        told(kind).stream().anyMatch(damage -> damage.share().isEmpty()))
                .toList();
    }
}
