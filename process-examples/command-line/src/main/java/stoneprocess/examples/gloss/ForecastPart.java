package stoneprocess.examples.gloss;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.GlossForecast;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.PlannedGrit;
import stoneprocess.core.gloss.TargetOption;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.TargetVerdict;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Step;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.site.GlossTarget;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** What the plan would bring at 60 degrees, or why that cannot be told. */
final class ForecastPart {
    private final GlossInputs inputs;
    private final GlossQuestion question;
    private final Parameters parameters;
    private final Figures figures;
    private final Texts texts;
    private final Optional<GlossForecast> forecast;
    private final Optional<GlossTarget> target;
    private final Optional<String> zone;

    ForecastPart(GlossInputs inputs, GlossQuestion question, Figures figures, Texts texts) {
        this.inputs = inputs;
        this.question = question;
        this.parameters = inputs.recommendation().parameters();
        this.figures = figures;
        this.texts = texts;
        this.zone = inputs.zone(question.zone());
        this.target = inputs.target(question.target());
        this.forecast = inputs.obstacles().isEmpty()
                ? Optional.of(GlossForecast.of(inputs.work(zone, question.done()), parameters))
                : Optional.empty();
    }

    /** The answer in a sentence or two. */
    String answer() {
        if (forecast.isEmpty()) {
            return "NO FORECAST. " + String.join(" ", obstacles());
        }
        return target.map(wanted -> headline(forecast.get(), wanted)).orElseGet(() -> "FORECAST. " + noTarget());
    }

    private String noTarget() {
        return "A hone has no lower limit of gloss; give one with --gloss to learn the chance of reaching it.";
    }

    private String headline(GlossForecast known, GlossTarget wanted) {
        String start = wanted.finish()
                .map(finish -> capital(texts.word(Wording.of(finish))) + " begins at " + figures.read(wanted.gloss()))
                .orElse("Wanted are " + figures.read(wanted.gloss()));
        TargetOutlook outlook = outlook(known, wanted);
        String verdict = switch (outlook.verdict()) {
            case REACHED -> "LIKELY REACHED.";
            case MORE_PASSES -> "MORE PASSES LIKELY REACH IT.";
            case FINER_GRIT ->
                grit(outlook) > lastPlanned()
                        ? "A GRIT BEYOND THE PLAN LIKELY REACHES IT."
                        : "THE PLAN LIKELY REACHES IT.";
            case OPEN -> "OPEN.";
            case OUT_OF_REACH -> "OUT OF REACH BY POLISHING GRITS ALONE.";
            case OVER_CEILING -> "OVER THE STONE'S CEILING.";
        };
        return verdict + " " + start + " at 60 degrees."
                + (outlook.verdict() == TargetVerdict.OVER_CEILING ? "" : " " + end(known, wanted));
    }

