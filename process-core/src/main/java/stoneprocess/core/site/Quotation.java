package stoneprocess.core.site;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.Price;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.estimate.Work;
import stoneprocess.core.estimate.WorkingTimes;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.term.Term;

/**
 * Prices of a floor that a house can send: the variants asked for side by side, what nobody knows yet and changes the
 * first price, and what the prices do not cover. A variant that is held or refused has no price, but what may be done
 * before has.
 *
 * @param floor the title of the survey
 * @param client who asked
 * @param date the day on which it is sent, as the house writes it
 * @param validDays days from then on for which the prices hold
 * @param currency label of all amounts
 * @param distance one way to the site, driven there and back on each working day; empty where nobody told it
 * @param variants the variants, in the order asked for
 * @param unknowns what nobody knows and changes the first price by a hundredth or more, or can stop it, the widest first;
 *     never what the house decides: its shift, people and equipment
 * @param untried names of questions of the first plan whose answers were not tried out
 * @param exclusions what the prices do not cover, in the house's words
 */
public record Quotation(
        String floor,
        String client,
        String date,
        int validDays,
        String currency,
        Optional<Length> distance,
        List<QuotedVariant> variants,
        List<Unknown> unknowns,
        List<String> untried,
        List<String> exclusions) {
    /** The version of the JSON form. */
    public static final String FORMAT = "quotation/1";

    /** Name of the work that grinds waves out. */
    public static final String WAVES = "waves";

    public Quotation {
        Refuse.nulls(Quotation.class, floor, client, date, currency, distance, variants, unknowns, untried, exclusions);
        variants = List.copyOf(variants);
        unknowns = List.copyOf(unknowns);
        untried = List.copyOf(untried);
        exclusions = List.copyOf(exclusions);
    }

    /**
     * One variant: a job with a price, or why it has none.
     *
     * @param variant what was asked for
     * @param status what its plan amounts to
     * @param job what is offered; empty where there is no price
     * @param notQuoted why there is no price; empty where there is one
     * @param before what may be done before a price can be told
     * @param chance how likely the open floor reads what the finish stands for at the end of the work, as {@link FloorGloss}
     *     foretells it; empty without a price and where no gloss can be foretold
     */
    public record QuotedVariant(
            Variant variant,
            Status status,
            Optional<QuotedJob> job,
            Optional<NotQuoted> notQuoted,
            List<Visit> before,
            Optional<Share> chance) {
        public QuotedVariant {
            Refuse.nulls(QuotedVariant.class, variant, status, job, notQuoted, before, chance);
            if (job.isPresent() == notQuoted.isPresent()) {
                throw new InvalidInputException("not-quoted", notQuoted.toString(), "a job, or why there is none");
            }
            before = List.copyOf(before);
        }

        /** The same with a chance; none where there is no job. */
        QuotedVariant withChance(Optional<Share> other) {
            return new QuotedVariant(variant, status, job, notQuoted, before, other.filter(share -> job.isPresent()));
        }
    }

    /**
     * A job that can be ordered.
     *
     * @param area area worked
     * @param edges length of walls and fittings that are worked by hand
     * @param work names of what is done, in its order: a preparation, repair or closing task, {@code open-field} for all grits
     *     of the floor, {@link #WAVES}, or another work of {@link Work}
     * @param extents how many pieces, or how much area, some of it is priced for
     * @param steps names of the grits of the open field, and of powder
     * @param night share of the work at night rates
     * @param finish the finish that the plan aims at; empty where the open field keeps its face
     * @param sealed whether a sealer ends it
     * @param worked when the site is worked
     * @param days days until the floor is used again
     * @param notes what a reader has to know about the job
     * @param price its price
     */
    public record QuotedJob(
            Area area,
            Length edges,
            List<String> work,
            Map<String, Range<Quantity>> extents,
            List<String> steps,
            Power draws,
            Share night,
            Optional<Finish> finish,
            boolean sealed,
            WorkingTimes worked,
            Spread<Count> days,
            Set<JobNote> notes,
            Price price) {
        public QuotedJob {
            Refuse.nulls(
                    QuotedJob.class,
                    area,
                    edges,
                    work,
                    extents,
                    steps,
                    draws,
                    night,
                    finish,
                    worked,
                    days,
                    notes,
                    price);
            work = List.copyOf(work);
            extents = Collections.unmodifiableMap(new LinkedHashMap<>(extents));
            steps = List.copyOf(steps);
            notes = Collections.unmodifiableSet(new TreeSet<>(notes));
        }
    }

    /** What can be ordered before there is a price for the work. */
    public enum VisitKind implements Term {
        /** Questions of the plan are answered on site. */
        SURVEY,

        /** The steps are proven on a test area, after those who decide have let it go ahead. */
        TEST_AREA
    }

    /**
     * One visit.
     *
     * @param kind what it is for
     * @param hours person-hours
     * @param price its price
     */
    public record Visit(VisitKind kind, Spread<TimeSpan> hours, Price price) {
        public Visit {
            Refuse.nulls(Visit.class, kind, hours, price);
        }
    }

    /**
     * A question whose answer changes the price of the first variant, or can stop its work.
     *
     * @param field name of the survey field
     * @param ownersChoice whether the owner decides it, so that other answers are other prices; otherwise it is found out
     *     on site, and the price holds on a condition
     * @param now the total of the first variant while nobody has answered
     * @param answers what can be answered, in the order of the field's classes
     */
    public record Unknown(String field, boolean ownersChoice, Money now, List<Answer> answers) {
        public Unknown {
            Refuse.nulls(Unknown.class, field, now, answers);
            answers = List.copyOf(answers);
        }

        /** The lowest total that an answer leads to, or the one now. */
        public Money least() {
            return totals().min(Comparator.naturalOrder()).orElseThrow();
        }

        /** The highest, likewise. */
        public Money most() {
            return totals().max(Comparator.naturalOrder()).orElseThrow();
        }

        /** Whether an answer leads to no price at all. */
        public boolean mayStop() {
            return answers.stream().anyMatch(answer -> answer.total().isEmpty());
        }

        /** Whether the price counts on an answer: one that leads to the same total. */
        public boolean counted(Answer answer) {
            return answer.total().equals(Optional.of(now));
        }

        private Stream<Money> totals() {
            return Stream.concat(Stream.of(now), answers.stream().flatMap(answer -> answer.total().stream()));
        }
    }

    /**
     * One answer to an open question.
     *
     * @param from key of the choice, or the least value of a class of a measured field, such as {@code 10 C}
     * @param total what there is to pay then; empty where the work is held up or refused
     */
    public record Answer(String from, Optional<Money> total) {
        public Answer {
            Refuse.nulls(Answer.class, from, total);
        }
    }

    /**
     * The quotation for a floor. Safe to call from several threads where the planner is.
     *
     * @param request what belongs to this quotation
     * @param prices the house's price list, with terms
     * @param planner plans a survey, such as {@code advisor::recommend}; asked once for each variant, and once for each
     *     class of answer to an open question of the first
     * @throws InvalidInputException for a list without terms, and for what {@link PlannedJob#of} refuses
     */
    public static Quotation of(
            FloorSurvey survey,
            QuotationRequest request,
            PriceList prices,
            Function<FloorSurvey, Recommendation> planner) {
        Refuse.nulls(Quotation.class, survey, request, prices, planner);
        return new Quoting(survey, request, prices, planner).quotation();
    }
}
