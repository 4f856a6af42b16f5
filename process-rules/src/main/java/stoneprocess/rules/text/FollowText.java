package stoneprocess.rules.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.follow.Cause;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.follow.LogNote;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.follow.ZoneProgress;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.TargetOption;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Step;
import stoneprocess.core.plan.Track;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.source.Card;
import stoneprocess.core.source.Citation;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Ask;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

/**
 * The next move and a diagnosis as a text that a crew reads on the site. Never parse it: the answers hold the same as
 * data. Immutable and safe to share between threads.
 */
public final class FollowText {
    private static final String INDENT = "      ";
    private static final int PERCENT = 100;

    private final UnitSystem units;
    private final RuleWords cards;

    /**
     * @param units the reader's units
     * @param cards the cards of the rulebase that made the answers
     */
    public FollowText(UnitSystem units, Collection<Card> cards) {
        this.units = units;
        this.cards = new RuleWords(cards);
    }

    /**
     * The text of a next move, lines of at most 96 characters, ending with a line feed.
     *
     * @param plan the plan that is followed; what changes is told against it
     * @param log the log that was answered
     * @param next the answer to it
     * @throws InvalidInputException when the answer has a note on an entry that the log does not have
     */
    public String render(Recommendation plan, JobLog log, NextMove next) {
        return new Writer(plan, log, next).write(List.of());
    }

    /**
     * The text of a diagnosis, in the same form.
     *
     * @param plan the plan that is followed or was carried out
     * @param log the log that was read for the diagnosis; without entries when there was none
     * @param diagnosis the answer
     * @throws InvalidInputException when the answer has a note on an entry that the log does not have
     */
    public String render(Recommendation plan, JobLog log, Diagnosis diagnosis) {
        return new Writer(plan, log, diagnosis.remedy()).write(List.copyOf(diagnosis.signs()));
    }

    private final class Writer {
        private final Recommendation plan;
        private final JobLog log;
        private final NextMove next;
        private final Phrases phrases;
        private final Page page = new Page();
        private final StepWords words;
        private final LoggedFacts facts;

        private Writer(Recommendation plan, JobLog log, NextMove next) {
            this.plan = plan;
            this.log = log;
            this.next = next;
            this.phrases = new Phrases(units, next.ahead().parameters());
            this.words = new StepWords(units, phrases);
            this.facts = new LoggedFacts(phrases);
        }

        private String write(List<? extends Term> signs) {
            page.title(log.title());
            page.line(phrases.of(next.move()));
            next.morePasses()
                    .ifPresent(
                            passes -> page.line(String.format(phrases.get("follow.more-passes"), morePasses(passes))));
            page.line(next.at().map(this::at).orElseGet(() -> phrases.get("follow.not-begun")));
            list("follow.signs", signs);
            why();
            causes();
            asks();
            boolean stopped = next.move() == Move.STOP_AND_ASK;
            numbered(stopped ? "follow.checks-later" : "follow.checks", next.checks());
            list(stopped ? "follow.mends-later" : "follow.mends", next.mends());
            ahead();
            changes();
            list("follow.findings", next.findings());
            readings();
            unknown();
            notes();
            Cautions cautions = new Cautions(phrases, page);
            cautions.warnings(warnings(), Detail.BRIEF);
            cautions.close(next.ahead().rulebase());
            return page.toString();
        }

        /** Hazards ahead, then those of the plan: machines and wet floor are still there when the work stops. */
        private List<SafetyWarning> warnings() {
            List<SafetyWarning> warnings = new ArrayList<>(next.ahead().warnings());
            plan.warnings().stream().filter(this::isNotAhead).forEach(warnings::add);
            return warnings;
        }

        private boolean isNotAhead(SafetyWarning warning) {
            return next.ahead().warnings().stream().noneMatch(ahead -> ahead.hazard() == warning.hazard());
        }

        private String morePasses(Range<Integer> passes) {
            return passes.low().equals(passes.high())
                    ? String.format(phrases.get("follow.passes-exactly"), passes.low())
                    : String.format(phrases.get("follow.passes"), passes.low(), passes.high());
        }

        private String at(HoldPoint point) {
            if (log.entries().stream().noneMatch(Entry.Worked.class::isInstance)) {
                return String.format(phrases.get("follow.finished"), words.grade(point.grade()), track(point.track()));
            }
            return String.format(
                    phrases.get("follow.at"), words.grade(point.grade()), track(point.track()), point.passes());
        }

