package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.follow.Cause;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.GainVerdict;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Ask;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Finding;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.SiteCheck;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/**
 * The next move and a diagnosis as a text that a crew reads on the site. Never parse it: the answers hold the same as
 * data. Immutable and safe to share between threads.
 */
public final class FollowText {
    private static final Set<Move> CUTTING = EnumSet.of(
            Move.START_COARSER, Move.BACK_TO_START, Move.TWO_GRADES_BACK, Move.ONE_GRADE_BACK, Move.MEND_AND_REPEAT);

    private static final Set<Finding> TOLD_BY_READINGS = EnumSet.of(
            Finding.GAIN_IS_REAL,
            Finding.GAIN_WITHIN_SCATTER,
            Finding.GAIN_NEEDS_READINGS,
            Finding.STARTED_TOO_FINE,
            Finding.TARGET_REACHED,
            Finding.TARGET_BY_PASSES,
            Finding.TARGET_BY_FINER_GRADE,
            Finding.TARGET_OUT_OF_REACH,
            Finding.TARGET_OVER_STONE);

    private static final Set<Finding> TOLD_BY_FACTS = EnumSet.of(Finding.LOOK_IS_CLEAN, Finding.ZONES_NOT_SEEN);

    private static final Set<Finding> GAINS = EnumSet.of(Finding.LATEST_GAIN_LARGEST, Finding.GLOSS_STILL_CLIMBS);

    /** Facts that only say what is possible and how far the work has come. */
    private static final Set<String> BACKGROUND =
            Set.of("JobState", "OneBack", "TwoBack", "CoarserStart", "BackToStart", "GradeOrder");

    /** So many reasons a crew reads before the work; the others stand with the rules. */
    private static final int CAUSES_TOLD = 3;

    private final RuleWords cards;

    /**
     * @param cards the cards of the rulebase that made the answers
     */
    public FollowText(Collection<Card> cards) {
        this.cards = new RuleWords(cards);
    }

    /**
     * A next move as a document, which {@link stoneprocess.rules.text.document.Texts} or any other page renders.
     *
     * @param plan the plan that is followed; what changes is told against it
     * @param log the log that was answered
     * @param next the answer to it
     * @throws stoneprocess.core.problem.InvalidInputException when the answer has a note on an entry that the log does not
     *     have
     */
    public Document document(Recommendation plan, JobLog log, NextMove next) {
        return document(plan, log, next, List.of());
    }

    /**
     * A diagnosis as a document, in the same form.
     *
     * @param plan the plan that is followed or was carried out
     * @param log the log that was read for the diagnosis; without entries when there was none
     * @param diagnosis the answer
     * @throws stoneprocess.core.problem.InvalidInputException when the answer has a note on an entry that the log does not
     *     have
     */
    public Document document(Recommendation plan, JobLog log, Diagnosis diagnosis) {
        return document(plan, log, diagnosis.remedy(), List.copyOf(diagnosis.signs()));
    }

    /** That a recommendation has no grits to work, so that there is nothing to follow, and why. */
    public static Document nothing(Recommendation plan) {
        return Draft.untitled(plan.parameters())
                .paragraph(plan.plan().isPresent() ? "follow.nothing.cuts-nothing" : "follow.nothing.no-plan")
                .document();
    }

