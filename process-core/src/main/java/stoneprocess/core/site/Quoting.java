package stoneprocess.core.site;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.estimate.Alternative;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.Estimator;
import stoneprocess.core.estimate.JobStep;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.estimate.PriceTerms;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.estimate.Work;
import stoneprocess.core.parameter.NamedScale;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.site.Quotation.QuotedJob;
import stoneprocess.core.site.Quotation.QuotedVariant;
import stoneprocess.core.site.Quotation.Unknown;
import stoneprocess.core.site.Quotation.Visit;
import stoneprocess.core.site.Quotation.VisitKind;
import stoneprocess.core.survey.ChangedBy;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.TrackKind;

/** Makes one quotation. */
final class Quoting {
    /** Part of a price below which an owner's choice makes no difference worth telling; a condition always does. */
    private static final double LEAST_SHARE = 0.01;

    /** Work that an owner orders; the rest is how a crew goes about it. */
    private static final Set<Work> ORDERED =
            EnumSet.of(Work.MASKING, Work.TEST_AREA, Work.OTHER_WORK, Work.OPEN_FIELD, Work.SLURRY, Work.SEALING);

    /** Scopes that are plans of another survey. */
    private static final Set<VariantScope> CHANGING = EnumSet.of(VariantScope.WAVES_LEFT, VariantScope.HIRED_PLANETARY);

    private final FloorSurvey survey;
    private final QuotationRequest request;
    private final PriceList prices;
    private final PriceTerms terms;
    private final Function<FloorSurvey, Recommendation> planner;
    private final List<Unknown> unknowns = new ArrayList<>();
    private final List<String> untried = new ArrayList<>();
    private final Set<String> taken = new TreeSet<>();

    Quoting(
            FloorSurvey survey,
            QuotationRequest request,
            PriceList prices,
            Function<FloorSurvey, Recommendation> planner) {
        this.survey = survey;
        this.request = request;
        this.prices = prices;
        this.planner = planner;
        this.terms = prices.requireTerms();
    }

    Quotation quotation() {
        List<QuotedVariant> variants = new ArrayList<>();
        for (Variant variant : request.variants()) {
            Recommendation plan = planner.apply(variant.on(survey));
            QuotedVariant quoted = quoted(variant, plan).withChance(chance(variant, plan));
            if (variants.isEmpty()) {
                quoted.job()
                        .ifPresent(job ->
                                tryAnswers(variant, plan, job.price().lines().total()));
            }
            variants.add(quoted);
        }
        requireKnownTimes();
        unknowns.sort(Comparator.comparing(Quoting::width).reversed());
        return new Quotation(
                survey.title(),
                request.client(),
                request.date(),
                terms.validDays(),
                prices.currency(),
                request.distance(),
                variants,
                unknowns,
                untried,
                prices.exclusions());
    }

    private QuotedVariant quoted(Variant variant, Recommendation plan) {
        Optional<NotQuoted> notQuoted = notQuoted(variant, plan);
        return new QuotedVariant(
                variant,
                plan.status(),
                notQuoted.isPresent() ? Optional.empty() : Optional.of(job(variant, plan)),
                notQuoted,
                notQuoted.map(why -> before(why, plan)).orElse(List.of()),
                Optional.empty());
    }

    /** As the sheet of the floor's gloss tells it. */
    private static Optional<Share> chance(Variant variant, Recommendation plan) {
        return variant.scope() == VariantScope.REPAIRS_ONLY
                ? Optional.empty()
                : FloorGloss.of(plan, new GlossQuestion(Optional.empty(), new Gloss(1), Optional.empty(), List.of()))
                        .planned()
                        .flatMap(PlannedGloss::toTarget)
                        .map(PlannedGloss.ToTarget::chance);
    }