        private String track(TrackKind track) {
            return phrases.of(track, "name");
        }

        private void list(String heading, List<? extends Term> terms) {
            if (!terms.isEmpty()) {
                page.heading(phrases.get(heading));
                page.items(terms.stream().map(phrases::of).toList());
            }
        }

        private void numbered(String heading, List<? extends Term> terms) {
            if (!terms.isEmpty()) {
                page.heading(phrases.get(heading));
                for (int i = 0; i < terms.size(); i++) {
                    page.numbered(i + 1, phrases.of(terms.get(i)));
                }
            }
        }

        private Optional<Decision> decision(Topic<?> topic) {
            return next.outcomes().stream()
                    .filter(outcome -> outcome.topic().equals(topic.id()))
                    .filter(Decision.class::isInstance)
                    .map(Decision.class::cast)
                    .findFirst();
        }

        private void why() {
            page.heading(phrases.get("follow.why"));
            List<Reason> won = decision(Topics.MOVE).map(Decision::won).orElse(List.of());
            if (won.isEmpty()) {
                page.item(phrases.get("follow.nothing-asked"));
            }
            byRule(won).forEach((rule, reasons) -> {
                page.item(cards.because(rule) + " (" + rule + ")");
                reasons.forEach(reason -> page.labelled(INDENT, phrases.get("follow.by"), facts(reason)));
            });
            String heldBack = decision(Topics.MOVE).stream()
                    .flatMap(decision -> RuleWords.rules(decision.outweighed()).stream())
                    .filter(rule -> RuleWords.rules(won).stream().noneMatch(rule::equals))
                    .map(rule -> cards.title(rule) + " (" + rule + ")")
                    .collect(Collectors.joining("; "));
            if (!heldBack.isEmpty()) {
                page.item(String.format(phrases.get("follow.held-back"), heldBack));
            }
        }

        private Map<String, List<Reason>> byRule(List<Reason> reasons) {
            return reasons.stream()
                    .collect(Collectors.groupingBy(Reason::rule, LinkedHashMap::new, Collectors.toList()));
        }

        private String facts(Reason reason) {
            return reason.facts().stream().map(facts::say).distinct().collect(Collectors.joining("; ")) + ".";
        }

        private void causes() {
            if (next.causes().isEmpty()) {
                return;
            }
            page.heading(phrases.get("follow.causes"));
            for (Cause cause : next.causes()) {
                page.item(phrases.of(cause.fault()) + ": " + phrases.of(cause.standing()) + ".");
                speaking("follow.for", cause.speaksFor());
                speaking("follow.against", cause.speaksAgainst());
            }
        }

        private void speaking(String key, List<Reason> reasons) {
            RuleWords.rules(reasons)
                    .forEach(rule -> page.labelled(INDENT, phrases.get(key), cards.because(rule) + " (" + rule + ")"));
        }

        private void asks() {
            if (next.asks().isEmpty()) {
                return;
            }
            page.heading(phrases.get("follow.asks"));
            List<Reason> reasons = decision(Topics.ASKS).map(Decision::won).orElse(List.of());
            for (Ask ask : next.asks()) {
                List<Reason> own = reasons.stream()
                        .filter(reason -> reason.values().contains(ask.key()))
                        .toList();
                String why = RuleWords.rules(own).stream()
                        .map(rule -> cards.title(rule) + ".")
                        .collect(Collectors.joining(" "));
                page.item(phrases.of(ask) + (why.isEmpty() ? "." : ": " + why));
            }
        }

        private void readings() {
            if (next.progress().isEmpty()) {
                return;
            }
            page.heading(phrases.get("follow.readings"));
            next.progress().forEach(this::zone);
        }

        private void zone(ZoneProgress zone) {
            int count = zone.now().count();
            String readings = count == 1
                    ? phrases.get("follow.one-reading")
                    : String.format(phrases.get("follow.readings-of-zone"), count);
            String scatter = zone.now()
                    .meanInterval()
                    .map(interval ->
                            String.format(phrases.get("follow.interval"), units.print(interval), units.print(level())))
                    .orElseGet(() -> phrases.get("follow.no-scatter"));
            page.item(String.format(
                            phrases.get("follow.zone"),
                            zone.zone(),
                            readings,
                            units.print(zone.now().mean()),
                            units.print(zone.now().lowest()))
                    + " " + scatter);
            zone.gain().ifPresent(gain -> page.labelled(INDENT, phrases.get("follow.gain"), gain(gain)));
            if (zone.angle() != Geometry.DEG_60) {
                page.labelled(
                        INDENT,
                        phrases.get("follow.angle"),
                        String.format(
                                phrases.get("follow.read-at"), zone.angle().degrees()));
            }
            zone.outlook().ifPresent(outlook -> page.labelled(INDENT, phrases.get("follow.finish"), outlook(outlook)));
            zone.morePasses().ifPresent(more -> {
                page.labelled(INDENT, phrases.get("follow.further"), further(more));
                page.labelled(INDENT, phrases.get("follow.basis"), basis(more.basis()));
            });
        }