    private Document document(Recommendation plan, JobLog log, NextMove next, List<? extends Term> signs) {
        Draft draft = Draft.titled(Wording.name(log.title()), next.ahead().parameters());
        List<String> strange = zonesOfAnotherFloor(plan, log);
        if (!strange.isEmpty()) {
            draft.paragraph(phrase("follow.another-floor")
                    .with("survey", plan.survey().title())
                    .with("zones", Wording.list(Joint.COMMA, strange, Wording::name)));
            if (next.move() != Move.STOP_AND_ASK) {
                return draft.document();
            }
        }
        boolean mendedFirst =
                !signs.isEmpty() && next.move() == Move.RE_PLAN && !next.mends().isEmpty();
        draft.paragraph(lead(plan, log, next, mendedFirst));
        if (!signs.isEmpty()) {
            draft.paragraph(phrase("follow.seen")
                    .with("signs", Wording.list(Joint.SEMICOLON, signs, sign -> sign(next, sign))));
        }
        Set<String> told = new HashSet<>();
        causes(draft, next, told);
        why(draft, log, next, told);
        draft.paragraph(next.at().map(point -> at(plan, log, point)).orElse(phrase("follow.not-begun")));
        asks(draft, next);
        boolean stopped = next.move() == Move.STOP_AND_ASK;
        if (!next.checks().isEmpty()) {
            draft.section(stopped ? "follow.checks-later" : "follow.checks");
            next.checks().forEach(check -> draft.numbered(check(log, next.ahead(), check)));
        }
        if (!mendedFirst) {
            boolean looks = next.move() == Move.LOOK_FIRST;
            draft.list(
                    stopped ? "follow.mends-later" : looks ? "follow.mends-if-confirmed" : "follow.mends",
                    next.mends());
        }
        ahead(draft, log, next);
        FollowChanges.write(draft, plan, next.ahead(), cards, mendedFirst ? next.mends() : List.of());
        FollowReadings.write(draft, next);
        LogWords.notes(draft, log, next.notes());
        WarningWords.added(draft, plan, next.ahead());
        rules(draft, next, told);
        WarningWords.closeBesidePlan(draft, next.ahead().rulebase());
        return draft.document();
    }

    /** The zones that a log looks at and the floor does not have, where they are most of the zones that it looks at. */
    private static List<String> zonesOfAnotherFloor(Recommendation plan, JobLog log) {
        Set<String> judged = LogWords.zonesJudged(log);
        List<String> surveyed = plan.survey().zones().stream().map(Zone::name).toList();
        List<String> strange =
                judged.stream().filter(zone -> !surveyed.contains(zone)).toList();
        return 2 * strange.size() > judged.size() ? strange : List.of();
    }

    /** What to do now, how much of it, and that it is tried first where stone would be cut. */
    private static Wording lead(Recommendation plan, JobLog log, NextMove next, boolean mendedFirst) {
        List<Wording> lead = new ArrayList<>(List.of(headline(next, mendedFirst)));
        next.at()
                .filter(point -> next.move() == Move.GO_ON && areEdgesOpen(plan, log, point))
                .ifPresent(
                        point -> lead.add(phrase("follow.edges-open").with("grade", ValueWords.grade(point.grade()))));
        next.morePasses()
                .ifPresent(passes -> lead.add(phrase("follow.more-passes").with("passes", morePasses(passes))));
        if (!next.checks().isEmpty() && (mendedFirst || CUTTING.contains(next.move()))) {
            lead.add(phrase("follow.check-first"));
        }
        return Wording.list(Joint.SENTENCES, lead);
    }

    /** Edges come before the next grit of the open field, and the log has none with this one. */
    private static boolean areEdgesOpen(Recommendation plan, JobLog log, HoldPoint point) {
        return point.track() == TrackKind.OPEN_FIELD
                && planned(plan, point.grade(), TrackKind.EDGE).isPresent()
                && log.entries().stream()
                        .noneMatch(entry -> entry instanceof Entry.Worked worked
                                && worked.track() == TrackKind.EDGE
                                && worked.grade().equals(point.grade()));
    }

    private static Optional<PlannedStep> planned(Recommendation plan, AbrasiveGrade grade, TrackKind track) {
        return plan.steps(track).stream()
                .filter(step -> step.grade().equals(grade))
                .findFirst();
    }

    private static Wording headline(NextMove next, boolean mendedFirst) {
        if (mendedFirst) {
            return phrase("follow.re-plan").with("mends", Wording.sentences(next.mends()));
        }
        return next.move() == Move.GO_ON && tracks(next.ahead()).isEmpty()
                ? phrase("follow.go-on-without-grit")
                : Wording.of(next.move());
    }