    private String end(GlossForecast known, GlossTarget wanted) {
        return "The chance that " + zone.map(name -> "zone " + name).orElse("the open field") + " gets there by resin "
                + lastPlanned() + ", the last grit of the plan, is " + Figures.chance(atTheEnd(known, wanted)) + ".";
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    private static int grit(TargetOutlook outlook) {
        return outlook.reachedBy().map(TargetOption::grit).orElse(0);
    }

    private int lastPlanned() {
        List<PlannedGrit> remaining = inputs.remaining(question.done());
        return remaining.isEmpty()
                ? lastDone().map(GritDone::grit).orElse(0)
                : remaining.get(remaining.size() - 1).grit();
    }

    private Optional<GritDone> lastDone() {
        List<GritDone> done = question.done();
        return done.isEmpty() ? Optional.empty() : Optional.of(done.get(done.size() - 1));
    }

    private List<PlannedGrit> planned() {
        List<PlannedGrit> planned = new ArrayList<>(inputs.coarserFirst(question.done()));
        planned.addAll(inputs.remaining(question.done()));
        return planned;
    }

    private Share atTheEnd(GlossForecast known, GlossTarget wanted) {
        List<PlannedGrit> planned = planned();
        return known.probability(
                wanted.gloss(), planned.isEmpty() ? List.of(new PlannedGrit(lastPlanned(), 0)) : planned);
    }

    private TargetOutlook outlook(GlossForecast known, GlossTarget wanted) {
        List<PlannedGrit> all = planned();
        all.addAll(inputs.finer(lastPlanned()));
        return known.outlook(wanted.gloss(), all);
    }

    void writeTo(Sheet sheet) {
        sheet.heading("What the plan would bring, open field, 60 degrees"
                + zone.filter(name -> forecast.isPresent())
                        .map(name -> ", zone " + name)
                        .orElse(""));
        if (forecast.isEmpty()) {
            sheet.items(obstacles());
            return;
        }
        GlossForecast known = forecast.get();
        sheet.rows(rows(known));
        if (inputs.recommendation().status() == Status.PROVISIONAL) {
            sheet.item("The plan is provisional: nothing is cut until its questions are answered.");
        }
        cautions(sheet);
        target.ifPresentOrElse(wanted -> target(sheet, known, wanted), () -> sheet.item(noTarget()));
        sheet.item(basis(known.basis()));
    }

    private List<List<String>> rows(GlossForecast known) {
        List<List<String>> rows = new ArrayList<>();
        Share level = parameters.get("gloss-forecast.level", Share.class);
        rows.add(List.of("after", "passes", level.print() + " of such floors", "half of them over"));
        if (!question.done().isEmpty()) {
            rows.add(row("now, resin ", known.afterMorePasses(0)));
        }
        List<GlossPrediction> predictions = known.through(planned());
        int coarser = inputs.coarserFirst(question.done()).size();
        predictions.subList(coarser, predictions.size()).forEach(prediction -> rows.add(row("resin ", prediction)));
        return rows;
    }

    private static List<String> row(String name, GlossPrediction prediction) {
        return List.of(
                name + prediction.grit(),
                Integer.toString(prediction.passes()),
                Figures.outwards(prediction.interval()),
                Figures.whole(prediction.median()));
    }

    private void cautions(Sheet sheet) {
        sheet.item("Passes are the fewer of the plan's.");
        if (!inputs.coarserFirst(question.done()).isEmpty()) {
            sheet.item("Metal and transition grits grind the old face away, so what it read before no longer counts;"
                    + " they are reckoned as resin of the same number at its end, which leaves no less gloss.");
        }
        if (inputs.field().stream().anyMatch(step -> step.method() == WorkMethod.DRY)) {
            sheet.item("Some of it is worked dry; the forecast is for wet passes.");
        }
        PolishingAgent agent =
                inputs.recommendation().plan().map(Plan::polishingAgent).orElse(PolishingAgent.NONE);
        if (agent != PolishingAgent.NONE) {
            sheet.item("The plan ends with " + texts.word(Wording.of(agent, "name"))
                    + ", which may lift it beyond the last grit; the forecast stops before.");
        }
        if (!inputs.stone().withoutCeiling().isEmpty()) {
            sheet.item("The figures are for stone. This floor has no ceiling of its own, so take them with care.");
        }
    }

    private void target(Sheet sheet, GlossForecast known, GlossTarget wanted) {
        TargetOutlook outlook = outlook(known, wanted);
        String gloss = figures.read(wanted.gloss());
        if (outlook.verdict() != TargetVerdict.OVER_CEILING) {
            sheet.item("The chance of " + gloss + " or more at the end of the plan, resin " + lastPlanned() + ": "
                    + Figures.chance(atTheEnd(known, wanted)) + ".");
        }
        sheet.item(way(outlook, gloss));
        if (outlook.startedTooFine()) {
            sheet.item("It was likely started too fine: damage older than this start keeps it under " + gloss
                    + " in " + Figures.chance(outlook.oldDamage())
                    + " of such floors, whatever grit follows. Go back to a coarser start.");
        } else {
            sheet.item("Damage older than this start keeps it under " + gloss + " in "
                    + Figures.chance(outlook.oldDamage()) + " of such floors, whatever grit follows.");
        }
    }

    private String way(TargetOutlook outlook, String gloss) {
        String likely = "likely (" + share("gloss-target.likely") + " or more)";
        return switch (outlook.verdict()) {
            case REACHED ->
                "It is " + likely + " there already: "
                        + Figures.chance(outlook.reachedBy().orElseThrow().probability()) + ".";
            case MORE_PASSES ->
                "More passes of the grit in work: " + gloss + " is " + likely + " after "
                        + outlook.reachedBy().orElseThrow().passes() + " passes of resin "
                        + outlook.reachedBy().orElseThrow().grit() + ".";
            case FINER_GRIT ->
                "The first grit that " + likely + " reaches it is " + name(grit(outlook))
                        + ", with "
                        + Figures.chance(outlook.reachedBy().orElseThrow().probability())
                        + (grit(outlook) > lastPlanned() ? "; the plan does not go so far." : ".");
            case OPEN -> "No grit " + likely + " reaches it" + best(outlook) + ".";
            case OUT_OF_REACH ->
                "Out of reach (under " + share("gloss-target.unlikely") + "), whatever polishing grit follows"
                        + best(outlook) + ".";
            case OVER_CEILING ->
                gloss + " is more than the stone can read: "
                        + Figures.whole(inputs.stone().lowestCeiling().at60()) + " when perfectly smooth.";
        };
    }

    private String share(String parameter) {
        return parameters.get(parameter, Share.class).print();
    }

    private String best(TargetOutlook outlook) {
        return outlook.best()
                .map(option -> ": at best " + name(option.grit()) + ", with " + Figures.chance(option.probability()))
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
        return forecast.map(known -> known.basis().sources().stream()
                        .map(source -> "Forecast: " + source.print()
                                + (source.published() ? "; on stone a working assumption." : "; low confidence."))
                        .toList())
                .orElse(List.of());
    }

    private List<String> obstacles() {
        return inputs.obstacles().stream().map(this::words).toList();
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
        return switch (inputs.recommendation().status()) {
            case REFUSED -> "the work is refused.";
            case UNDECIDED -> "it hinges on open questions.";
            case IMPASSE -> "what is wanted and what the floor allows do not meet.";
            case PLANNED, PROVISIONAL -> throw new IllegalStateException("A plan without a plan");
        };
    }

    /** A grit as the plan runs it; one that the plan does not run is resin. */
    private String name(int grit) {
        boolean coarser = inputs.coarserFirst(question.done()).stream().anyMatch(planned -> planned.grit() == grit);
        return inputs.field().stream()
                .map(Step::grade)
                .filter(grade -> coarser && grade.number() == grit)
                .map(grade -> texts.word(Wording.of(grade.bond())) + " " + grit)
                .findFirst()
                .orElse("resin " + grit);
    }
}