        private Share level() {
            return next.ahead().parameters().get("gloss-forecast.level", Share.class);
        }

        private String gain(Gain gain) {
            double change = gain.change().glossUnits();
            String size = units.print(new Gloss(Math.abs(change)));
            String moved = String.format(phrases.get(change < 0 ? "follow.gain-loss" : "follow.gain-rise"), size);
            String text = String.format(phrases.get("follow.gain-of"), moved) + " " + phrases.of(gain.verdict());
            return gain.missingBefore() + gain.missingAfter() == 0
                    ? text
                    : text + " "
                            + String.format(phrases.get("follow.missing"), gain.missingBefore(), gain.missingAfter());
        }

        private String outlook(TargetOutlook outlook) {
            List<String> text = new ArrayList<>();
            text.add(String.format(phrases.get("follow.target"), units.print(outlook.target())));
            text.add(phrases.of(outlook.verdict()));
            outlook.reachedBy().or(outlook::best).ifPresent(option -> text.add(way(option)));
            if (outlook.startedTooFine()) {
                text.add(String.format(phrases.get("follow.too-fine"), chance(outlook.oldDamage())));
            }
            return String.join(" ", text);
        }

        private String way(TargetOption option) {
            return String.format(
                    phrases.get("follow.way"), option.grit(), option.passes(), chance(option.probability()));
        }

        /** A share that claims no more than a forecast can: nothing is certain or impossible. */
        private String chance(Share share) {
            long percent = Math.round(share.percent());
            if (percent < 1) {
                return String.format(phrases.get("follow.less-than"), 1);
            }
            return percent > PERCENT - 1
                    ? String.format(phrases.get("follow.more-than"), PERCENT - 1)
                    : units.print(new Share(percent));
        }

        private String further(GlossPrediction more) {
            return String.format(
                    phrases.get("follow.further-text"),
                    more.passes(),
                    more.grit(),
                    units.print(more.median()),
                    units.print(more.interval()),
                    units.print(more.level()));
        }

        private String basis(ForecastBasis basis) {
            String sources = basis.sources().stream().map(Citation::print).collect(Collectors.joining("; "));
            return basis.defaultsOnly()
                    ? String.format(phrases.get("follow.basis-defaults"), sources)
                    : String.format(phrases.get("follow.basis-readings"), basis.readings(), basis.occasions(), sources);
        }

        private void notes() {
            if (next.notes().isEmpty()) {
                return;
            }
            page.heading(phrases.get("follow.notes"));
            next.notes().stream()
                    .collect(Collectors.groupingBy(
                            note -> phrases.of(note.kind()) + " " + phrases.of(note.effect()),
                            LinkedHashMap::new,
                            Collectors.toList()))
                    .forEach((said, notes) -> page.item(entries(notes) + " " + said));
        }

        /** People count entries from 1. */
        private String entries(List<LogNote> notes) {
            if (notes.size() == 1) {
                Entry entry = entry(notes.get(0));
                return String.format(
                        phrases.get("follow.entry"),
                        notes.get(0).entry() + 1,
                        entry.at().print(),
                        entry(entry));
            }
            return String.format(
                    phrases.get("follow.entries"),
                    notes.stream()
                            .map(note -> String.format(
                                    phrases.get("follow.entry-of-several"),
                                    note.entry() + 1,
                                    entry(note).at().print()))
                            .collect(Collectors.joining(", ")));
        }

        private Entry entry(LogNote note) {
            if (note.entry() >= log.entries().size()) {
                throw new InvalidInputException(
                        "notes.entry",
                        Integer.toString(note.entry()),
                        "the position of an entry of this log, which has "
                                + log.entries().size());
            }
            return log.entries().get(note.entry());
        }