    /** A sign; gloss that is said to stall is held against the readings. */
    private static Wording sign(NextMove next, Term sign) {
        Optional<Gain> rise = next.progress().stream()
                .flatMap(zone -> zone.gain().stream())
                .filter(gain ->
                        gain.verdict() == GainVerdict.REAL && gain.change().glossUnits() > 0)
                .findFirst();
        return sign == Sign.STALLED_GLOSS && rise.isPresent()
                ? phrase("follow.sign-disagrees")
                        .with("sign", sign)
                        .with("size", new Gloss(rise.get().change().glossUnits()))
                : Wording.of(sign);
    }

    private static Wording morePasses(Range<Integer> passes) {
        return passes.low().equals(passes.high())
                ? phrase("follow.passes-exactly").with("passes", passes.low())
                : phrase("follow.passes").with("low", passes.low()).with("high", passes.high());
    }

    private static Wording.Phrase at(Recommendation plan, JobLog log, HoldPoint point) {
        Wording grade = ValueWords.grade(point.grade());
        boolean worked = isWorked(log);
        Wording.Phrase at =
                phrase(worked ? "follow.at" : "follow.finished").with("track", ValueWords.track(point.track()));
        if (worked) {
            Optional<PlannedStep> step = planned(plan, point.grade(), point.track());
            return step.map(found -> phrase("follow.at-planned")
                            .with("track", ValueWords.track(point.track()))
                            .with("planned", StepTable.passes(found.passes())))
                    .orElse(at)
                    .with("grade", grade)
                    .with("passes", point.passes());
        }
        return at.with("last", withCoats(plan, grade, true));
    }

    /** Grits, and the powder that follows them; the sealer too where the floor is finished. */
    private static Wording withCoats(Recommendation plan, Wording grades, boolean finished) {
        List<Wording> words = new ArrayList<>(List.of(grades));
        plan.plan().ifPresent(planned -> {
            if (planned.polishingAgent() != PolishingAgent.NONE) {
                words.add(ValueWords.name(planned.polishingAgent()));
            }
            if (finished && planned.sealer() != Sealer.NONE) {
                words.add(ValueWords.name(planned.sealer()));
            }
        });
        return Wording.list(Joint.COMMA, words);
    }

    private static boolean isWorked(JobLog log) {
        return log.entries().stream().anyMatch(Entry.Worked.class::isInstance);
    }

    /** A check, as it is made where no work was logged and the pads may be gone. */
    private static Wording check(JobLog log, Recommendation ahead, SiteCheck check) {
        String withoutLog = Wording.key(check) + ".no-log";
        return !isWorked(log) && Language.english().has(withoutLog)
                ? phrase(withoutLog)
                : PlanWords.clearedPhrase(Wording.key(check), ahead);
    }

    private static <V> Optional<Decision<V>> decision(NextMove next, Topic<V> topic) {
        return Outcome.decision(next.outcomes(), topic, Subject.FLOOR);
    }

    /** The facts that decide and what follows from them; then what else the log shows, and what it does not say. */
    private void why(Draft draft, JobLog log, NextMove next, Set<String> told) {
        List<Reason> won = decision(next, Topics.MOVE).map(Decision::won).orElse(List.of());
        List<Finding> findings = new ArrayList<>(findings(next));
        List<Wording> why = new ArrayList<>();
        List<Wording> facts = facts(won);
        if (!facts.isEmpty()) {
            why.add(phrase("follow.facts").with("facts", Wording.list(Joint.AND, facts)));
            findings.removeAll(TOLD_BY_FACTS);
        }
        findings.stream().map(Wording::of).forEach(why::add);
        if (won.isEmpty()) {
            why.add(phrase("follow.nothing-asked"));
        }
        if (!next.unknown().isEmpty() && !log.entries().isEmpty()) {
            why.add(phrase("follow.unknown").with("what", Wording.list(Joint.OR, next.unknown(), LoggedFacts::open)));
        }
        RuleWords.rules(won.stream()
                        .filter(reason -> reason.values().contains(next.move()))
                        .toList())
                .stream()
                .limit(CAUSES_TOLD)
                .flatMap(rule -> cards.cause(rule, told).stream())
                .forEach(why::add);
        if (!why.isEmpty()) {
            draft.paragraph(Wording.list(Joint.SENTENCES, why));
        }
    }

