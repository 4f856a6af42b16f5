package stoneprocess.examples.gloss;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import stoneprocess.core.gloss.Film;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GeometryAdvice;
import stoneprocess.core.gloss.GlossCeiling;
import stoneprocess.core.gloss.GlossCheck;
import stoneprocess.core.gloss.GlossSuspicion;
import stoneprocess.core.gloss.GritPrior;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.gloss.ReadingSet;
import stoneprocess.core.gloss.SetAside;
import stoneprocess.core.gloss.ZoneStatistics;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** What was read, zone by zone and hold point by hold point, and how many readings a mean needs. */
final class ReadingsPart {
    /** A reading beyond what so many floors can give at a grit makes one look for a film. */
    private static final Share FILM_LEVEL = new Share(99);

    private final GlossInputs inputs;
    private final GlossQuestion question;
    private final Parameters parameters;
    private final Figures figures;
    private final Texts texts;
    private final Share confidence;

    ReadingsPart(GlossInputs inputs, GlossQuestion question, Figures figures, Texts texts) {
        this.inputs = inputs;
        this.question = question;
        this.parameters = inputs.recommendation().parameters();
        this.figures = figures;
        this.texts = texts;
        this.confidence = parameters.get("gloss-gain.confidence", Share.class);
    }

    void writeTo(Sheet sheet) {
        sheet.heading("What the floor reads, clean and dry");
        List<String> notRead = new ArrayList<>();
        for (String zone : zones()) {
            if (!zone(zone, sheet)) {
                notRead.add(zone);
            }
        }
        if (zones().isEmpty()) {
            sheet.item("The survey has no zones and so no readings. " + firstReading());
        } else if (!notRead.isEmpty()) {
            sheet.item("Not read: " + String.join(", ", notRead) + ". " + firstReading());
        }
        setAside(sheet);
        film(sheet);
        holdPoints(sheet);
    }

    private String firstReading() {
        return "Begin at " + GeometryAdvice.FIRST.degrees() + " degrees, lane and corner, three times each.";
    }

    private List<String> zones() {
        return inputs.recommendation().survey().zones().stream().map(Zone::name).toList();
    }

    private List<Gloss> values(String zone, Geometry geometry) {
        return ReadingSet.of(inputs.readings(), geometry).valuesByZone().getOrDefault(zone, List.of());
    }

    private boolean zone(String zone, Sheet sheet) {
        boolean read = false;
        for (Geometry geometry : Geometry.values()) {
            List<Gloss> values = values(zone, geometry);
            if (values.isEmpty()) {
                continue;
            }
            if (!read) {
                sheet.group(zone);
            }
            read = true;
            sheet.under("at " + geometry.degrees() + " degrees: " + statistics(values, geometry));
            overCeiling(values, geometry).ifPresent(sheet::under);
        }
        if (read) {
            sheet.under(angle(zone));
        }
        return read;
    }

    private String statistics(List<Gloss> values, Geometry geometry) {
        ZoneStatistics statistics = ZoneStatistics.of(values, confidence);
        String figure = Figures.count(statistics.count(), "reading", "readings") + ", mean "
                + figures.read(statistics.mean()) + ", lowest " + figures.read(statistics.lowest()) + ". ";
        return figure
                + statistics
                        .meanInterval()
                        .map(interval -> "The mean lies within " + figures.read(possible(interval, geometry)) + " ("
                                + confidence.print()
                                + "); single readings scatter by "
                                + figures.read(statistics.deviation().orElseThrow()) + ".")
                        .orElse("A single reading shows no scatter: it gives no interval and cannot show a gain."
                                + " At least 1 more is needed.");
    }

    /** No mean lies over the ceiling, however wide few readings make the interval. */
    private Range<Gloss> possible(Range<Gloss> interval, Geometry geometry) {
        Gloss most = inputs.stone().highestCeiling().at(geometry);
        boolean cut = interval.low().compareTo(most) < 0 && interval.high().compareTo(most) > 0;
        return cut ? Range.of(interval.low(), most) : interval;
    }

