package stoneprocess.core.gloss;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;

/**
 * A finished floor against its signed test area.
 *
 * @param verdict the outcome: the firmest objection among the findings
 * @param findings what stands against accepting; empty when accepted
 * @param meanShare floor's mean over the test area's; empty when one of them is not read
 * @param spotShare lowest reading over the floor's mean; empty when the floor is not read
 * @param edgeShare mean of the edges over mean of the centre; empty when one of them is not read
 */
public record AcceptanceCheck(
        AcceptanceVerdict verdict,
        Set<AcceptanceFinding> findings,
        Optional<Share> meanShare,
        Optional<Share> spotShare,
        Optional<Share> edgeShare) {
    public AcceptanceCheck {
        Refuse.nulls(AcceptanceCheck.class, verdict, findings, meanShare, spotShare, edgeShare);
        EnumSet<AcceptanceFinding> copy = EnumSet.noneOf(AcceptanceFinding.class);
        copy.addAll(findings);
        findings = Collections.unmodifiableSet(copy);
    }

    /**
     * Judges a floor. Accepted are a mean of {@code acceptance.mean} (90 %) of the test area's or more, no spot under
     * {@code acceptance.spot} (80 %) of the floor's mean, and edges at {@code acceptance.edge} (85 %) of the centre or
     * more. The three shares are common practice, no source. A mean of 0 GU compares as 100 %.
     *
     * @param floor readings of the floor; readings that were set aside do not count
     * @param edgeZones names of the zones that are edges; the others are the centre
     * @param testArea readings of the test area; another angle than the floor's is refused
     * @param parameters the three shares
     */
    public static AcceptanceCheck of(
            ReadingSet floor, Set<String> edgeZones, ReadingSet testArea, Parameters parameters) {
        Objects.requireNonNull(edgeZones, "edgeZones");
        Objects.requireNonNull(parameters, "parameters");
        if (floor.geometry() != testArea.geometry()) {
            throw new InvalidInputException(
                    "test-area.geometry",
                    testArea.geometry().key(),
                    "the floor's angle, " + floor.geometry().key());
        }
        List<Gloss> edges = floor.used().stream()
                .filter(reading -> edgeZones.contains(reading.zone()))
                .map(Reading::gloss)
                .toList();
        List<Gloss> centre = floor.used().stream()
                .filter(reading -> !edgeZones.contains(reading.zone()))
                .map(Reading::gloss)
                .toList();
        List<Gloss> lowest = floor.values().stream().sorted().limit(1).toList();
        EnumSet<AcceptanceFinding> findings = EnumSet.noneOf(AcceptanceFinding.class);
        missing(testArea.values(), AcceptanceFinding.TEST_AREA_NOT_READ, findings);
        missing(centre, AcceptanceFinding.CENTRE_NOT_READ, findings);
        missing(edges, AcceptanceFinding.EDGES_NOT_READ, findings);
        Optional<Share> mean = ratio(floor.values(), testArea.values());
        Optional<Share> spot = ratio(lowest, floor.values());
        Optional<Share> edge = ratio(edges, centre);
        low(mean, "acceptance.mean", AcceptanceFinding.MEAN_TOO_LOW, findings, parameters);
        low(spot, "acceptance.spot", AcceptanceFinding.SPOT_TOO_LOW, findings, parameters);
        low(edge, "acceptance.edge", AcceptanceFinding.EDGES_TOO_LOW, findings, parameters);
        AcceptanceVerdict verdict = AcceptanceVerdict.ACCEPTED;
        for (AcceptanceFinding finding : findings) {
            verdict = finding.verdict().compareTo(verdict) > 0 ? finding.verdict() : verdict;
        }
        return new AcceptanceCheck(verdict, findings, mean, spot, edge);
    }

    private static void missing(List<Gloss> values, AcceptanceFinding finding, Set<AcceptanceFinding> findings) {
        if (values.isEmpty()) {
            findings.add(finding);
        }
    }

    private static void low(
            Optional<Share> share,
            String limit,
            AcceptanceFinding finding,
            Set<AcceptanceFinding> findings,
            Parameters parameters) {
        if (share.isPresent() && share.get().compareTo(parameters.get(limit, Share.class)) < 0) {
            findings.add(finding);
        }
    }

    private static Optional<Share> ratio(List<Gloss> part, List<Gloss> whole) {
        if (part.isEmpty() || whole.isEmpty()) {
            return Optional.empty();
        }
        double mean = Sample.of(whole).mean();
        return Optional.of(new Share(mean == 0 ? 100 : 100 * Sample.of(part).mean() / mean));
    }
}