        private String entry(Entry entry) {
            if (entry instanceof Entry.Worked worked) {
                return String.format(
                        phrases.get("follow.entry-work"),
                        words.grade(worked.grade()),
                        track(worked.track()),
                        worked.passes());
            }
            if (entry instanceof Entry.Looked looked) {
                return Stream.of(looked.scratches(), looked.pad(), looked.edges())
                        .flatMap(Optional::stream)
                        .map(Term.class::cast)
                        .map(phrases::of)
                        .reduce(
                                String.format(phrases.get("follow.entry-look"), looked.zone()) + ", "
                                        + phrases.of(looked.face()),
                                (text, more) -> text + ", " + more);
            }
            if (entry instanceof Entry.Read read) {
                return String.format(
                        phrases.get("follow.entry-reading"),
                        read.reading().place(),
                        read.reading().zone(),
                        units.print(read.reading().gloss()),
                        read.reading().geometry().degrees());
            }
            if (entry instanceof Entry.Happened happened) {
                return String.format(
                        phrases.get("follow.entry-event"),
                        happened.zone(),
                        phrases.of(happened.kind()),
                        phrases.of(happened.state()));
            }
            Entry.Tried tried = (Entry.Tried) entry;
            return String.format(
                            phrases.get("follow.entry-trial"), words.grade(tried.grade()), phrases.of(tried.result()))
                    + (tried.signed() ? phrases.get("follow.entry-signed") : "");
        }

        private void unknown() {
            if (!next.unknown().isEmpty()) {
                page.heading(phrases.get("follow.unknown"));
                next.unknown().forEach(field -> page.item(facts.open(field)));
            }
        }

        private List<Track> tracks(Recommendation recommendation) {
            return recommendation.plan().map(Plan::tracks).orElse(List.of()).stream()
                    .filter(track -> !track.steps().isEmpty())
                    .toList();
        }

        private void ahead() {
            page.heading(phrases.get("follow.ahead"));
            List<Track> tracks = tracks(next.ahead());
            if (tracks.isEmpty()) {
                page.item(phrases.get(
                        next.move() == Move.STOP_AND_ASK ? "follow.none-until-answered" : "follow.none-ahead"));
            }
            tracks.forEach(this::ahead);
        }

        private void ahead(Track track) {
            String grades = track.steps().stream()
                    .map(step -> words.grade(step.grade()))
                    .collect(Collectors.joining(", "));
            Step first = track.steps().get(0);
            boolean inWork = next.at()
                    .filter(point -> point.track() == track.kind())
                    .filter(point -> point.grade().equals(first.grade()))
                    .isPresent();
            String list = track(track.kind()) + ": " + grades + ".";
            if (inWork && next.move() == Move.LOOK_FIRST) {
                page.item(list + " " + String.format(phrases.get("follow.look-decides"), words.grade(first.grade())));
                return;
            }
            String passes = next.morePasses()
                    .filter(more -> inWork)
                    .map(this::morePasses)
                    .orElseGet(() -> words.passes(first));
            page.item(list);
            page.labelled(
                    INDENT,
                    phrases.get("follow.first"),
                    String.format(
                            phrases.get("follow.step"),
                            words.grade(first.grade()),
                            phrases.of(first.machine()),
                            words.weight(first),
                            words.water(track.kind(), first),
                            passes));
        }

        /** What the plan did not say: for the crew first, then for the owner. */
        private void changes() {
            page.heading(phrases.get("follow.changes"));
            List<String> changes = new ArrayList<>();
            if (next.ahead().status() != plan.status()) {
                changes.add(phrases.get("follow.change-status") + " "
                        + phrases.of(next.ahead().status()));
                stops().forEach(rule -> changes.add(phrases.get("follow.change-reason") + " " + cards.because(rule)));
            }
            finish().ifPresent(changes::add);
            changes.addAll(newGrades());
            added(changes, "follow.change-prepare", made -> made.tasks());
            added(changes, "follow.change-repair", Plan::repairs);
            next.ahead().warnings().stream()
                    .map(warning -> warning.hazard())
                    .filter(hazard -> plan.warnings().stream().noneMatch(known -> known.hazard() == hazard))
                    .forEach(hazard -> changes.add(phrases.get("follow.change-hazard") + " " + phrases.of(hazard)));
            added(changes, "follow.change-owner", Plan::acceptances);
            added(changes, "follow.change-closing", Plan::finishTasks);
            next.ahead().questions().stream()
                    .map(Question::field)
                    .filter(field -> plan.questions().stream()
                            .noneMatch(known -> known.field().equals(field)))
                    .forEach(field ->
                            changes.add(phrases.get("follow.change-question") + " " + phrases.get("field." + field)));
            page.items(changes.isEmpty() ? List.of(phrases.get("follow.unchanged")) : changes);
        }