    private Optional<NotQuoted> notQuoted(Variant variant, Recommendation recommendation) {
        if (recommendation.status() == Status.PROVISIONAL) {
            return Optional.of(NotQuoted.HELD);
        }
        Optional<Plan> plan = recommendation.plan();
        if (plan.isEmpty()) {
            return Optional.of(NotQuoted.NO_PLAN);
        }
        if (!PlannedJob.isThere(recommendation)) {
            return Optional.of(NotQuoted.HELD);
        }
        if (variant.scope() == VariantScope.UNSEALED && plan.get().sealer() == Sealer.NONE) {
            return Optional.of(NotQuoted.NOT_SEALED);
        }
        if (variant.scope() == VariantScope.REPAIRS_ONLY && plan.get().repairs().isEmpty()) {
            return Optional.of(NotQuoted.NO_REPAIRS);
        }
        return CHANGING.contains(variant.scope()) ? variant.closed(planner.apply(survey)) : Optional.empty();
    }

    private QuotedJob job(Variant variant, Recommendation plan) {
        PlannedJob planned =
                PlannedJob.beside(plan, request.job()).in(variant.scope(), plan).at(request.distance());
        taken.addAll(planned.takesHours());
        Alternative timed = Alternative.withTimingsOfItsSteps("quoted", planned.job(), request.timings());
        Estimate estimate = new Estimator(plan.parameters()).estimate(timed.job(), timed.timings());
        return new QuotedJob(
                planned.job().area(),
                likely(planned.job().edges()),
                ordered(estimate, variant),
                planned.extents(),
                planned.job().steps().stream().map(JobStep::name).toList(),
                draws(planned.job().steps()),
                planned.job().site().night(),
                plan.plan().flatMap(Plan::finish).filter(finish -> variant.scope() != VariantScope.REPAIRS_ONLY),
                planned.job().sealing().isPresent(),
                planned.job().site().times(),
                estimate.calendar().days(),
                planned.notes(),
                prices.price(estimate, variant.scope() == VariantScope.HIRED_PLANETARY));
    }

    /** Rated power of the heaviest machine; none where no floor machine runs. */
    private static Power draws(List<JobStep> steps) {
        return steps.stream()
                .map(step -> step.machine().power())
                .max(Comparator.naturalOrder())
                .orElseGet(() -> new Power(0));
    }

    private static Length likely(Range<Length> edges) {
        return new Length((edges.low().kept() + edges.high().kept()) / 2);
    }

    /** Waves that are ground out stand before the floor; the path cuts longer where it stands proud. */
    private List<String> ordered(Estimate estimate, Variant variant) {
        List<String> ordered = new ArrayList<>(ordered(estimate));
        boolean wavy = !new Variant(Optional.empty(), VariantScope.WAVES_LEFT)
                .on(survey)
                .equals(survey);
        boolean ground = estimate.job().steps().stream()
                .anyMatch(step -> step.highSpots().isPresent());
        if (wavy && ground && variant.scope() != VariantScope.WAVES_LEFT) {
            ordered.add(ordered.indexOf(Work.OPEN_FIELD.key()), Quotation.WAVES);
        }
        return ordered;
    }

    private static List<String> ordered(Estimate estimate) {
        return estimate.work().stream()
                .filter(line -> ORDERED.contains(line.work()))
                .map(line -> line.work() == Work.OTHER_WORK
                        ? line.subject().orElseThrow().split(" ", 2)[0]
                        : line.work().key())
                .distinct()
                .toList();
    }

    /** Hours given for work that only some variants have are left out of the others. */
    private void requireKnownTimes() {
        for (String work : new TreeSet<>(request.job().times().keySet())) {
            if (!taken.contains(work)) {
                throw new InvalidInputException(
                        "times", work, taken.isEmpty() ? "no times" : "one of " + String.join(", ", taken));
            }
        }
    }

