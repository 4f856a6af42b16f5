package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.OldDamage;
import stoneprocess.core.gloss.TargetOption;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.TargetVerdict;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.GlossStart;
import stoneprocess.core.site.GlossTarget;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.site.NoForecast;
import stoneprocess.core.site.PlannedGloss;
import stoneprocess.core.site.PlannedGloss.ToTarget;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.text.GlossWords;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Precision;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What the plan would bring at 60 degrees, or why that cannot be told. */
record GlossForecastPart(Recommendation recommendation, FloorGloss gloss) {
    /** The answer in a sentence or two. */
    Wording answer() {
        return gloss.planned()
                .map(planned -> planned.toTarget()
                        .map(way -> headline(planned, way))
                        .orElseGet(() -> phrase("gloss-sheet.forecast").with("says", noTarget())))
                .orElseGet(() -> phrase("gloss-sheet.no-forecast")
                        .with("obstacles", Wording.list(Joint.SENTENCES, obstacles())));
    }

    private Wording noTarget() {
        return phrase(
                GlossTarget.isNamedByGrit(recommendation) ? "gloss-sheet.named-by-grit" : "gloss-sheet.no-target");
    }

    private Wording headline(PlannedGloss planned, ToTarget way) {
        TargetVerdict verdict = way.outlook().verdict();
        boolean inPlan = verdict == TargetVerdict.FINER_GRIT && !way.beyond(planned.lastGrit());
        List<Wording> sentences = new ArrayList<>();
        boolean justBetter = way.target().finish().isPresent()
                && recommendation.survey().answer(SurveyField.GOAL).value().equals(Optional.of(Goal.JUST_BETTER));
        Wording outlook = inPlan ? phrase("gloss-sheet.grit-of-plan") : Wording.of(verdict, "headline");
        sentences.add(justBetter ? phrase("gloss-sheet.just-better") : outlook);
        sentences.add(way.target()
                .finish()
                .map(finish -> phrase("gloss-sheet.finish-begins").with("finish", finish))
                .orElseGet(() -> phrase("gloss-sheet.wanted"))
                .with("gloss", way.target().gloss()));
        if (verdict != TargetVerdict.OVER_CEILING) {
            Wording place = gloss.zone()
                    .map(zone -> phrase("gloss-sheet.zone").with("zone", zone))
                    .orElseGet(() -> phrase("gloss-sheet.open-field"));
            sentences.add(phrase("gloss-sheet.chance-by-end")
                    .with("place", place)
                    .with("grit", GlossFigures.resin(planned.lastGrit()))
                    .with("chance", GlossWords.chance(way.chance())));
        }
        return Wording.list(Joint.SENTENCES, sentences);
    }

    void write(Draft draft) {
        draft.section(gloss.zone()
                .filter(zone -> gloss.planned().isPresent())
                .map(zone -> phrase("gloss-sheet.plan-in-zone").with("zone", zone))
                .orElseGet(() -> phrase("gloss-sheet.plan")));
        gloss.planned()
                .ifPresentOrElse(
                        planned -> forecast(draft, planned), () -> obstacles().forEach(draft::bullet));
    }

    private void forecast(Draft draft, PlannedGloss planned) {
        draft.row(
                phrase("gloss-sheet.column.after"),
                phrase("gloss-sheet.column.passes"),
                phrase("gloss-sheet.column.interval").with("level", share("gloss-forecast.level")),
                phrase("gloss-sheet.column.median"));
        planned.now().ifPresent(now -> row(draft, phrase("gloss-sheet.now").with("grit", grit(now)), now));
        planned.ends().forEach(end -> row(draft, grit(end), end));
        if (recommendation.status() == Status.PROVISIONAL) {
            draft.bullet("gloss-sheet.provisional");
        }
        cautions(draft, planned);
        planned.toTarget().ifPresent(way -> target(draft, planned, way));
        if (planned.toTarget().isEmpty() && isGlossierThanHone(planned)) {
            draft.bullet(phrase("gloss-sheet.glossier-than-hone").with("satin", satin()));
        }
        draft.bullet(basis(planned.basis()));
        starts(draft, planned);
    }

    private boolean isGlossierThanHone(PlannedGloss planned) {
        List<GlossPrediction> ends = planned.ends();
        return !GlossTarget.isNamedByGrit(recommendation)
                && !ends.isEmpty()
                && ends.get(ends.size() - 1).median().compareTo(satin()) >= 0;
    }

    private Gloss satin() {
        return recommendation.parameters().get("finish.satin", Gloss.class);
    }

    /** How starts would end; a start that has proved too fine, and finer ones, are no way out. */
    private void starts(Draft draft, PlannedGloss planned) {
        boolean tooFine =
                planned.toTarget().filter(way -> way.outlook().startedTooFine()).isPresent();
        List<GlossStart> starts = planned.starts().stream()
                .takeWhile(start -> !tooFine || !start.planned())
                .toList();
        if (starts.isEmpty()) {
            return;
        }
        draft.section(phrase(gloss.holdPoints().isEmpty() ? "gloss-sheet.starts" : "gloss-sheet.starts-again")
                        .with("grit", grit(starts.get(0).end())))
                .row(
                        phrase("gloss-sheet.column.start"),
                        phrase("gloss-sheet.column.damage-left"),
                        phrase("gloss-sheet.column.interval").with("level", share("gloss-forecast.level")),
                        phrase("gloss-sheet.column.median"));
        starts.forEach(start -> row(draft, start));
        draft.bullets("gloss-sheet.starts.why", "gloss-sheet.starts.rests");
    }

    private static void row(Draft draft, GlossStart start) {
        Wording grade = Words.grade(start.grade().bond(), start.grade().number());
        draft.row(
                start.planned() ? phrase("gloss-sheet.planned-start").with("grit", grade) : grade,
                left(start.damage()),
                GlossFigures.outwards(start.end().interval()),
                GlossFigures.whole(start.end().median()));
    }