        /** The rules behind a refusal, an impasse or a wait of the plan ahead. */
        private List<String> stops() {
            Stream<Reason> refusals = next.ahead().refusals().stream();
            Stream<Reason> verdict = next.ahead().decision(Topics.VERDICT, Subject.FLOOR).stream()
                    .flatMap(decision -> decision.won().stream())
                    .filter(Reason::certain);
            Stream<Reason> impasses = next.ahead().impasses().stream()
                    .filter(impasse -> Topics.named(impasse.topic()).isBlocking())
                    .flatMap(impasse -> Stream.concat(impasse.needs().stream(), impasse.vetoes().stream()));
            return Stream.of(refusals, verdict, impasses)
                    .flatMap(Function.identity())
                    .map(Reason::rule)
                    .distinct()
                    .toList();
        }

        private Optional<String> finish() {
            Optional<Finish> now = next.ahead().plan().flatMap(Plan::finish);
            Optional<Finish> before = plan.plan().flatMap(Plan::finish);
            return now.isPresent() && before.isPresent() && now.get() != before.get()
                    ? Optional.of(String.format(
                            phrases.get("follow.change-finish"), phrases.of(now.get()), phrases.of(before.get())))
                    : Optional.empty();
        }

        private List<String> newGrades() {
            List<String> grades = new ArrayList<>();
            for (Track track : tracks(next.ahead())) {
                List<AbrasiveGrade> planned = tracks(plan).stream()
                        .filter(known -> known.kind() == track.kind())
                        .flatMap(known -> known.steps().stream())
                        .map(Step::grade)
                        .toList();
                track.steps().stream()
                        .map(Step::grade)
                        .filter(grade -> !planned.contains(grade))
                        .forEach(grade -> grades.add(String.format(
                                phrases.get("follow.change-grade"), words.grade(grade), track(track.kind()))));
            }
            return grades;
        }

        private void added(List<String> changes, String heading, Function<Plan, List<? extends Term>> part) {
            List<? extends Term> before =
                    plan.plan().<List<? extends Term>>map(part).orElse(List.of());
            next.ahead().plan().<List<? extends Term>>map(part).orElse(List.of()).stream()
                    .filter(term -> !before.contains(term))
                    .forEach(term -> changes.add(phrases.get(heading) + " " + phrases.of(term)));
        }
    }

    /** The texts that an answer needs and that do not come from an enum; a test keeps the bundle complete. */
    static List<String> fixedKeys() {
        return List.of(
                "follow.against",
                "follow.ahead",
                "follow.angle",
                "follow.asks",
                "follow.at",
                "follow.basis",
                "follow.basis-defaults",
                "follow.basis-readings",
                "follow.by",
                "follow.causes",
                "follow.change-closing",
                "follow.change-finish",
                "follow.change-grade",
                "follow.change-hazard",
                "follow.change-owner",
                "follow.change-prepare",
                "follow.change-question",
                "follow.change-reason",
                "follow.change-repair",
                "follow.change-status",
                "follow.changes",
                "follow.checks",
                "follow.checks-later",
                "follow.entry",
                "follow.entries",
                "follow.entry-event",
                "follow.entry-of-several",
                "follow.entry-look",
                "follow.entry-reading",
                "follow.entry-signed",
                "follow.entry-trial",
                "follow.entry-work",
                "follow.findings",
                "follow.finish",
                "follow.first",
                "follow.for",
                "follow.further",
                "follow.further-text",
                "follow.gain",
                "follow.gain-loss",
                "follow.gain-of",
                "follow.gain-rise",
                "follow.held-back",
                "follow.interval",
                "follow.less-than",
                "follow.mends",
                "follow.mends-later",
                "follow.missing",
                "follow.more-than",
                "follow.no-scatter",
                "follow.finished",
                "follow.look-decides",
                "follow.more-passes",
                "follow.none-ahead",
                "follow.none-until-answered",
                "follow.not-begun",
                "follow.notes",
                "follow.nothing-asked",
                "follow.one-reading",
                "follow.passes",
                "follow.passes-exactly",
                "follow.read-at",
                "follow.readings",
                "follow.readings-of-zone",
                "follow.signs",
                "follow.step",
                "follow.target",
                "follow.too-fine",
                "follow.unchanged",
                "follow.unknown",
                "follow.way",
                "follow.why",
                "follow.zone");
    }
}