    /** A held plan may have its test area once it is let go; a refused one has nothing to prove. */
    private List<Visit> before(NotQuoted why, Recommendation plan) {
        return switch (why) {
            case HELD -> List.of(visit(VisitKind.SURVEY, plan), visit(VisitKind.TEST_AREA, plan));
            case NO_PLAN -> List.of(visit(VisitKind.SURVEY, plan));
            case NOT_SEALED, NO_REPAIRS, NO_WAVES, NO_USE_OF_A_PLANETARY -> List.of();
        };
    }

    private Visit visit(VisitKind kind, Recommendation plan) {
        Spread<TimeSpan> hours = new Estimator(plan.parameters())
                .visit(
                        kind == VisitKind.SURVEY ? "visit.survey" : "estimate.test-area",
                        kind == VisitKind.SURVEY
                                ? 0
                                : plan.steps(TrackKind.OPEN_FIELD).size(),
                        request.distance());
        return new Visit(kind, hours, prices.price(hours, request.distance()));
    }

    /** Plans and prices the floor again for each class of answer to each open question that is not the house's own. */
    private void tryAnswers(Variant variant, Recommendation plan, Money now) {
        for (Question question : plan.questions()) {
            SurveyField<?> field = SurveyField.all().stream()
                    .filter(known -> known.name().equals(question.field()))
                    .findFirst()
                    .orElse(null);
            if (field != null && isOfTheHouse(field)) {
                continue;
            }
            List<Quotation.Answer> answers =
                    field == null ? List.of() : answers(field, plan, answered -> total(variant, answered));
            if (answers.isEmpty()) {
                untried.add(question.field());
                continue;
            }
            Unknown unknown = new Unknown(question.field(), field.changedBy() == ChangedBy.OWNER, now, answers);
            double share = width(unknown).amount().doubleValue() / now.amount().doubleValue();
            if (unknown.mayStop() || share >= (unknown.ownersChoice() ? LEAST_SHARE : Double.MIN_VALUE)) {
                unknowns.add(unknown);
            }
        }
    }

    private static boolean isOfTheHouse(SurveyField<?> field) {
        return field.section().equals("equipment") || field == SurveyField.SHIFT || field == SurveyField.CREW;
    }

    private Optional<Money> total(Variant variant, FloorSurvey answered) {
        return quoted(variant, planner.apply(answered))
                .job()
                .map(job -> job.price().lines().total());
    }

    private static Money width(Unknown unknown) {
        return new Money(
                unknown.most().amount().subtract(unknown.least().amount()),
                unknown.most().currency());
    }

    /** What each class of the field leads to; none for damage, readings, names and lists. */
    private static List<Quotation.Answer> answers(
            SurveyField<?> field, Recommendation plan, Function<FloorSurvey, Optional<Money>> total) {
        return values(field, plan.parameters())
                .flatMap(value -> possible(plan.survey().toBuilder().put(field, value)).stream()
                        .map(survey -> new Quotation.Answer(from(value), total.apply(survey))))
                .toList();
    }

    private static String from(Object value) {
        return value instanceof Term term ? term.key() : ((Quantity) value).print();
    }

    /** Some answers contradict others of the survey, so that nobody can give them. */
    private static Optional<FloorSurvey> possible(FloorSurvey.Builder builder) {
        try {
            return Optional.of(builder.build());
        } catch (InvalidInputException contradiction) {
            return Optional.empty();
        }
    }

    private static Stream<?> values(SurveyField<?> field, Parameters parameters) {
        if (field.kind() instanceof FieldKind.Choice choice) {
            return Stream.of(choice.type().getEnumConstants());
        }
        if (field.kind() instanceof FieldKind.Measure measure && measure.scale().isPresent()) {
            NamedScale<?> scale = measure.scale().get();
            return Stream.concat(
                    Stream.of(Quantity.of(
                            BigDecimal.valueOf(measure.limits().low()),
                            measure.dimension().unit())),
                    scale.in(parameters).limits().stream());
        }
        return Stream.empty();
    }
}
