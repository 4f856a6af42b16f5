package stoneprocess.core.site;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Sealer;

/**
 * One way of doing a floor that an owner can choose.
 *
 * @param finish the finish wanted; empty for that of the survey
 * @param scope how much of its plan is done
 */
public record Variant(Optional<Finish> finish, VariantScope scope) {
    public Variant {
        Refuse.nulls(Variant.class, finish, scope);
    }

    /** The plan for the survey as it is. */
    public static Variant asPlanned() {
        return new Variant(Optional.empty(), VariantScope.AS_PLANNED);
    }

    /** All of the plan for another finish. */
    public static Variant of(Finish finish) {
        return new Variant(Optional.of(finish), VariantScope.AS_PLANNED);
    }

    /**
     * Reads a finish, a scope, or both with a comma between, such as {@code hone,unsealed}.
     *
     * @param field the name of what is read, for an error
     */
    public static Variant parse(String text, String field) {
        String[] parts = text.split(",", -1);
        Optional<Finish> finish = find(Finish.values(), parts[0]);
        Optional<VariantScope> scope = find(VariantScope.values(), parts[parts.length - 1]);
        boolean whole = parts.length == 1
                ? finish.isPresent() || scope.isPresent()
                : parts.length == 2 && finish.isPresent() && scope.isPresent();
        if (!whole) {
            throw new InvalidInputException(
                    field,
                    text,
                    "a finish, one of " + keys(Finish.values()) + ", or one of " + keys(VariantScope.values())
                            + ", or both with a comma between");
        }
        return new Variant(finish, scope.orElse(VariantScope.AS_PLANNED));
    }

    private static <T extends Term> Optional<T> find(T[] terms, String key) {
        return Stream.of(terms).filter(term -> term.key().equals(key)).findFirst();
    }

    private static String keys(Term[] terms) {
        return String.join(", ", Stream.of(terms).map(Term::key).toList());
    }

    /**
     * The ways that an owner of this floor would ask about, the plan as it is first: waves left, a planetary machine hired
     * where that saves {@code quotation.hire-from} of the hours, unsealed, repairs only, as far as the plan has them.
     */
    public static List<Variant> offered(Recommendation recommendation) {
        List<Variant> offered = new ArrayList<>(List.of(asPlanned()));
        Optional<Plan> cutting =
                recommendation.plan().filter(plan -> !plan.tracks().isEmpty());
        if (cutting.isEmpty() || recommendation.status() != Status.PLANNED) {
            return offered;
        }
        Stream.of(VariantScope.WAVES_LEFT, VariantScope.HIRED_PLANETARY)
                .map(scope -> new Variant(Optional.empty(), scope))
                .filter(variant -> variant.closed(recommendation).isEmpty())
                .filter(variant -> variant.scope() != VariantScope.HIRED_PLANETARY
                        || saved(recommendation) >= recommendation.parameters().part("quotation.hire-from"))
                .forEach(offered::add);
        if (cutting.get().sealer() != Sealer.NONE) {
            offered.add(new Variant(Optional.empty(), VariantScope.UNSEALED));
        }
        if (!cutting.get().repairs().isEmpty()) {
            offered.add(new Variant(Optional.empty(), VariantScope.REPAIRS_ONLY));
        }
        return offered.subList(0, Math.min(offered.size(), QuotationRequest.MOST_VARIANTS));
    }

    /** Why a scope that changes the survey changes nothing on this floor; a machine is hired only where it saves hours. */
    Optional<NotQuoted> closed(Recommendation asPlanned) {
        FloorSurvey survey = asPlanned.survey();
        if (scope == VariantScope.WAVES_LEFT) {
            boolean level = new Variant(Optional.empty(), scope).on(survey).equals(survey);
            return level ? Optional.of(NotQuoted.NO_WAVES) : Optional.empty();
        }
        boolean useless = scope == VariantScope.HIRED_PLANETARY && saved(asPlanned) <= 0;
        return useless ? Optional.of(NotQuoted.NO_USE_OF_A_PLANETARY) : Optional.empty();
    }

    /** The part of the hours that a planetary machine which is not on hand would save, 0 to 1. */
    private static double saved(Recommendation asPlanned) {
        if (!PlannedJob.isThere(asPlanned) || asPlanned.survey().workedArea().isEmpty()) {
            return 0;
        }
        List<MachineHours> hours = MachineHours.of(asPlanned, PlannedJob.of(asPlanned, JobOptions.defaults()));
        boolean hired = hours.size() > 1
                && hours.get(0).machine() == MachineClass.PLANETARY
                && !hours.get(0).onHand();
        return hired
                ? 1 - hours.get(0).likely().minutes() / hours.get(1).likely().minutes()
                : 0;
    }

    /**
     * The survey with the finish that is wanted here, without its waves or with a planetary machine on hand where the scope
     * says so; a gloss that was agreed for another finish is forgotten.
     */
    public FloorSurvey on(FloorSurvey survey) {
        FloorSurvey.Builder builder = survey.toBuilder();
        if (scope == VariantScope.WAVES_LEFT) {
            survey.zones().stream()
                    .filter(zone -> zone.damages().containsKey(DamageKind.WAVINESS))
                    .forEach(zone -> builder.replace(zone, zone.with(Damage.none(DamageKind.WAVINESS))));
        }
        if (scope == VariantScope.HIRED_PLANETARY) {
            survey.answer(SurveyField.MACHINES).value().ifPresent(machines -> {
                Set<MachineClass> more = EnumSet.copyOf(machines);
                more.add(MachineClass.PLANETARY);
                builder.set(SurveyField.MACHINES, more);
            });
        }
        return withFinish(builder.build());
    }

    private FloorSurvey withFinish(FloorSurvey survey) {
        return finish.map(wanted -> survey.toBuilder()
                        .set(SurveyField.GOAL, Goal.valueOf(wanted.name()))
                        .unknown(SurveyField.GOAL_GLOSS)
                        .build())
                .orElse(survey);
    }
}