    /** What the log shows beside the readings; on a floor that is started again its gains decide nothing. */
    private static List<Finding> findings(NextMove next) {
        return next.findings().stream()
                .filter(finding -> next.progress().isEmpty() || !TOLD_BY_READINGS.contains(finding))
                .filter(finding -> next.move() != Move.START_COARSER || !GAINS.contains(finding))
                .toList();
    }

    /** What the log shows of what rules asked for; causes are told apart, and what the survey says stands there. */
    private static List<Wording> facts(List<Reason> reasons) {
        return reasons.stream()
                .filter(Reason::certain)
                .flatMap(reason -> reason.facts().stream())
                .filter(fact -> !BACKGROUND.contains(fact.name()) && LoggedFacts.isSeen(fact))
                .map(LoggedFacts::say)
                .distinct()
                .toList();
    }

    /** The likely causes with what speaks for them, then those that are possible, ruled out or not indicated. */
    private void causes(Draft draft, NextMove next, Set<String> told) {
        Map<Standing, List<Cause>> causes = next.causes().stream()
                .collect(Collectors.groupingBy(
                        Cause::standing, () -> new EnumMap<>(Standing.class), Collectors.toList()));
        List<Wording> words = new ArrayList<>();
        causes.forEach((standing, alike) -> {
            boolean tie = standing == Standing.LEADING && alike.size() > 1;
            words.add(phrase(tie ? "follow.tie" : "follow.causes")
                    .with("standing", standing)
                    .with("faults", Wording.list(Joint.SEMICOLON, alike, cause -> ValueWords.name(cause.fault()))));
            if (standing == Standing.LEADING) {
                speakingFor(next.causes(), alike).stream()
                        .flatMap(rule -> cards.cause(rule, told).stream())
                        .forEach(words::add);
            }
        });
        if (!words.isEmpty()) {
            draft.paragraph(Wording.list(Joint.SENTENCES, words));
        }
    }

    /** The rules that speak for causes, those first that speak for no other. */
    private static List<String> speakingFor(List<Cause> all, List<Cause> causes) {
        List<String> naming = all.stream()
                .flatMap(cause -> RuleWords.rules(cause.speaksFor()).stream())
                .toList();
        return causes.stream()
                .flatMap(cause -> RuleWords.rules(cause.speaksFor()).stream())
                .distinct()
                .sorted(Comparator.comparingInt(rule -> Collections.frequency(naming, rule)))
                .toList();
    }

    /** Every rule behind the answer by its title, with its reason where that has not been told. */
    private void rules(Draft draft, NextMove next, Set<String> told) {
        Optional<Decision<Move>> move = decision(next, Topics.MOVE);
        List<Reason> won = new ArrayList<>(move.map(Decision::won).orElse(List.of()));
        List<String> heldBack =
                new ArrayList<>(RuleWords.rules(move.map(Decision::outweighed).orElse(List.of())));
        next.causes().forEach(cause -> {
            won.addAll(cause.speaksFor());
            won.addAll(cause.speaksAgainst());
        });
        heldBack.removeAll(RuleWords.rules(won));
        draft.list("follow.rules", RuleWords.rules(won), rule -> cards.because(rule, told));
        if (!heldBack.isEmpty()) {
            draft.bullet(phrase("follow.held-back")
                    .with(
                            "rules",
                            Wording.list(
                                    Joint.SEMICOLON,
                                    heldBack,
                                    rule -> RuleWords.withIds(cards.title(rule), List.of(rule)))));
        }
    }

