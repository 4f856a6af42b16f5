package stoneprocess.core.site;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.estimate.CrewTiming;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.input.Printable;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;

/**
 * What belongs to one quotation and not to the house, whose rates and terms are in its {@link PriceList}.
 *
 * @param client who asked, as a title, up to 200 characters
 * @param date the day on which it is sent, as the house writes it, up to 200 characters
 * @param variants the ways asked for, 1 to {@link #MOST_VARIANTS}, each once; the first is what the others are compared with
 * @param distance one way to the site, driven there and back on each working day, up to 2000 km; empty where nobody told it
 * @param job what the plan does not know
 * @param timings the crew's own rates; those of steps that a variant lacks are left out there
 */
public record QuotationRequest(
        String client,
        String date,
        List<Variant> variants,
        Optional<Length> distance,
        JobOptions job,
        List<CrewTiming> timings) {
    /** As many columns as a page holds. */
    public static final int MOST_VARIANTS = 4;

    private static final int LONGEST_TITLE = 200;
    private static final double MOST_DISTANCE = 2e9;

    public QuotationRequest {
        Refuse.nulls(QuotationRequest.class, client, date, variants, distance, job, timings);
        timings = List.copyOf(timings);
        Printable.require("client", client, LONGEST_TITLE, "a title");
        Printable.require("date", date, LONGEST_TITLE, "a date");
        variants = List.copyOf(variants);
        if (variants.isEmpty() || variants.size() > MOST_VARIANTS) {
            throw new InvalidInputException("variants", variants.size() + " of them", "1 to " + MOST_VARIANTS);
        }
        if (variants.stream().distinct().count() < variants.size()) {
            throw new InvalidInputException("variants", "one of them twice", "each once");
        }
        distance.filter(way -> way.millimetres() > MOST_DISTANCE).ifPresent(way -> {
            throw new InvalidInputException("distance", way.print(), "2000 km or less");
        });
    }

    /** The plan for the survey as it is, without a distance and by default hours. */
    public static QuotationRequest asPlanned(String client, String date) {
        return new QuotationRequest(
                client, date, List.of(Variant.asPlanned()), Optional.empty(), JobOptions.defaults(), List.of());
    }

    /** The same with other variants. */
    public QuotationRequest withVariants(List<Variant> other) {
        return new QuotationRequest(client, date, other, distance, job, timings);
    }

    /** The same with a distance. */
    public QuotationRequest withDistance(Length other) {
        return new QuotationRequest(client, date, variants, Optional.of(other), job, timings);
    }

    /** The same with what the plan does not know. */
    public QuotationRequest withJob(JobOptions other) {
        return new QuotationRequest(client, date, variants, distance, other, timings);
    }

    /** The same with the crew's own rates. */
    public QuotationRequest withTimings(List<CrewTiming> other) {
        return new QuotationRequest(client, date, variants, distance, job, other);
    }
}
