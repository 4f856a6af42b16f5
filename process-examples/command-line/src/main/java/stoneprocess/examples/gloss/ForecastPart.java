package stoneprocess.examples.gloss;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.TargetVerdict;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.site.NoForecast;
import stoneprocess.core.site.PlannedGloss;
import stoneprocess.core.site.PlannedGloss.ToTarget;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** What the plan would bring at 60 degrees, or why that cannot be told. */
final class ForecastPart {
    private final Recommendation recommendation;
    private final FloorGloss gloss;
    private final Parameters parameters;
    private final Figures figures;
    private final Texts texts;

    ForecastPart(Recommendation recommendation, FloorGloss gloss, Figures figures, Texts texts) {
        this.recommendation = recommendation;
        this.gloss = gloss;
        this.parameters = recommendation.parameters();
        this.figures = figures;
        this.texts = texts;
    }

    /** The answer in a sentence or two. */
    String answer() {
        return gloss.planned()
                .map(planned -> planned.toTarget()
                        .map(way -> headline(planned, way))
                        .orElseGet(() -> "FORECAST. " + noTarget()))
                .orElseGet(() -> "NO FORECAST. " + String.join(" ", obstacles()));
    }

    private String noTarget() {
        return "A hone has no lower limit of gloss; give one with --gloss to learn the chance of reaching it.";
    }

    private String headline(PlannedGloss planned, ToTarget way) {
        String wanted = figures.read(way.target().gloss());
        String start = way.target()
                .finish()
                .map(finish -> capital(texts.word(Wording.of(finish))) + " begins at " + wanted)
                .orElse("Wanted are " + wanted);
        TargetOutlook outlook = way.outlook();
        String verdict = switch (outlook.verdict()) {
            case REACHED -> "LIKELY REACHED.";
            case MORE_PASSES -> "MORE PASSES LIKELY REACH IT.";
            case FINER_GRIT ->
                way.beyond(planned.lastGrit())
                        ? "A GRIT BEYOND THE PLAN LIKELY REACHES IT."
                        : "THE PLAN LIKELY REACHES IT.";
            case OPEN -> "OPEN.";
            case OUT_OF_REACH -> "OUT OF REACH BY POLISHING GRITS ALONE.";
            case OVER_CEILING -> "OVER THE STONE'S CEILING.";
        };
        return verdict + " " + start + " at 60 degrees."
                + (outlook.verdict() == TargetVerdict.OVER_CEILING ? "" : " " + end(planned, way));
    }