    private String angle(String zone) {
        List<Gloss> at60 = values(zone, Geometry.DEG_60);
        if (at60.isEmpty()) {
            return "Read it at 60 degrees too: that angle comes first, and the forecast knows no other.";
        }
        Gloss mean = ZoneStatistics.of(at60, confidence).mean();
        Geometry best = GeometryAdvice.best(mean, parameters);
        if (best == Geometry.DEG_60) {
            return "60 degrees tells most here.";
        }
        String limit =
                best == Geometry.DEG_85 ? "under " + limit("gloss-angle.low") : "over " + limit("gloss-angle.high");
        return best.degrees() + " degrees tells more here: at 60 degrees it reads " + limit + "."
                + (values(zone, best).isEmpty() ? " It is not read at that angle yet." : "");
    }

    private String limit(String name) {
        return figures.read(parameters.get(name, Gloss.class));
    }

    private Optional<String> overCeiling(List<Gloss> values, Geometry geometry) {
        List<String> over = values.stream()
                .filter(gloss -> isOver(gloss, geometry, inputs.stone().highestCeiling()))
                .map(figures::read)
                .toList();
        if (!over.isEmpty()) {
            return Optional.of("OVER THE CEILING: " + String.join(", ", over) + ". The stone reads "
                    + Figures.whole(inputs.stone().highestCeiling().at(geometry)) + " at most at " + geometry.degrees()
                    + " degrees. Check the meter's calibration, its angle and what the stone is;"
                    + " the forecast leaves it out.");
        }
        List<String> excluded = inputs.stone().ceilings().entrySet().stream()
                .filter(family -> values.stream().anyMatch(gloss -> isOver(gloss, geometry, family.getValue())))
                .map(family -> texts.word(Wording.of(family.getKey())))
                .toList();
        return excluded.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "More than " + Figures.or(excluded)
                                + " can read: the stone is another one, or a film reads. The forecast leaves such readings out.");
    }

    private boolean isOver(Gloss gloss, Geometry geometry, GlossCeiling ceiling) {
        return GlossCheck.of(gloss, geometry, ceiling, parameters).suspicion() == GlossSuspicion.OVER_CEILING;
    }

    private void setAside(Sheet sheet) {
        for (SetAside aside : ReadingSet.of(inputs.readings(), Geometry.DEG_60).setAside()) {
            Reading reading = aside.reading();
            String why = switch (aside.reason()) {
                case WET -> "wet: the water film reads, not the stone. Read it again dry.";
                case SOILED -> "soiled: dirt or slurry reads, not the stone. Clean it and read again.";
                case OTHER_GEOMETRY -> "";
            };
            if (!why.isEmpty()) {
                sheet.item("Set aside, " + reading.zone() + ", " + figures.read(reading.gloss()) + " at "
                        + reading.geometry().degrees() + " degrees: " + why);
            }
        }
    }

    private void film(Sheet sheet) {
        if (inputs.readings().isEmpty()) {
            return;
        }
        Optional<Coating> coating =
                inputs.recommendation().survey().answer(SurveyField.COATING).value();
        if (inputs.coated()) {
            sheet.item(
                    "FILM: the survey names a coating (" + coating.orElseThrow().key()
                            + "). These readings tell of the film, which reads up to "
                            + Figures.whole(Film.COATING.cap(Geometry.DEG_60))
                            + " at 60 degrees by itself; the forecast leaves them out.");
        } else if (coating.isEmpty()) {
            sheet.item("Whether a coating lies on the face is not known: the readings may be a film's.");
        }
    }

    private void holdPoints(Sheet sheet) {
        if (question.done().isEmpty()) {
            return;
        }
        Optional<String> zone = inputs.zone(question.zone());
        sheet.heading("What it read at the hold points, 60 degrees"
                + zone.map(name -> ", " + name).orElse(""));
        List<Gloss> before = zone.filter(name -> !inputs.coated())
                .map(name -> inputs.usable(name).values())
                .orElse(List.of());
        for (GritDone done : question.done()) {
            sheet.group("after resin " + done.grit() + ", " + Figures.count(done.passes(), "pass", "passes"));
            if (done.reads().isEmpty()) {
                sheet.under("not read");
                continue;
            }
            sheet.under(statistics(done.reads(), Geometry.DEG_60));
            if (!before.isEmpty()) {
                sheet.under(gain(Gain.of(before, done.reads(), parameters)));
            }
            suspicions(done).forEach(sheet::under);
            before = done.reads();
        }
    }

    private String gain(Gain gain) {
        String change = "Against the readings before: " + figures.change(gain.change());
        return switch (gain.verdict()) {
            case NOT_ENOUGH_READINGS ->
                change + ", which shows nothing yet: " + String.join(" and ", missing(gain))
                        + " missing until scatter is known.";
            case WITHIN_SCATTER ->
                change + " (" + figures.change(gain.interval().orElseThrow())
                        + "), which does not stand out from scatter and meter.";
            case REAL ->
                change + " (" + figures.change(gain.interval().orElseThrow()) + "): real, beyond scatter and meter.";
        };
    }

    private static List<String> missing(Gain gain) {
        List<String> missing = new ArrayList<>();
        if (gain.missingBefore() > 0) {
            missing.add(Figures.count(gain.missingBefore(), "reading", "readings") + " before");
        }
        if (gain.missingAfter() > 0) {
            missing.add(Figures.count(gain.missingAfter(), "reading", "readings") + " after");
        }
        return missing;
    }

    private List<String> suspicions(GritDone done) {
        List<String> suspicions = new ArrayList<>();
        overCeiling(done.reads(), Geometry.DEG_60).ifPresent(suspicions::add);
        Hardness hardness = inputs.stone().hardness().iterator().next();
        if (inputs.stone().hardness().size() > 1 || !GritPrior.CLASSES.contains(hardness)) {
            return suspicions;
        }
        Range<Gloss> usual = GritPrior.of(hardness, done.grit(), inputs.stone().highestCeiling(), parameters)
                .interval(FILM_LEVEL);
        TreeSet<Film> films = new TreeSet<>();
        List<String> high = new ArrayList<>();
        for (Gloss gloss : done.reads()) {
            GlossCheck check =
                    GlossCheck.of(gloss, Geometry.DEG_60, inputs.stone().highestCeiling(), usual, parameters);
            if (check.suspicion() == GlossSuspicion.FILM) {
                high.add(figures.read(gloss));
                films.addAll(check.films());
            }
        }
        if (!high.isEmpty()) {
            suspicions.add("FILM: " + String.join(", ", high) + " is more than resin " + done.grit()
                    + " gives (up to " + Figures.whole(usual.high()) + " on " + FILM_LEVEL.print()
                    + " of floors). "
                    + (films.isEmpty()
                            ? "No water and no usual coating reads that much: check the meter."
                            : "Look for "
                                    + Figures.or(films.stream().map(Term::key).toList())
                                    + " and for residue, and read again clean and dry."));
        }
        return suspicions;
    }

    /** How many readings give a mean of the wanted half width. */
    void needed(Sheet sheet) {
        sheet.heading("Readings for a mean within " + figures.read(question.within()) + " either way, "
                + confidence.print() + " sure, 60 degrees");
        List<List<String>> rows = new ArrayList<>();
        for (Map.Entry<String, List<Gloss>> zone :
                ReadingSet.of(inputs.readings(), Geometry.DEG_60).valuesByZone().entrySet()) {
            ZoneStatistics statistics = ZoneStatistics.of(zone.getValue(), confidence);
            Gloss deviation = statistics.deviation().orElseGet(() -> usualScatter(statistics.mean()));
            rows.add(List.of(
                    Figures.count(number(deviation), "reading", "readings"),
                    zone.getKey() + ": scatter " + figures.read(deviation)
                            + (statistics.deviation().isPresent()
                                    ? ", of its own " + statistics.count() + " readings"
                                    : ", usual for such gloss (common practice), since one reading shows none")));
        }
        if (rows.isEmpty()) {
            sheet.item("No zone is read clean and dry at 60 degrees, so its scatter is not known."
                    + " Read three times, then ask again.");
            return;
        }
        sheet.rows(rows);
    }

    private int number(Gloss deviation) {
        try {
            return ZoneStatistics.readingsNeeded(deviation, question.within(), confidence);
        } catch (InvalidInputException e) {
            throw new InvalidInputException("--within", e.value(), e.accepted());
        }
    }

    private Gloss usualScatter(Gloss mean) {
        double share = parameters.get("gloss-reading.scatter", Share.class).percent() / 100;
        double least =
                parameters.get("gloss-reading.least-scatter", Gloss.class).gloss();
        return new Gloss(Math.max(least, share * mean.gloss()));
    }
}