    /** The depth that stays, as parts of the depth of the damage; from the shallowest to the deepest. */
    private static Wording left(OldDamage damage) {
        Share least = part(damage.left().low(), damage.depth().low());
        Share most = part(damage.left().high(), damage.depth().high());
        if (most.percent() == 0) {
            return phrase("gloss-sheet.nothing-left");
        }
        return least.percent() == 0
                ? phrase("gloss-sheet.left-up-to").with("high", most)
                : phrase("gloss-sheet.left")
                        .with("low", Wording.amount(least, Precision.NUMBER))
                        .with("high", most);
    }

    private static Share part(Length left, Length depth) {
        return new Share(StrictMath.rint(100 * left.millimetres() / depth.millimetres()));
    }

    private static Wording grit(GlossPrediction prediction) {
        return GlossFigures.resin(prediction.grit());
    }

    private static void row(Draft draft, Wording name, GlossPrediction prediction) {
        draft.row(
                name,
                Wording.number(prediction.passes()),
                GlossFigures.outwards(prediction.interval()),
                GlossFigures.whole(prediction.median()));
    }

    private void cautions(Draft draft, PlannedGloss planned) {
        draft.bullet("gloss-sheet.fewer-passes");
        if (!planned.coarserFirst().isEmpty()) {
            draft.bullet("gloss-sheet.coarser-first");
        }
        if (isWorkedDry()) {
            draft.bullet("gloss-sheet.worked-dry");
        }
        recommendation
                .plan()
                .map(Plan::polishingAgent)
                .filter(agent -> agent != PolishingAgent.NONE)
                .ifPresent(agent ->
                        draft.bullet(phrase("gloss-sheet.ends-with").with("agent", Wording.of(agent, "name"))));
        if (!gloss.withoutCeiling().isEmpty()) {
            draft.bullet("gloss-sheet.no-ceiling-of-its-own");
        }
    }

    private boolean isWorkedDry() {
        return recommendation.steps(TrackKind.OPEN_FIELD).stream().anyMatch(step -> step.method() == WorkMethod.DRY);
    }

    private void target(Draft draft, PlannedGloss planned, ToTarget way) {
        TargetOutlook outlook = way.outlook();
        if (outlook.verdict() != TargetVerdict.OVER_CEILING) {
            draft.bullet(phrase("gloss-sheet.chance-at-end")
                    .with("gloss", way.target().gloss())
                    .with("grit", GlossFigures.resin(planned.lastGrit()))
                    .with("chance", GlossWords.chance(way.chance())));
        }
        draft.bullet(way(planned, way));
        draft.bullet(phrase(outlook.startedTooFine() ? "gloss-sheet.started-too-fine" : "gloss-sheet.old-damage")
                .with("gloss", way.target().gloss())
                .with("chance", GlossWords.chance(outlook.oldDamage())));
    }

    private Wording way(PlannedGloss planned, ToTarget way) {
        TargetOutlook outlook = way.outlook();
        if (outlook.verdict() == TargetVerdict.OVER_CEILING) {
            Gloss ceiling = KnownStone.of(recommendation).lowestCeiling().at60();
            return Wording.of(outlook.verdict(), "way")
                    .with("gloss", way.target().gloss())
                    .with("ceiling", GlossFigures.whole(ceiling));
        }
        Optional<TargetOption> reached = outlook.reachedBy();
        Optional<TargetOption> option = reached.or(outlook::best);
        boolean beyond = outlook.verdict() == TargetVerdict.FINER_GRIT && way.beyond(planned.lastGrit());
        String reachedPart = beyond ? "way-beyond" : "way";
        Wording.Phrase words = Wording.of(
                        outlook.verdict(), reached.isEmpty() && option.isPresent() ? "way-at-best" : reachedPart)
                .with("gloss", way.target().gloss())
                .with("likely", share("gloss-target.likely"))
                .with("unlikely", share("gloss-target.unlikely"));
        return option.map(best -> words.with("passes", best.passes())
                        .with("grit", grade(planned, best.grit()))
                        .with("chance", GlossWords.chance(best.probability())))
                .orElse(words);
    }

    private Share share(String parameter) {
        return recommendation.parameters().get(parameter, Share.class);
    }

    private static Wording basis(ForecastBasis basis) {
        return basis.defaultsOnly()
                ? phrase("gloss-sheet.basis.practice")
                : phrase("gloss-sheet.basis.readings")
                        .with("readings", GlossWords.readings(basis.readings()))
                        .with("occasions", basis.occasions());
    }

    /** Where the forecast's figures come from; empty when there is none. */
    List<Wording> sources() {
        return gloss.planned().stream()
                .flatMap(planned -> planned.basis().sources().stream())
                .<Wording>map(
                        source -> phrase(source.practice() ? "gloss-sheet.rests.practice" : "gloss-sheet.rests.named")
                                .with("source", Wording.source(source)))
                .toList();
    }

    private List<Wording> obstacles() {
        return gloss.obstacles().stream()
                .<Wording>map(obstacle -> obstacle == NoForecast.NO_PLAN
                        ? Wording.of(obstacle).with("why", Wording.of(recommendation.status(), "no-plan"))
                        : Wording.of(obstacle))
                .toList();
    }

    /** A grit as the plan runs it; one that the plan does not run is resin. */
    private static Wording grade(PlannedGloss planned, int grit) {
        return planned.coarserFirst().stream()
                .filter(grade -> grade.number() == grit)
                .map(grade -> Words.grade(grade.bond(), grit))
                .findFirst()
                .orElseGet(() -> GlossFigures.resin(grit));
    }
}