    private String end(PlannedGloss planned, ToTarget way) {
        return "The chance that "
                + gloss.zone().map(name -> "zone " + name).orElse("the open field") + " gets there by resin "
                + planned.lastGrit() + ", the last grit of the plan, is " + Figures.chance(way.chance()) + ".";
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    void writeTo(Sheet sheet) {
        sheet.heading("What the plan would bring, open field, 60 degrees"
                + gloss.zone()
                        .filter(name -> gloss.planned().isPresent())
                        .map(name -> ", zone " + name)
                        .orElse(""));
        gloss.planned().ifPresentOrElse(planned -> forecast(sheet, planned), () -> sheet.items(obstacles()));
    }

    private void forecast(Sheet sheet, PlannedGloss planned) {
        sheet.rows(rows(planned));
        if (recommendation.status() == Status.PROVISIONAL) {
            sheet.item("The plan is provisional: nothing is cut until its questions are answered.");
        }
        cautions(sheet, planned);
        planned.toTarget().ifPresentOrElse(way -> target(sheet, planned, way), () -> sheet.item(noTarget()));
        sheet.item(basis(planned.basis()));
    }

    private List<List<String>> rows(PlannedGloss planned) {
        List<List<String>> rows = new ArrayList<>();
        Share level = parameters.get("gloss-forecast.level", Share.class);
        rows.add(List.of("after", "passes", level.print() + " of such floors", "half of them over"));
        planned.now().ifPresent(now -> rows.add(row("now, resin ", now)));
        planned.ends().forEach(end -> rows.add(row("resin ", end)));
        return rows;
    }

    private static List<String> row(String name, GlossPrediction prediction) {
        return List.of(
                name + prediction.grit(),
                Integer.toString(prediction.passes()),
                Figures.outwards(prediction.interval()),
                Figures.whole(prediction.median()));
    }

    private void cautions(Sheet sheet, PlannedGloss planned) {
        sheet.item("Passes are the fewer of the plan's.");
        if (!planned.coarserFirst().isEmpty()) {
            sheet.item("Metal and transition grits grind the old face away, so what it read before no longer counts;"
                    + " they are reckoned as resin of the same number at its end, which leaves no less gloss.");
        }
        if (isWorkedDry()) {
            sheet.item("Some of it is worked dry; the forecast is for wet passes.");
        }
        PolishingAgent agent = recommendation.plan().map(Plan::polishingAgent).orElse(PolishingAgent.NONE);
        if (agent != PolishingAgent.NONE) {
            sheet.item("The plan ends with " + texts.word(Wording.of(agent, "name"))
                    + ", which may lift it beyond the last grit; the forecast stops before.");
        }
        if (!gloss.withoutCeiling().isEmpty()) {
            sheet.item("The figures are for stone. This floor has no ceiling of its own, so take them with care.");
        }
    }

    private boolean isWorkedDry() {
        return recommendation.plan().stream()
                .flatMap(plan -> plan.tracks().stream())
                .filter(track -> track.kind() == TrackKind.OPEN_FIELD)
                .flatMap(track -> track.steps().stream())
                .anyMatch(step -> step.method() == WorkMethod.DRY);
    }

    private void target(Sheet sheet, PlannedGloss planned, ToTarget way) {
        TargetOutlook outlook = way.outlook();
        String wanted = figures.read(way.target().gloss());
        if (outlook.verdict() != TargetVerdict.OVER_CEILING) {
            sheet.item("The chance of " + wanted + " or more at the end of the plan, resin " + planned.lastGrit() + ": "
                    + Figures.chance(way.chance()) + ".");
        }
        sheet.item(way(planned, way, wanted));
        if (outlook.startedTooFine()) {
            sheet.item("It was likely started too fine: damage older than this start keeps it under " + wanted
                    + " in " + Figures.chance(outlook.oldDamage())
                    + " of such floors, whatever grit follows. Go back to a coarser start.");
        } else {
            sheet.item("Damage older than this start keeps it under " + wanted + " in "
                    + Figures.chance(outlook.oldDamage()) + " of such floors, whatever grit follows.");
        }
    }

    private String way(PlannedGloss planned, ToTarget way, String wanted) {
        TargetOutlook outlook = way.outlook();
        String likely = "likely (" + share("gloss-target.likely") + " or more)";
        return switch (outlook.verdict()) {
            case REACHED ->
                "It is " + likely + " there already: "
                        + Figures.chance(outlook.reachedBy().orElseThrow().probability()) + ".";
            case MORE_PASSES ->
                "More passes of the grit in work: " + wanted + " is " + likely + " after "
                        + outlook.reachedBy().orElseThrow().passes() + " passes of resin "
                        + outlook.reachedBy().orElseThrow().grit() + ".";
            case FINER_GRIT ->
                "The first grit that " + likely + " reaches it is "
                        + name(planned, outlook.reachedBy().orElseThrow().grit())
                        + ", with "
                        + Figures.chance(outlook.reachedBy().orElseThrow().probability())
                        + (way.beyond(planned.lastGrit()) ? "; the plan does not go so far." : ".");
            case OPEN -> "No grit " + likely + " reaches it" + best(planned, outlook) + ".";
            case OUT_OF_REACH ->
                "Out of reach (under " + share("gloss-target.unlikely") + "), whatever polishing grit follows"
                        + best(planned, outlook) + ".";
            case OVER_CEILING ->
                wanted + " is more than the stone can read: "
                        + Figures.whole(
                                KnownStone.of(recommendation).lowestCeiling().at60()) + " when perfectly smooth.";
        };
    }

    private String share(String parameter) {
        return parameters.get(parameter, Share.class).print();
    }

    private String best(PlannedGloss planned, TargetOutlook outlook) {
        return outlook.best()
                .map(option ->
                        ": at best " + name(planned, option.grit()) + ", with " + Figures.chance(option.probability()))
                .orElse("");
    }

    private static String basis(ForecastBasis basis) {
        if (basis.defaultsOnly()) {
            return "It rests on common practice alone; no reading of this floor went into it."
                    + " Readings at the hold points narrow it.";
        }
        return "It rests on " + Figures.count(basis.readings(), "reading", "readings") + " of this floor, taken on "
                + Figures.count(basis.occasions(), "occasion", "occasions")
                + ", over common practice.";
    }

    /** Where the forecast's figures come from; empty when there is none. */
    List<String> sources() {
        return gloss.planned()
                .map(planned -> planned.basis().sources().stream()
                        .map(source -> "Forecast: " + source.print()
                                + (source.published() ? "; on stone a working assumption." : "; low confidence."))
                        .toList())
                .orElse(List.of());
    }

    private List<String> obstacles() {
        return gloss.obstacles().stream().map(this::words).toList();
    }

    private String words(NoForecast obstacle) {
        return switch (obstacle) {
            case NO_PLAN -> "There is no plan to forecast: " + whyNoPlan() + " The plan command tells the cause.";
            case FIELD_NOT_CUT -> "The plan does not cut the open field: it stays as it reads.";
            case NO_RESIN_GRIT -> "The plan runs no resin grit in the open field.";
            case SOFT -> "The stone is soft: it is honed at most, and no final gloss of its grits is known.";
            case MACHINE_MADE ->
                "The floor is machine-made: its face comes from a factory,"
                        + " and what grits give on it is not known.";
            case UNKNOWN_STONE ->
                "What the floor is made of is not known well enough: "
                        + "what it may be differs in hardness or kind. Identify it first.";
            case MIXED -> "Hard and soft stones lie side by side: each reads on its own.";
        };
    }

    private String whyNoPlan() {
        return switch (recommendation.status()) {
            case REFUSED -> "the work is refused.";
            case UNDECIDED -> "it hinges on open questions.";
            case IMPASSE -> "what is wanted and what the floor allows do not meet.";
            case PLANNED, PROVISIONAL -> throw new IllegalStateException("A plan without a plan");
        };
    }

    /** A grit as the plan runs it; one that the plan does not run is resin. */
    private String name(PlannedGloss planned, int grit) {
        return planned.coarserFirst().stream()
                .filter(grade -> grade.number() == grit)
                .map(grade -> texts.word(Wording.of(grade.bond())) + " " + grit)
                .findFirst()
                .orElse("resin " + grit);
    }
}