    private void asks(Draft draft, NextMove next) {
        if (next.asks().isEmpty()) {
            return;
        }
        draft.section("follow.asks");
        List<Reason> reasons = decision(next, Topics.ASKS).map(Decision::won).orElse(List.of());
        for (Ask ask : next.asks()) {
            List<Wording> why = reasons.stream()
                    .filter(reason -> reason.values().contains(ask))
                    .map(Reason::rule)
                    .distinct()
                    .<Wording>map(rule -> phrase("card.title").with("title", cards.title(rule)))
                    .toList();
            if (why.isEmpty()) {
                draft.bullet(phrase("follow.ask").with("who", ValueWords.name(ask)));
            }
            why.forEach(title -> draft.bullet(
                    ask == Ask.OWNER
                            ? title
                            : sentences(title, phrase("follow.ask").with("who", ValueWords.name(ask)))));
        }
    }

    /** The tracks on which a recommendation cuts. */
    static List<Track> tracks(Recommendation recommendation) {
        return recommendation.plan().map(Plan::tracks).orElse(List.of()).stream()
                .filter(track -> !track.steps().isEmpty())
                .toList();
    }

    private static void ahead(Draft draft, JobLog log, NextMove next) {
        boolean again = next.move() == Move.LOOK_FIRST && !isWorked(log);
        draft.section(again ? "follow.ahead-again" : "follow.ahead");
        List<Track> tracks = tracks(next.ahead());
        if (tracks.isEmpty()) {
            draft.bullet(
                    switch (next.move()) {
                        case STOP_AND_ASK -> "follow.none-until-answered";
                        case TOUCH_UP_LANES -> "follow.lanes-not-surveyed";
                        default -> "follow.none-ahead";
                    });
        }
        Map<List<AbrasiveGrade>, List<Track>> alike = new LinkedHashMap<>();
        tracks.forEach(track -> alike.computeIfAbsent(
                        track.steps().stream().map(PlannedStep::grade).toList(), grades -> new ArrayList<>())
                .add(track));
        alike.values().forEach(sharing -> ahead(draft, next, sharing));
    }

    /** Tracks with the same grits to come: the grits once, the first step of each. */
    private static void ahead(Draft draft, NextMove next, List<Track> tracks) {
        Wording kinds = Wording.list(Joint.COMMA, tracks, track -> ValueWords.track(track.kind()));
        boolean powdered = tracks.stream().anyMatch(track -> track.kind() != TrackKind.LOCAL_REPAIR);
        Wording grits = PlanSections.grades(tracks.get(0));
        Wording grades = phrase("follow.grades")
                .with("track", kinds)
                .with("grades", powdered ? withCoats(next.ahead(), grits, false) : grits);
        PlannedStep first = tracks.get(0).steps().get(0);
        if (next.move() == Move.LOOK_FIRST && tracks.stream().anyMatch(track -> isInWork(next, track))) {
            draft.bullet(
                    sentences(grades, phrase("follow.look-decides").with("grade", ValueWords.grade(first.grade()))));
            return;
        }
        draft.bullet(grades)
                .bullets(
                        tracks,
                        track -> phrase("follow.first")
                                .with("track", ValueWords.track(track.kind()))
                                .with("step", firstStep(next, track)));
    }

    private static Wording firstStep(NextMove next, Track track) {
        PlannedStep first = track.steps().get(0);
        Wording passes = next.morePasses()
                .filter(more -> isInWork(next, track))
                .map(FollowText::morePasses)
                .orElseGet(() -> isInWork(next, track) && next.move() == Move.RE_PLAN
                        ? phrase("follow.passes-done")
                                .with("passes", StepWords.passes(first))
                                .with("done", next.at().orElseThrow().passes())
                        : StepWords.passes(first));
        return StepWords.inOneGo(track.kind(), first, passes);
    }

    private static boolean isInWork(NextMove next, Track track) {
        AbrasiveGrade first = track.steps().get(0).grade();
        return next.at()
                .filter(point -> point.track() == track.kind())
                .filter(point -> point.grade().equals(first))
                .isPresent();
    }
}
